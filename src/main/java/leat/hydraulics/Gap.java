package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * The gap through which water leaves the cap: a slot between the spreader's edge and the wall, or
 * the space between two flat discs.
 *
 * <pre>
 * slot   A = pi w (d + w);    viscous 12 mu Q t/(pi (d + w) w^3 rho g)      edge head 1.5 ((Q/(pi d))^2/g)^(1/3)
 * discs  A = 2 pi R w;        viscous 6 mu Q ln(R/r1)/(pi w^3 rho g)        inner edge (Q/(2 pi r1 w))^2/2g
 * both   orifice (Q/(Cd A))^2/2g;  the sum of the two parts is cautious for a slot
 * </pre>
 *
 * <p>For discs the sum is near the least head, not the likely one: their narrow place is the inner
 * edge, and how much is won back as the water slows outwards is not known. Its force may lift or
 * rattle. A gap under 1 mm is a strainer that clogs.
 *
 * <p>Source: sheet hydraulics.md section 9 and hydraulics-tower.md section 4; check values:
 * hydraulics-cap.csv.
 *
 * @param kind slot or discs
 * @param width w, m
 * @param area of flow, m2
 * @param velocity in it, m/s
 * @param reynolds 2 w v/nu, -
 * @param orificeHead m
 * @param viscousHead m
 * @param totalHead sum of the two, m: depth that stands on a spreader, or back pressure of discs
 * @param edgeHead depth behind the rim of a slot's spreader as a free fall, m; 0 for discs
 * @param innerEdgeHead velocity head at the inner edge of discs, m; 0 for a slot
 * @param pressureForce with which the pressure between discs lifts, N, upper bound; 0 for a slot
 */
public record Gap(
    Kind kind,
    double width,
    double area,
    double velocity,
    double reynolds,
    double orificeHead,
    double viscousHead,
    double totalHead,
    double edgeHead,
    double innerEdgeHead,
    double pressureForce) {

  /** Discharge coefficient of a sharp edge, - (from memory; 0.60 to 0.62). */
  public static final double SHARP = 0.62;

  /** A narrower gap clogs, m (practice). */
  public static final double LEAST_WIDTH = 0.001;

  /** Below this depth surface tension decides and a rim wets in tongues, m. */
  public static final double TONGUES_BELOW = 0.003;

  private static final double LAMINAR_TO = 2000;
  private static final double ORIFICE_TO = 0.1;
  private static final double LAMINAR_FROM = 0.9;

  /** Which gap. */
  public enum Kind {
    /** Between the spreader's edge and the wall. */
    WALL_SLOT,
    /** Between two flat discs. */
    DISC_GAP
  }

  /** Which part of the head rules. */
  public enum Rule {
    /** The viscous part is under a tenth. */
    ORIFICE("orifice"),
    /** The viscous part is over nine tenths. */
    LAMINAR("laminar"),
    /** Both count. */
    BOTH("both");

    private final String word;

    Rule(String word) {
      this.word = word;
    }

    /** The word to print. */
    public String word() {
      return word;
    }
  }

  /**
   * Slot between a spreader's edge and the wall.
   *
   * @param flow m3/s, above 0
   * @param width of the slot, m
   * @param spreader diameter of the spreader, m
   * @param thickness of the plate along the flow, m, 0 or more
   * @param discharge coefficient, -; {@link #SHARP} usually
   * @param liquid what flows
   * @return the gap
   * @throws Impossible outside
   */
  public static Gap slot(
      double flow,
      double width,
      double spreader,
      double thickness,
      double discharge,
      Liquid liquid) {
    accept(flow, width, spreader, discharge);
    Impossible.unlessWithin("thickness", thickness, 0, 10, "a plate is 0 to 10 m thick");
    double round = Math.PI * (spreader + width);
    double area = round * width;
    double viscous =
        12 * liquid.kinematicViscosity() * flow * thickness / (round * cube(width) * gravity());
    double perRim = flow / (Math.PI * spreader);
    double edge = 1.5 * Math.cbrt(perRim * perRim / gravity());
    double orifice = velocityHead(flow / (discharge * area));
    return new Gap(
        Kind.WALL_SLOT,
        width,
        area,
        flow / area,
        2 * width * flow / (area * liquid.kinematicViscosity()),
        orifice,
        viscous,
        orifice + viscous,
        edge,
        0,
        0);
  }

  /**
   * Space between two flat discs, fed through the riser in the middle.
   *
   * @param flow m3/s, above 0
   * @param width between the discs, m
   * @param spreader diameter of the discs, m, above the riser's bore
   * @param riserBore m
   * @param discharge coefficient, -; {@link #SHARP} usually
   * @param liquid what flows
   * @return the gap
   * @throws Impossible outside
   */
  public static Gap discs(
      double flow,
      double width,
      double spreader,
      double riserBore,
      double discharge,
      Liquid liquid) {
    accept(flow, width, spreader, discharge);
    Impossible.unlessWithin(
        "bore", riserBore, 1e-4, spreader * (1 - 1e-9), "the riser is narrower than the spreader");
    double radius = spreader / 2;
    double inner = riserBore / 2;
    double area = 2 * Math.PI * radius * width;
    double ln = Math.log(radius / inner);
    double viscous =
        6 * liquid.kinematicViscosity() * flow * ln / (Math.PI * cube(width) * gravity());
    double orifice = velocityHead(flow / (discharge * area));
    double weight = liquid.density() * gravity();
    double force =
        weight * viscous * Math.PI * (radius * radius - inner * inner) / (2 * ln)
            + weight * orifice * Math.PI * radius * radius;
    return new Gap(
        Kind.DISC_GAP,
        width,
        area,
        flow / area,
        2 * width * flow / (area * liquid.kinematicViscosity()),
        orifice,
        viscous,
        orifice + viscous,
        0,
        velocityHead(flow / (2 * Math.PI * inner * width)),
        force);
  }

  private static void accept(double flow, double width, double spreader, double discharge) {
    Impossible.unlessWithin("flow", flow, 1e-15, 100, "a gap needs a flow above 0");
    Impossible.unlessWithin("gap", width, 1e-6, 1, "a gap is between a thousandth mm and 1 m");
    Impossible.unlessWithin("spreader", spreader, 1e-4, 10, "a spreader is over 0.1 mm wide");
    Impossible.unlessWithin(
        "discharge coefficient", discharge, 0.01, 1, "it is between 0.01 and 1");
  }

  private static double velocityHead(double v) {
    return v * v / (2 * gravity());
  }

  private static double cube(double x) {
    return x * x * x;
  }

  private static double gravity() {
    return Liquid.GRAVITY;
  }

  /** The viscous formula holds: Re under 2000. */
  public boolean laminar() {
    return reynolds < LAMINAR_TO;
  }

  /** Viscous part of the sum, -. */
  public double viscousShare() {
    return viscousHead / totalHead;
  }

  /** Which part rules. */
  public Rule rule() {
    double share = viscousShare();
    if (share < ORIFICE_TO) {
      return Rule.ORIFICE;
    }
    return share > LAMINAR_FROM ? Rule.LAMINAR : Rule.BOTH;
  }

  /** Depth of water that stands on a slot's spreader: the larger of slot and rim, m. */
  public double standingDepth() {
    return Math.max(totalHead, edgeHead);
  }

  /** The gap is narrow enough to clog. */
  public boolean clogs() {
    return width < LEAST_WIDTH;
  }
}

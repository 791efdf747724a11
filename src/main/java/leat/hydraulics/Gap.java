package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * The gap through which water leaves the cap: a slot between the spreader's edge and the wall.
 *
 * <pre>
 * A = pi w (d + w);   viscous 12 mu Q t/(pi (d + w) w^3 rho g);   edge head 1.5 ((Q/(pi d))^2/g)^(1/3)
 * orifice (Q/(Cd A))^2/2g;   the sum of the two parts is cautious
 * </pre>
 *
 * <p>A gap under 1 mm is a strainer that clogs.
 *
 * <p>Source: sheet hydraulics.md section 9 and hydraulics-tower.md section 4; check values:
 * hydraulics-cap.csv.
 *
 * @param width w, m
 * @param area of flow, m2
 * @param velocity in it, m/s
 * @param reynolds 2 w v/nu, -
 * @param orificeHead m
 * @param viscousHead m
 * @param totalHead sum of the two, m: depth that stands on a spreader
 * @param edgeHead depth behind the spreader's rim as a free fall, m
 */
public record Gap(
    double width,
    double area,
    double velocity,
    double reynolds,
    double orificeHead,
    double viscousHead,
    double totalHead,
    double edgeHead) {

  /** Discharge coefficient of a sharp edge, - (from memory; 0.60 to 0.62). */
  public static final double SHARP = 0.62;

  /** A narrower gap clogs, m (practice). */
  public static final double LEAST_WIDTH = 0.001;

  /** Below this depth surface tension decides and a rim wets in tongues, m. */
  public static final double TONGUES_BELOW = 0.003;

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
        width,
        area,
        flow / area,
        2 * width * flow / (area * liquid.kinematicViscosity()),
        orifice,
        viscous,
        orifice + viscous,
        edge);
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

  /** Depth of water that stands on a slot's spreader: the larger of slot and rim, m. */
  public double standingDepth() {
    return Math.max(totalHead, edgeHead);
  }
}

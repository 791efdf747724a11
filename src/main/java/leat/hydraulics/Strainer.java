package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * A woven strainer, open or partly clogged.
 *
 * <pre>
 * open fraction f = (w/(w + d))^2;   h = K v^2/2g on the approach speed;   K = B (1 - f^2)/f^2, B by the Re of the holes
 * needed area = Q/(v_hole f (1 - clogged));   water held by surface tension, at most 4 sigma/(rho g w)
 * </pre>
 *
 * <p>A clean mesh loses well under 1 mm: the area is set by clogging. Below Re 20 the loss is a low
 * estimate.
 *
 * <p>Source: terms as in ISO 9044; R. D. Blevins, Applied Fluid Dynamics Handbook, 1984 (table of B
 * for round wire), from sheet stability-build.md section 7. Check values: build-strainer.csv.
 *
 * @param openFraction of the mesh, -
 * @param meshPerInch wires an inch, -
 * @param approachSpeed on the part that is still open, m/s
 * @param holeSpeed in the holes, m/s
 * @param holeReynolds hole speed x aperture/nu, -
 * @param k loss coefficient on the approach speed, -
 * @param head lost, m
 * @param requiredArea for the wanted hole speed, m2
 * @param areaOk whether the mesh has that area
 * @param capillaryHold greatest head that a mesh in air holds back when it first wets, m
 */
public record Strainer(
    double openFraction,
    double meshPerInch,
    double approachSpeed,
    double holeSpeed,
    double holeReynolds,
    double k,
    double head,
    double requiredArea,
    boolean areaOk,
    double capillaryHold) {

  /** Open fractions of the table. */
  public static final Validity VALID =
      Validity.of("open fraction", 0.05, 0.80).and("hole Re", 20, 400);

  /** Hole speed to size for, m/s (0.05 to 0.10; practice). */
  public static final double USUAL_HOLE_SPEED = 0.05;

  /** Clogged share to size for, - (0.5 to 0.75; practice). */
  public static final double USUAL_CLOGGED = 0.5;

  private static final double[] RE = {20, 30, 40, 60, 80, 100, 200, 400};
  private static final double[] B = {1.3, 1.1, 0.95, 0.83, 0.75, 0.70, 0.60, 0.52};

  /** Surface tension for the hold, N/m, and the density that goes with it, kg/m3 (20 to 25 C). */
  private static final double SIGMA = 0.072;

  private static final double SIGMA_DENSITY = 998;
  private static final double INCH = 0.0254;

  /**
   * A strainer at a flow.
   *
   * @param aperture w, m
   * @param wire d, m
   * @param area of the whole mesh, m2
   * @param flow m3/s, 0 or more
   * @param clogged share of the mesh, -, 0 to under 1
   * @param wantedHoleSpeed to size for, m/s
   * @param kinematicViscosity m2/s
   * @return the strainer
   * @throws Impossible outside
   */
  public static Strainer of(
      double aperture,
      double wire,
      double area,
      double flow,
      double clogged,
      double wantedHoleSpeed,
      double kinematicViscosity) {
    double open = openFraction(aperture, wire);
    Impossible.unlessWithin("area", area, 1e-8, 1e4, "a strainer has an area above 0");
    Impossible.unlessWithin("flow", flow, 0, 100, "a flow is 0 or more");
    Impossible.unlessWithin("clogged", clogged, 0, 0.999, "less than all of it is clogged");
    Impossible.unlessWithin("speed", wantedHoleSpeed, 1e-6, 100, "a speed is above 0");
    Impossible.unlessWithin(
        "viscosity", kinematicViscosity, 1e-9, 1, "a kinematic viscosity is above 0");
    double approach = flow / (area * (1 - clogged));
    double hole = approach / open;
    double re = hole * aperture / kinematicViscosity;
    double k = coefficient(re) * (1 - open * open) / (open * open);
    double required = flow / (wantedHoleSpeed * open * (1 - clogged));
    return new Strainer(
        open,
        INCH / (aperture + wire),
        approach,
        hole,
        re,
        k,
        k * approach * approach / (2 * Liquid.GRAVITY),
        required,
        area >= required,
        capillaryHold(aperture));
  }

  /**
   * Open fraction of a square mesh.
   *
   * @param aperture m, above 0
   * @param wire thickness, m, above 0
   * @return -
   * @throws Impossible outside
   */
  public static double openFraction(double aperture, double wire) {
    Impossible.unlessWithin("aperture", aperture, 1e-6, 0.1, "a mesh has holes of 1 um to 100 mm");
    Impossible.unlessWithin("wire", wire, 1e-6, 0.1, "a mesh has wires of 1 um to 100 mm");
    double side = aperture / (aperture + wire);
    return side * side;
  }

  /**
   * Finest mesh that holds back no more than a head.
   *
   * @param head m, above 0
   * @return aperture, m
   * @throws Impossible unless above 0
   */
  public static double apertureForHold(double head) {
    return 4
        * SIGMA
        / (SIGMA_DENSITY * Liquid.GRAVITY * Impossible.unlessPositive("freeboard", head));
  }

  /**
   * Head that surface tension holds back on a mesh in air, an upper bound.
   *
   * @param aperture m, above 0
   * @return m
   * @throws Impossible outside
   */
  public static double capillaryHold(double aperture) {
    Impossible.unlessPositive("aperture", aperture);
    return 4 * SIGMA / (SIGMA_DENSITY * Liquid.GRAVITY * aperture);
  }

  /** Blevins' B, linear between the points, held outside. */
  private static double coefficient(double re) {
    if (re <= RE[0]) {
      return B[0];
    }
    for (int i = 1; i < RE.length; i++) {
      if (re <= RE[i]) {
        return B[i - 1] + (B[i] - B[i - 1]) * (re - RE[i - 1]) / (RE[i] - RE[i - 1]);
      }
    }
    return B[B.length - 1];
  }
}

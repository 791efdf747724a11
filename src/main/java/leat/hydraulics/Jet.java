package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * The jet out of a riser against a plate above it.
 *
 * <pre>
 * height h = v^2/2g,   speed at z above: sqrt(v^2 - 2 g z);   force F = rho Q v_p (1 - cos beta)
 * </pre>
 *
 * <p>A laminar jet's middle is faster: up to twice the height.
 *
 * <p>Source: momentum and energy of a free jet, sheet hydraulics.md section 9; check values:
 * hydraulics-cap.csv.
 *
 * @param flow m3/s
 * @param velocity at the outlet, m/s
 * @param reynolds at the outlet, -
 * @param height the jet would rise over the outlet, m
 * @param reaches whether it reaches the plate
 * @param plateSpeed speed at the plate, m/s, 0 if it does not reach
 * @param force on the plate, N, 0 if it does not reach
 */
public record Jet(
    double flow,
    double velocity,
    double reynolds,
    double height,
    boolean reaches,
    double plateSpeed,
    double force) {

  /** A flat plate turns the water by this, degrees. */
  public static final double FLAT = 90;

  /** A dome that sends the water back turns it by this, degrees. */
  public static final double DOME = 180;

  /**
   * The jet of a riser.
   *
   * @param flow m3/s, above 0
   * @param bore of the outlet, m
   * @param plateHeight of the plate over the outlet, m, 0 or more
   * @param turnDegrees by which the water is turned, degrees, 0 to 180; {@link #FLAT} usually
   * @param liquid what flows
   * @return the jet
   * @throws Impossible outside
   */
  public static Jet of(
      double flow, double bore, double plateHeight, double turnDegrees, Liquid liquid) {
    Impossible.unlessWithin("flow", flow, 1e-15, 100, "a jet needs a flow above 0");
    Impossible.unlessWithin("bore", bore, 1e-4, 2, "an outlet's bore is between 0.1 mm and 2 m");
    Impossible.unlessWithin("plate height", plateHeight, 0, 1000, "a plate is above the outlet");
    double v = flow / (Math.PI / 4 * bore * bore);
    double height = v * v / (2 * Liquid.GRAVITY);
    double left = v * v - 2 * Liquid.GRAVITY * plateHeight;
    double atPlate = left > 0 ? Math.sqrt(left) : 0;
    return new Jet(
        flow,
        v,
        v * bore / liquid.kinematicViscosity(),
        height,
        atPlate > 0,
        atPlate,
        force(liquid.density(), flow, atPlate, turnDegrees));
  }

  /**
   * Force of a jet on what turns it.
   *
   * @param density kg/m3
   * @param flow m3/s, 0 or more
   * @param speed at the plate, m/s, 0 or more
   * @param turnDegrees by which the water is turned, degrees, 0 to 180
   * @return N
   * @throws Impossible outside
   */
  public static double force(double density, double flow, double speed, double turnDegrees) {
    Impossible.unlessPositive("density", density);
    Impossible.ifNegative("flow", flow);
    Impossible.ifNegative("speed", speed);
    Impossible.unlessWithin(
        "turn angle", turnDegrees, 0, 180, "water is turned by 0 to 180 degrees");
    return density * flow * speed * (1 - Math.cos(Math.toRadians(turnDegrees)));
  }
}

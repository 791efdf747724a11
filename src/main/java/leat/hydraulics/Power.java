package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Power in the water and from the wire. All electric power ends as heat in the solution.
 *
 * <pre>P_h = rho g Q H,   efficiency = P_h/P_electric</pre>
 *
 * <p>Source: sheet hydraulics.md section 5; check values: hydraulics-power.csv.
 */
public final class Power {
  /** Small submersible pumps reach this at least, - (practice). */
  public static final double USUAL_LEAST = 0.05;

  /** And this at most, - (practice). */
  public static final double USUAL_MOST = 0.25;

  private Power() {}

  /**
   * Power in the water.
   *
   * @param density kg/m3, above 0
   * @param flow m3/s, 0 or more
   * @param head of the pump, m, 0 or more
   * @return W
   * @throws Impossible if negative
   */
  public static double hydraulic(double density, double flow, double head) {
    Impossible.unlessPositive("density", density);
    Impossible.ifNegative("flow", flow);
    return density * Liquid.GRAVITY * flow * Impossible.ifNegative("head", head);
  }

  /**
   * Wire-to-water efficiency.
   *
   * @param hydraulic power in the water, W, 0 or more
   * @param electric power from the wire, W, above 0
   * @return share, -, 0 to 1
   * @throws Impossible over 1: a pump cannot give more than it takes
   */
  public static double efficiency(double hydraulic, double electric) {
    Impossible.ifNegative("power", hydraulic);
    Impossible.unlessPositive("power", electric);
    if (hydraulic > electric) {
      throw new Impossible("power", "the water would get more power than the wire gives");
    }
    return hydraulic / electric;
  }
}

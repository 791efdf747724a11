package leat.climate;

import leat.numeric.Impossible;

/**
 * Bounds of the warmth a pump brings into the solution. Sun on a dark tank adds several K and is
 * not in it.
 *
 * <pre>rise without loss P t/(C V);  steady P/UA</pre>
 *
 * <p>Source: first-order heat balance; UA from memory; sheet season.md section 8, check values
 * season-warming.csv.
 */
public final class TankWarmth {
  /** Heat of water, J/m3 K. */
  public static final double HEAT_J_M3_K = 4.18e6;

  /** Heat that passes a tank's outside, W/m2 K (from memory; 5 to 12). */
  public static final double LOSS_W_M2_K = 8;

  /** Solution above this lacks oxygen at the roots, C (common practice). */
  public static final double WARM_CELSIUS = 24;

  private TankWarmth() {}

  /**
   * Loss of a tank.
   *
   * @param outsideM2 outside of the tank, m2
   * @return W/K
   * @throws Impossible if the area is not above 0
   */
  public static double lossWPerK(double outsideM2) {
    return LOSS_W_M2_K * Impossible.unlessPositive("area", outsideM2);
  }

  /**
   * Outside of a tank of so much surface and depth, as if it were square: bottom, sides and lid.
   *
   * @param surfaceM2 surface of the solution, m2
   * @param depthM its depth, m
   * @return m2
   * @throws Impossible if one is not above 0
   */
  public static double outsideM2(double surfaceM2, double depthM) {
    double surface = Impossible.unlessPositive("surface", surfaceM2);
    return 2 * surface + 4 * Math.sqrt(surface) * Impossible.unlessPositive("depth", depthM);
  }

  /**
   * Rise when nothing is lost: no tank warms more by its pump.
   *
   * @param meanW pump power averaged over rests, W
   * @param seconds time, s
   * @param volumeM3 solution, m3
   * @return K
   * @throws Impossible if power or time is negative or the volume not above 0
   */
  public static double riseMostK(double meanW, double seconds, double volumeM3) {
    return Accepted.size("power", meanW)
        * Accepted.size("time", seconds)
        / (HEAT_J_M3_K * Impossible.unlessPositive("volume", volumeM3));
  }

  /**
   * Rise over the air after a long time.
   *
   * @param meanW pump power averaged over rests, W
   * @param lossWPerK loss of the tank, W/K
   * @return K
   * @throws Impossible if the power is negative or the loss not above 0
   */
  public static double riseSteadyK(double meanW, double lossWPerK) {
    return Accepted.size("power", meanW) / Impossible.unlessPositive("loss", lossWPerK);
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * How a tank warms with time, and how the day's swing of the air reaches it: between the bounds of
 * {@link TankWarmth}, which alone are told.
 *
 * <pre>tau = C V/UA;  swing x 1/sqrt(1 + (2 pi tau/day)^2), late by atan(2 pi tau/day) day/(2 pi)
 * </pre>
 *
 * <p>Source: first-order heat balance; sheet season.md section 8, check values season-warming.csv.
 */
final class TankSwing {
  private static final double DAY_S = 86_400;

  private TankSwing() {}

  /**
   * Time in which two thirds of a change are made.
   *
   * @param volumeM3 solution, m3
   * @param lossWPerK loss of the tank, W/K
   * @return s
   * @throws Impossible if one is not above 0
   */
  static double timeConstantS(double volumeM3, double lossWPerK) {
    return TankWarmth.HEAT_J_M3_K
        * Impossible.unlessPositive("volume", volumeM3)
        / Impossible.unlessPositive("loss", lossWPerK);
  }

  /**
   * Rise over the air after a time, from the air's temperature on.
   *
   * @param meanW pump power averaged over rests, W
   * @param lossWPerK loss of the tank, W/K
   * @param volumeM3 solution, m3
   * @param seconds time, s
   * @return K
   * @throws Impossible if one is outside its range
   */
  static double riseAfterK(double meanW, double lossWPerK, double volumeM3, double seconds) {
    return -TankWarmth.riseSteadyK(meanW, lossWPerK)
        * Math.expm1(-Accepted.size("time", seconds) / timeConstantS(volumeM3, lossWPerK));
  }

  /**
   * Share of the air's daily swing that reaches the solution.
   *
   * @param timeConstantS time constant, s
   * @return -
   */
  static double swingShare(double timeConstantS) {
    return 1 / Math.hypot(1, 2 * Math.PI * timeConstantS / DAY_S);
  }

  /**
   * How late the swing comes.
   *
   * @param timeConstantS time constant, s
   * @return s
   */
  static double swingLagS(double timeConstantS) {
    return Math.atan(2 * Math.PI * timeConstantS / DAY_S) * DAY_S / (2 * Math.PI);
  }
}

package leat.energy;

import leat.numeric.Impossible;

/**
 * What stands between a battery and the pump. The idle draw runs the whole time and often outweighs
 * the pump.
 *
 * <p>Source: idle 3 to 10 W is common practice; sheet energy.md section 5.
 *
 * @param efficiency share of the battery's power that reaches the pump, above 0 to 1
 * @param idleW own draw, W
 */
public record Inverter(double efficiency, double idleW) {
  /** Low end of a small inverter's idle draw, W (common practice). */
  public static final double USUAL_IDLE_LOW_W = 3;

  /** High end of a small inverter's idle draw, W (common practice). */
  public static final double USUAL_IDLE_HIGH_W = 10;

  /** Efficiency of a small inverter at a light load (common practice). */
  public static final double USUAL_EFFICIENCY = 0.85;

  /** Idle draw taken when nobody measured it, W (common practice, 3 to 10). */
  public static final double USUAL_IDLE_W = 4;

  /** An inverter's continuous rating over the pump's apparent power (common practice). */
  private static final double MARGIN = 1.25;

  /** What an inverter gives for a moment over what it gives for good (common practice). */
  private static final double SURGE = 2;

  /** Continuous ratings that are sold, W (from memory). */
  private static final double[] SIZES_W = {
    100, 150, 200, 300, 400, 500, 600, 800, 1000, 1500, 2000, 3000
  };

  /**
   * The least inverter that is sold and carries a pump: a quarter over the pump's apparent power
   * for good, and its inrush for a moment, for which inverters give about twice.
   *
   * @param pump the pump as a load
   * @return continuous rating, W; empty over 3000 W
   */
  public static java.util.OptionalDouble sizeW(Motor pump) {
    double apparent = pump.runA() * pump.supplyV();
    double least = Math.max(MARGIN * apparent, apparent * pump.inrushMultiple() / SURGE);
    for (double size : SIZES_W) {
      if (size >= least) {
        return java.util.OptionalDouble.of(size);
      }
    }
    return java.util.OptionalDouble.empty();
  }

  /**
   * @throws Impossible if the efficiency is outside 1 to 100 per cent or the idle draw negative
   */
  public Inverter {
    Impossible.unlessWithin(
        "inverter", efficiency, 0.01, 1, "its efficiency lies between 1 and 100 per cent");
    Accepted.power("inverter idle", idleW);
  }

  /** A direct-current pump on the battery itself: nothing between. */
  public static Inverter none() {
    return new Inverter(1, 0);
  }
}

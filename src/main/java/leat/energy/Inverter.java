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

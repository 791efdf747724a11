package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Filling a riser after a stop.
 *
 * <pre>t = A lift/Q_running   (cautious)</pre>
 *
 * <p>Assumed: all pipe above the level is upright, no air is trapped, the column's inertia and the
 * motor's run-up are left out; so good to half a second.
 *
 * <p>Source: sheet hydraulics.md section 7; check values: hydraulics-fill.csv.
 */
public final class Fill {
  private Fill() {}

  /**
   * Volume over running flow, the cautious time.
   *
   * @param volume to be filled, m3, 0 or more
   * @param flow when running, m3/s, above 0
   * @return s
   * @throws Impossible if the volume is negative or the flow not above 0
   */
  public static double simpleTime(double volume, double flow) {
    return Impossible.ifNegative("volume", volume) / Impossible.unlessPositive("flow", flow);
  }
}

package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * What a pump curve accepts.
 *
 * <p>Source: sheet hydraulics.md section 5; the outer limits only keep the sums finite.
 */
final class Accepted {
  /** Less head than this is the end of the curve: no share of it explains anything, m. */
  static final double NO_HEAD = 1e-12;

  /**
   * Heads closer than this are equal, m: outlet less level leaves such a rest where decimal numbers
   * would leave none, and a tenth of a nanometre of water drives nothing.
   */
  static final double SAME_HEAD = 1e-10;

  private Accepted() {}

  /** How much {@code head} is over {@code lift}, m; exactly 0 when they are equal. */
  static double over(double head, double lift) {
    double over = head - lift;
    return Math.abs(over) <= SAME_HEAD ? 0 : over;
  }

  static double head(String quantity, double head) {
    Impossible.unlessPositive(quantity, head);
    return Impossible.unlessWithin(
        quantity, head, 1e-9, TubeLimits.MOST_HEAD, "a pump's head is under a kilometre: m or mm?");
  }

  static double flow(String quantity, double flow) {
    Impossible.unlessPositive(quantity, flow);
    return Impossible.unlessWithin(quantity, flow, 1e-12, 50, "a pump's flow is at most 50 m3/s");
  }

  static double onCurve(double flow, double maxFlow) {
    return Impossible.unlessWithin(
        "flow", flow, 0, maxFlow, "it lies past the end of the pump's curve");
  }
}

package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * What a pump curve accepts.
 *
 * <p>Source: sheet hydraulics.md section 5; the outer limits only keep the sums finite.
 */
final class CurveLimits {
  /** Less head than this is the end of the curve: no share of it explains anything, m. */
  static final double NO_HEAD = 1e-12;

  private CurveLimits() {}

  static double head(String quantity, double head) {
    Impossible.unlessPositive(quantity, head);
    return Impossible.unlessWithin(
        quantity, head, 1e-9, 1e4, "a pump's head is under ten kilometres");
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

package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.MonotoneCubic;

/**
 * A monotone cubic through listed points.
 *
 * <p>Source: {@link MonotoneCubic}; sheet hydraulics.md section 5.
 */
final class ListedCurve implements PumpCurve {
  private final MonotoneCubic cubic;
  private final double maxFlow;

  ListedCurve(double[] flows, double[] heads) {
    int n = flows.length;
    if (n < 2 || n != heads.length) {
      throw new Impossible("curve", "a pump curve needs at least two points");
    }
    if (flows[0] != 0) {
      throw new Impossible("curve", "its first point is the shut-off head, at a flow of 0");
    }
    Accepted.head("curve", heads[0]);
    for (int i = 1; i < n; i++) {
      Accepted.flow("curve", flows[i]);
      if (!(flows[i] > flows[i - 1])) {
        throw new Impossible("curve", "flows must rise from point to point");
      }
      if (!(heads[i] <= heads[i - 1])) {
        throw new Impossible("curve", "heads must not rise with the flow");
      }
      Impossible.ifNegative("curve", heads[i]);
    }
    cubic = new MonotoneCubic(flows, heads);
    maxFlow = flows[n - 1];
  }

  @Override
  public double head(double flow) {
    return cubic.value(Accepted.onCurve(flow, maxFlow));
  }

  @Override
  public double slope(double flow) {
    return cubic.slope(Accepted.onCurve(flow, maxFlow));
  }

  @Override
  public double maxFlow() {
    return maxFlow;
  }
}

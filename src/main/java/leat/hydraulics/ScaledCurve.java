package leat.hydraulics;

/**
 * A curve with its heads and flows multiplied: derate or speed.
 *
 * <p>Source: affinity laws; sheet hydraulics.md section 5.
 */
final class ScaledCurve implements PumpCurve {
  private final PumpCurve printed;
  private final double headShare;
  private final double flowShare;
  private final double maxFlow;

  ScaledCurve(PumpCurve printed, double headShare, double flowShare) {
    this.printed = printed;
    this.headShare = headShare;
    this.flowShare = flowShare;
    this.maxFlow = flowShare * printed.maxFlow();
  }

  @Override
  public double head(double flow) {
    return headShare * printed.head(printedFlow(flow));
  }

  @Override
  public double slope(double flow) {
    return headShare / flowShare * printed.slope(printedFlow(flow));
  }

  /** The division may pass the printed end by one unit in the last place. */
  private double printedFlow(double flow) {
    return Math.min(Accepted.onCurve(flow, maxFlow) / flowShare, printed.maxFlow());
  }

  @Override
  public double maxFlow() {
    return maxFlow;
  }
}

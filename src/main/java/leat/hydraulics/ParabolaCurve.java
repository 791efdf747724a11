package leat.hydraulics;

/**
 * H = H0 (1 - (Q/Qmax)^2).
 *
 * <p>Source: sheet hydraulics.md section 5.
 */
final class ParabolaCurve implements PumpCurve {
  private final double shutoffHead;
  private final double maxFlow;

  ParabolaCurve(double shutoffHead, double maxFlow) {
    this.shutoffHead = Accepted.head("shutoff_head", shutoffHead);
    this.maxFlow = Accepted.flow("max_flow", maxFlow);
  }

  @Override
  public double head(double flow) {
    double share = Accepted.onCurve(flow, maxFlow) / maxFlow;
    return shutoffHead * (1 - share * share);
  }

  @Override
  public double slope(double flow) {
    return -2 * shutoffHead * Accepted.onCurve(flow, maxFlow) / (maxFlow * maxFlow);
  }

  @Override
  public double maxFlow() {
    return maxFlow;
  }
}

package leat.hydraulics;

/**
 * A line that is asked for its loss at one flow after the other, each close to the last: the
 * friction that one answer found is where the next one starts.
 *
 * <p>Source: as {@link Line}.
 */
final class LossAt {
  private final Stretch[] stretches;
  private final double[] inverseRoots;
  private double flow;
  private double loss;
  private double weighted;

  LossAt(Stretch[] stretches) {
    this.stretches = stretches;
    this.inverseRoots = new double[stretches.length];
    for (int i = 0; i < inverseRoots.length; i++) {
      inverseRoots[i] = Colebrook.START;
    }
  }

  /** Asks at a flow, m3/s, above 0; returns the loss, m. */
  double ask(double flow) {
    this.flow = flow;
    loss = 0;
    weighted = 0;
    for (int i = 0; i < stretches.length; i++) {
      inverseRoots[i] = stretches[i].addTo(this, flow, inverseRoots[i]);
    }
    return loss;
  }

  void add(double more, double timesPower) {
    loss += more;
    weighted += timesPower;
  }

  /** d(ln loss)/d(ln Q) there, -: 1 laminar, 2 fittings, 1.8 smooth. */
  double power() {
    return weighted / loss;
  }

  /** d loss/dQ there, m per m3/s. */
  double slope() {
    return weighted / flow;
  }
}

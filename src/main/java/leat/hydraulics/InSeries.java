package leat.hydraulics;

/**
 * Pump, common pipe and some equal risers: the flow of one riser at which the pump's head is used
 * up, by Newton's steps kept in a bracket, because what is left falls all the way.
 *
 * <pre>H'(n Q) - loss_common(n Q) - z - loss(Q) = 0</pre>
 *
 * <p>Source: sheet hydraulics.md sections 5 and 6; check values: hydraulics-operating-point.csv,
 * hydraulics-manifold.csv.
 */
final class InSeries {
  /** A relative step this small ends the search; past a kink it leaves an error under 1E-12. */
  private static final double LAST_STEP = 1e-11;

  private static final int MOST_STEPS = 100;

  private final PumpCurve curve;
  private final LossAt common;
  private final LossAt riser;
  private final double lift;
  private final double roughLoss;
  private final int n;
  private double left;
  private double slope;

  private InSeries(PumpCurve curve, Line common, Riser riser, int n) {
    this.curve = curve;
    this.common = common == null ? null : common.asked();
    this.riser = riser.line().asked();
    this.lift = riser.lift();
    this.roughLoss = riser.line().roughLoss() + (common == null ? 0 : n * n * common.roughLoss());
    this.n = n;
  }

  /** Whether all risers that are open are equal. */
  static boolean fits(Manifold manifold) {
    int first = -1;
    for (int i = 0; i < manifold.size(); i++) {
      if (!manifold.isClosed(i) && first < 0) {
        first = i;
      } else if (!manifold.isClosed(i) && !manifold.areSame(i, first)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Flows of risers that fit.
   *
   * @param manifold the risers, one or more open, the lift of these under the curve's head
   * @param common pipe before them, or null
   * @param curve the pump, derated
   * @throws leat.numeric.Impossible if a riser has neither length nor K
   */
  static ManifoldFlow solve(Manifold manifold, Line common, PumpCurve curve) {
    Riser riser = null;
    int n = 0;
    for (int i = 0; i < manifold.size(); i++) {
      riser = manifold.isClosed(i) ? riser : manifold.riser(i);
      n += manifold.isClosed(i) ? 0 : 1;
    }
    double end = curve.maxFlow();
    double each = new InSeries(curve, common, riser, n).search(end / n);
    double[] flows = new double[manifold.size()];
    for (int i = 0; i < flows.length; i++) {
      flows[i] = manifold.isClosed(i) ? 0 : each;
    }
    if (each == end / n) {
      return manifold.runOut(end, curve.head(end), curve.shutoffHead(), flows);
    }
    manifold.acceptSpeeds(n * each, flows);
    double head = curve.head(n * each);
    double lost = manifold.commonLoss(n * each);
    return new ManifoldFlow(
        manifold,
        OperatingPoint.Status.FLOW,
        n * each,
        head,
        lost,
        head - lost,
        curve.shutoffHead(),
        flows);
  }

  /** As if the pump's curve were a parabola and friction that of a usual tube. */
  private double start(double end) {
    double shutoff = curve.shutoffHead();
    double fall = (shutoff - curve.head(curve.maxFlow())) / (end * end);
    return Math.sqrt((shutoff - lift) / (fall + roughLoss));
  }

  private double search(double end) {
    double low = 0;
    double high = end;
    double q = start(end);
    boolean endKnown = false;
    for (int step = 0; step < MOST_STEPS; step++) {
      if (q >= high && !endKnown) {
        endKnown = true;
        ask(end);
        if (left >= 0) {
          return end;
        }
      }
      if (!(q > low && q < high)) {
        q = 0.5 * (low + high);
      }
      ask(q);
      if (left > 0) {
        low = q;
      } else {
        high = q;
      }
      double next = q - left / slope;
      if (Math.abs(next - q) <= LAST_STEP * q) {
        return Math.min(next, end);
      }
      q = next;
    }
    return Math.min(q, end);
  }

  /** What is left of the pump's head at a flow of one riser, and how it falls with that. */
  private void ask(double q) {
    double total = Math.min(n * q, curve.maxFlow());
    left = curve.head(total) - lift - riser.ask(q);
    slope = n * curve.slope(total) - riser.slope();
    if (common != null) {
      left -= common.ask(total);
      slope -= n * common.slope();
    }
  }
}

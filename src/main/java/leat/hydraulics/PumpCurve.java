package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Head of a pump over flow, falling from the shut-off head at no flow to the end of what is known.
 *
 * <pre>
 * parabola   H = H0 (1 - (Q/Qmax)^2)
 * derated    H'(Q) = d H(Q), the same greatest flow
 * speed n    H'(Q) = n^2 H(Q/n), greatest flow n Qmax (affinity laws)
 * </pre>
 *
 * <p>Source: sheet hydraulics.md section 5; check values: hydraulics-pump-curve.csv.
 */
public interface PumpCurve {
  /** Usual share of the printed head that a new pump gives, - (practice, no source). */
  double USUAL_DERATE_NEW = 0.85;

  /** The same of a worn or no-name pump, - (practice, no source). */
  double USUAL_DERATE_WORN = 0.70;

  /**
   * A pump of more than so many times the head is another machine, not a stronger one of its kind,
   * - (practice, no source).
   */
  double MOST_STRONGER = 3;

  /** Whether a pump of so much head at no flow, m, is one of this kind still. */
  default boolean couldBe(double shutoffHead) {
    return shutoffHead <= MOST_STRONGER * shutoffHead();
  }

  /**
   * Head at a flow, m.
   *
   * @param flow m3/s, 0 to {@link #maxFlow()}
   * @throws Impossible outside: the curve is not extrapolated
   */
  double head(double flow);

  /** Slope of the head at a flow, m per m3/s, never above 0; range as {@link #head}. */
  double slope(double flow);

  /** The end of the curve, m3/s; past it nothing is known. */
  double maxFlow();

  /** Head at no flow, m. */
  default double shutoffHead() {
    return head(0);
  }

  /**
   * The pump that gives this share of the head at every flow.
   *
   * @param share -, above 0, 2 at most (over 1 only as the outcome of a measurement)
   * @return the derated curve
   * @throws Impossible outside
   */
  default PumpCurve derated(double share) {
    Impossible.unlessPositive("derate", share);
    Impossible.unlessWithin("derate", share, 0, 2, "a derate is the share of printed head left");
    return share == 1 ? this : new ScaledCurve(this, share, 1);
  }

  /**
   * The same pump at another speed.
   *
   * @param ratio speed over printed speed, -, above 0, 2 at most; 50/60 at 50 Hz for a 60 Hz print
   * @return the curve at that speed
   * @throws Impossible outside
   */
  default PumpCurve atSpeed(double ratio) {
    Impossible.unlessPositive("speed", ratio);
    Impossible.unlessWithin("speed", ratio, 0, 2, "a speed ratio is between 0 and 2");
    return ratio == 1 ? this : new ScaledCurve(this, ratio * ratio, ratio);
  }

  /**
   * A parabola from the two ends; a stand-in when nothing else is printed.
   *
   * @param shutoffHead head at no flow, m, above 0
   * @param maxFlow flow at no head, m3/s, above 0
   * @return the curve
   * @throws Impossible unless both are above 0
   */
  static PumpCurve parabola(double shutoffHead, double maxFlow) {
    return new ParabolaCurve(shutoffHead, maxFlow);
  }

  /**
   * A monotone cubic through printed points; a straight line through two.
   *
   * @param flows m3/s, from 0, strictly rising, at least two
   * @param heads m, as many, never rising, the last 0 or more
   * @return the curve
   * @throws Impossible with the mistake
   */
  static PumpCurve points(double[] flows, double[] heads) {
    return new ListedCurve(flows, heads);
  }
}

package leat.hydraulics;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Roots;

/**
 * Where a pump's curve meets what hangs on it: the root of H(Q) = H_s(Q) on the curve, found in a
 * bracket because the difference falls all the way.
 *
 * <p>Source: sheet hydraulics.md section 5; check values: hydraulics-operating-point.csv.
 *
 * @param status what the answer is
 * @param flow m3/s, exactly 0 for no flow
 * @param head head the pump gives there, m; for no flow the shut-off head, to which water stands
 * @param lift height of the (lowest) outlet over the tank's level, m
 * @param shutoffHead head of the curve at no flow, m, as derated
 */
public record OperatingPoint(
    Status status, double flow, double head, double lift, double shutoffHead) {

  /** Least margin over the lift to want, - (practice, no source). */
  public static final double USUAL_MARGIN = 0.20;

  /** What became of the search. */
  public enum Status {
    /** Water runs. */
    FLOW,
    /** The pump does not lift it over the outlet. */
    NO_FLOW,
    /** The pump would run at or past the end of its curve; the flow is that end. */
    RUN_OUT
  }

  /**
   * The operating point.
   *
   * @param curve the pump, derated
   * @param system what hangs on it
   * @return the point
   */
  public static OperatingPoint of(PumpCurve curve, WaterSystem system) {
    double shutoff = curve.shutoffHead();
    double lift = system.leastLift();
    if (Accepted.over(shutoff, lift) <= 0) {
      return new OperatingPoint(Status.NO_FLOW, 0, shutoff, lift, shutoff);
    }
    double end = curve.maxFlow();
    double endHead = curve.head(end);
    if (endHead >= system.head(end)) {
      return new OperatingPoint(Status.RUN_OUT, end, endHead, lift, shutoff);
    }
    double flow = Roots.bracketed(difference(curve, system), 0, end);
    return new OperatingPoint(Status.FLOW, flow, curve.head(flow), lift, shutoff);
  }

  private static DoubleUnaryOperator difference(PumpCurve curve, WaterSystem system) {
    return new DoubleUnaryOperator() {
      @Override
      public double applyAsDouble(double q) {
        return curve.head(q) - system.head(q);
      }
    };
  }
}

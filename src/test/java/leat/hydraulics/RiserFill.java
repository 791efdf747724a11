package leat.hydraulics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;

/**
 * Filling a riser after a stop in all its times, and what runs back: the second route to {@link
 * Fill}.
 *
 * <pre>
 * simple      t = A lift/Q_running                 (see Fill: what the commands report)
 * integrated  t = integral of A dz/Q(z),   Q(z) from H'(Q) = z + ((L - lift + z) f/D + K) v^2/2g
 * drain-back  A lift, or A H'(0) where the pump does not reach; 0 with a check valve
 * </pre>
 *
 * <p>Assumed: all pipe above the level is upright, fittings lie below it, no air is trapped, the
 * column's inertia and the motor's run-up are left out; so good to half a second.
 *
 * <p>Source: sheet hydraulics.md section 7; check values: hydraulics-fill.csv.
 *
 * @param reaches whether water comes out at the top
 * @param flow when running, m3/s
 * @param riserVolume between the tank's level and the outlet, m3
 * @param firstFillTime simple time of the first filling, s; empty if it does not reach
 * @param integratedTime the same, integrated, s; empty if it does not reach
 * @param fillTime at every start, simple, s: 0 with a check valve; empty if it does not reach
 * @param restartTime at every start, integrated, s: 0 with a check valve
 * @param standsAt height of the column over the level while the pump runs, m
 * @param drainBack what the riser gives back at a stop, m3 (the film comes on top)
 */
record RiserFill(
    boolean reaches,
    double flow,
    double riserVolume,
    OptionalDouble firstFillTime,
    OptionalDouble integratedTime,
    OptionalDouble fillTime,
    OptionalDouble restartTime,
    double standsAt,
    double drainBack) {

  private static final double INTEGRAL_ERROR = 1e-5;

  /**
   * Filling and draining back of one riser.
   *
   * @param curve the pump, derated
   * @param riser from the pump to the outlet
   * @param checkValve whether one at the pump holds the column
   * @return times and volumes
   */
  static RiserFill of(PumpCurve curve, Riser riser, boolean checkValve) {
    OperatingPoint point = OperatingPoint.of(curve, riser);
    double volume = riser.volumeAboveLevel();
    double stands = Math.min(point.shutoffHead(), point.lift());
    double back = checkValve ? 0 : riser.volumeUpTo(stands);
    OptionalDouble none = OptionalDouble.empty();
    if (point.status() == OperatingPoint.Status.NO_FLOW) {
      return new RiserFill(false, 0, volume, none, none, none, none, stands, back);
    }
    OptionalDouble simple = OptionalDouble.of(Fill.simpleTime(volume, point.flow()));
    OptionalDouble integrated = OptionalDouble.of(integratedTime(curve, riser));
    OptionalDouble zero = OptionalDouble.of(0);
    return new RiserFill(
        true,
        point.flow(),
        volume,
        simple,
        integrated,
        checkValve ? zero : simple,
        checkValve ? zero : integrated,
        stands,
        back);
  }

  /**
   * Rise of the tank's level by what comes back.
   *
   * @param volume m3, 0 or more
   * @param planArea of the tank at that level, m2, above 0
   * @return m
   * @throws Impossible if the volume is negative or the area not above 0
   */
  static double tankRise(double volume, double planArea) {
    return Impossible.ifNegative("volume", volume) / Impossible.unlessPositive("area", planArea);
  }

  /** z = lift (1 - s^2): no steep end where the margin is thin. */
  private static double integratedTime(PumpCurve curve, Riser riser) {
    double lift = riser.lift();
    if (lift <= 0) {
      return 0;
    }
    Line line = riser.line();
    DoubleUnaryOperator slice =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double s) {
            double empty = lift * s * s;
            double area = line.section(Pipes.sectionBack(line, empty)).area();
            return 2 * lift * s * area / flowWhile(curve, line, lift - empty, empty);
          }
        };
    return Quadrature.integral(slice, 0, 1, INTEGRAL_ERROR);
  }

  private static double flowWhile(PumpCurve curve, Line line, double height, double empty) {
    DoubleUnaryOperator difference =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double q) {
            return curve.head(q) - height - Pipes.lossWhileFilling(line, q, empty);
          }
        };
    double end = curve.maxFlow();
    return difference.applyAsDouble(end) >= 0 ? end : Roots.bracketed(difference, 0, end);
  }
}

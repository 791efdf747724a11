package leat.energy;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;

/**
 * By how much all rests of a timetable must be stretched, or all runs cut, so that a period costs
 * no more than a limit.
 *
 * <p>Source: {@link Bill}, solved for a factor on every rest or run; the cost falls as rests grow
 * and runs get shorter unless a coil draws more in the rests than the pump in the runs.
 */
public final class CostFactor {
  /** Longest stretch tried: a rest of a minute becomes one of 16 hours. */
  private static final double MOST = 1000;

  /** Shortest cut tried: a run of a minute becomes one of 0.6 s. */
  private static final double LEAST = 0.01;

  private final Overlap overlap;
  private final Tariff tariff;
  private final Draw draw;

  /**
   * @param overlap of the timetable's and the tariff's windows over the period
   * @param tariff the prices
   * @param draw what draws power
   */
  public CostFactor(Overlap overlap, Tariff tariff, Draw draw) {
    this.overlap = overlap;
    this.tariff = tariff;
    this.draw = draw;
  }

  /**
   * The least factor on every rest.
   *
   * @param timetable the timings
   * @param limit the most the period may cost, money, 0 or more
   * @return 1 when it costs no more already; empty when no stretch is enough
   * @throws Impossible if the limit is negative
   */
  public OptionalDouble onRests(Timetable timetable, double limit) {
    return solved(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double factor) {
            return cost(timetable.times(1, factor)) - limit;
          }
        },
        MOST,
        limit);
  }

  /**
   * The greatest factor on every run.
   *
   * @param timetable the timings
   * @param limit the most the period may cost, money, 0 or more
   * @return 1 when it costs no more already; empty when no cut is enough
   * @throws Impossible if the limit is negative
   */
  public OptionalDouble onRuns(Timetable timetable, double limit) {
    return solved(
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double factor) {
            return cost(timetable.times(factor, 1)) - limit;
          }
        },
        LEAST,
        limit);
  }

  private double cost(Timetable timetable) {
    return Bill.of(overlap, timetable, tariff, draw).cost();
  }

  private static OptionalDouble solved(DoubleUnaryOperator over, double furthest, double limit) {
    Impossible.ifNegative("limit", limit);
    if (over.applyAsDouble(1) <= 0) {
      return OptionalDouble.of(1);
    }
    if (over.applyAsDouble(furthest) > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Roots.bracketed(over, Math.min(1, furthest), Math.max(1, furthest)));
  }
}

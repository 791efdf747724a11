package leat.energy;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;

/**
 * By how much all runs of a timetable must be cut so that a period costs no more than a limit.
 *
 * <p>Source: {@link Bill}, solved for a factor on every run; the cost falls as runs get shorter
 * unless a coil draws more in the rests than the pump in the runs.
 */
public final class RunFactor {
  /** Shortest cut tried: a run of a minute becomes one of 0.6 s. */
  private static final double LEAST = 0.01;

  private RunFactor() {}

  /**
   * The greatest factor on every run.
   *
   * @param overlap of the timetable's and the tariff's windows over the period
   * @param timetable the timings
   * @param tariff the prices
   * @param draw what draws power
   * @param limit the most the period may cost, money, 0 or more
   * @return 1 when it costs no more already; empty when no cut is enough
   * @throws Impossible if the limit is negative
   */
  public static OptionalDouble forCost(
      Overlap overlap, Timetable timetable, Tariff tariff, Draw draw, double limit) {
    Impossible.ifNegative("limit", limit);
    DoubleUnaryOperator over =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double factor) {
            return Bill.of(overlap, cut(timetable, factor), tariff, draw).cost() - limit;
          }
        };
    if (over.applyAsDouble(1) <= 0) {
      return OptionalDouble.of(1);
    }
    if (over.applyAsDouble(LEAST) > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Roots.bracketed(over, LEAST, 1));
  }

  /**
   * The timetable with every run so many times as long.
   *
   * @param timetable the timings
   * @param factor on every run, -, above 0
   * @return the timetable
   */
  public static Timetable cut(Timetable timetable, double factor) {
    Window[] windows = new Window[timetable.size()];
    Timing[] timings = new Timing[timetable.size()];
    for (int i = 0; i < windows.length; i++) {
      windows[i] = timetable.windows().window(i);
      timings[i] = new Timing(factor * timetable.timing(i).runS(), timetable.timing(i).restS());
    }
    return new Timetable(windows, timings);
  }
}

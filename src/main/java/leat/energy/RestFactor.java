package leat.energy;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;

/**
 * By how much all rests of a timetable must be stretched so that a period costs no more than a
 * limit.
 *
 * <p>Source: {@link Bill}, solved for a factor on every rest; the cost falls as rests grow unless a
 * coil draws more in the rests than the pump in the runs.
 */
public final class RestFactor {
  /** Longest stretch tried: a rest of a minute becomes one of 16 hours. */
  private static final double MOST = 1000;

  private RestFactor() {}

  /**
   * The least factor on every rest.
   *
   * @param overlap of the timetable's and the tariff's windows over the period
   * @param timetable the timings
   * @param tariff the prices
   * @param draw what draws power
   * @param limit the most the period may cost, money, 0 or more
   * @return 1 when it costs no more already; empty when no stretch is enough
   * @throws Impossible if the limit is negative
   */
  public static OptionalDouble forCost(
      Overlap overlap, Timetable timetable, Tariff tariff, Draw draw, double limit) {
    Impossible.ifNegative("limit", limit);
    DoubleUnaryOperator over =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double factor) {
            return Bill.of(overlap, stretched(timetable, factor), tariff, draw).cost() - limit;
          }
        };
    if (over.applyAsDouble(1) <= 0) {
      return OptionalDouble.of(1);
    }
    if (over.applyAsDouble(MOST) > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Roots.bracketed(over, 1, MOST));
  }

  /** The timetable with every rest so many times as long. */
  private static Timetable stretched(Timetable timetable, double factor) {
    Window[] windows = new Window[timetable.size()];
    Timing[] timings = new Timing[timetable.size()];
    for (int i = 0; i < windows.length; i++) {
      windows[i] = timetable.windows().window(i);
      timings[i] = new Timing(timetable.timing(i).runS(), factor * timetable.timing(i).restS());
    }
    return new Timetable(windows, timings);
  }
}

package leat.season;

import leat.numeric.Impossible;

/**
 * Handy values to try, one after the other: whole multiples of a step.
 *
 * <p>Source: none; counting.
 */
public final class Steps {
  /** More than this is no search but a mistake. */
  private static final int MOST = 100_000;

  private Steps() {}

  /**
   * The multiples of {@code step} over {@code from}, up to {@code most}.
   *
   * @param from values start above this, in the lever's unit
   * @param step the step, same unit
   * @param most the largest, included, same unit
   * @return rising values; empty when there is none
   * @throws Impossible if the step is not above 0, or there are far too many
   */
  public static double[] rising(double from, double step, double most) {
    long first = (long) Math.floor(from / checked(step) + 1e-9) + 1;
    long last = (long) Math.floor(most / step + 1e-9);
    double[] values = room(last - first + 1);
    for (int i = 0; i < values.length; i++) {
      values[i] = (first + i) * step;
    }
    return values;
  }

  /**
   * The multiples of {@code step} under {@code from}, down to {@code least}.
   *
   * @param from values start under this, in the lever's unit
   * @param step the step, same unit
   * @param least the smallest, included, same unit
   * @return falling values; empty when there is none
   * @throws Impossible if the step is not above 0, or there are far too many
   */
  public static double[] falling(double from, double step, double least) {
    long first = (long) Math.ceil(from / checked(step) - 1e-9) - 1;
    long last = (long) Math.ceil(least / step - 1e-9);
    double[] values = room(first - last + 1);
    for (int i = 0; i < values.length; i++) {
      values[i] = (first - i) * step;
    }
    return values;
  }

  private static double checked(double step) {
    return Impossible.unlessPositive("step", step);
  }

  private static double[] room(long n) {
    if (n > MOST) {
      throw new Impossible("step", "so small a step makes too many values to try");
    }
    return new double[(int) Math.max(0, n)];
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Warmth of a day over a base: the common face of {@link SimpleDegreeDays}, {@link
 * ClippedDegreeDays} and {@link SineDegreeDays}. They differ most on cool days: a target found with
 * one must not be used with another.
 *
 * <p>Source: sheet season.md section 6.
 */
public enum DegreeDays {
  SIMPLE,
  /** The usual one. */
  CLIPPED,
  SINE;

  /** Upper temperature of a crop that has none, C. */
  public static final double NO_UPPER = Double.POSITIVE_INFINITY;

  /** How far under the target a running sum counts as reached, C d. */
  private static final double TO_SPARE = 1e-9;

  /** Degree days of one day, C d; temperatures, base and upper in C. */
  public double ofDay(double tmin, double tmax, double base, double upper) {
    return switch (this) {
      case SIMPLE -> SimpleDegreeDays.ofDay(tmin, tmax, base);
      case CLIPPED -> ClippedDegreeDays.ofDay(tmin, tmax, base, upper);
      case SINE -> SineDegreeDays.ofDay(tmin, tmax, base, upper);
    };
  }

  /**
   * Days until the sum reaches a target; the first day counts and is day 0. -1 when it is not
   * reached. Arrays and bounds in C, target in C d.
   */
  public int daysTo(
      double target, double[] tmin, double[] tmax, int from, double base, double upper) {
    Impossible.unlessPositive("warmth", target);
    double sum = 0;
    for (int i = from; i < tmin.length; i++) {
      sum += ofDay(tmin[i], tmax[i], base, upper);
      if (sum >= target - TO_SPARE) {
        return i - from;
      }
    }
    return -1;
  }

  static void bounds(double tmin, double tmax, double base, double upper) {
    Accepted.range(tmin, tmax);
    if (!(upper > base)) {
      throw new Impossible("upper", "the upper temperature lies above the base");
    }
  }
}

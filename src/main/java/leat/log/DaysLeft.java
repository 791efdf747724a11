package leat.log;

import leat.numeric.Impossible;

/**
 * Days until the low mark, with an 80 % interval.
 *
 * <pre>
 * days = (V - V_low)/m      interval: D where m D +- z sqrt(sv^2 + s^2 D + s^2 D^2/n) = V - V_low
 * sv = width of the band/sqrt(12),  z = 1.2816: low end with +, high end with -; clipped at 0</pre>
 *
 * <p>Source: sheet log.md section 5; check values log-forecast.csv.
 *
 * @param days days left
 * @param low low end of the interval
 * @param high high end; Infinity when the scatter allows no end
 */
public record DaysLeft(double days, double low, double high) {
  /** Quantile of 90 % of the normal distribution, -, rounded to 1.2816 in print. */
  public static final double Z = 1.2815515655446004;

  /**
   * Days left.
   *
   * @param volume volume now, m3
   * @param band width of the band it lies in, m3
   * @param lowMark volume at the low mark, m3
   * @param mean mean use of a day, m3
   * @param sd standard deviation of a day's use, m3
   * @param n days it was taken from, -
   * @throws Impossible if the mean is not above 0, or n is below 1
   */
  public static DaysLeft of(
      double volume, double band, double lowMark, double mean, double sd, int n) {
    Impossible.unlessPositive("use", mean);
    Impossible.ifNegative("sd", sd);
    Impossible.unlessWithin("n", n, 1, 1e9, "a mean needs a day");
    double left = volume - lowMark;
    double sv = band / Math.sqrt(12);
    return new DaysLeft(
        Math.max(0, left / mean), end(left, sv, mean, sd, n, 1), end(left, sv, mean, sd, n, -1));
  }

  /**
   * A root of (m D - left)^2 = z^2 (sv^2 + s^2 D + s^2 D^2/n): the lower one for the low end, the
   * upper one for the high end.
   */
  private static double end(double left, double sv, double m, double s, int n, int sign) {
    double z2 = Z * Z;
    double a = m * m - z2 * s * s / n;
    double b = -2 * left * m - z2 * s * s;
    double c = left * left - z2 * sv * sv;
    double root = b * b - 4 * a * c;
    if (a > 0 && root < 0) {
      return 0;
    }
    if (a <= 0) {
      return sign > 0 ? lowWithoutEnd(a, b, c) : Double.POSITIVE_INFINITY;
    }
    double end = (-b - sign * Math.sqrt(root)) / (2 * a);
    return onBranch(end, m, left, sign) ? Math.max(0, end) : 0;
  }

  private static double lowWithoutEnd(double a, double b, double c) {
    double root = b * b - 4 * a * c;
    double d = a == 0 ? -c / b : (-b - Math.sqrt(Math.max(0, root))) / (2 * a);
    return Math.max(0, d);
  }

  /** The low end lies where m D is below what is left, the high end above. */
  private static boolean onBranch(double end, double m, double left, int sign) {
    return sign > 0 ? m * end <= left + 1e-9 : m * end >= left - 1e-9;
  }
}

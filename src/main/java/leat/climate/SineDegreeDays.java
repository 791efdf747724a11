package leat.climate;

import leat.numeric.Impossible;

/**
 * Degree days of one sine between the day's temperatures, with a horizontal cut-off.
 *
 * <pre>above(Tb) - above(Tu);  above(b) = M - b if Tmin >= b, 0 if Tmax <= b, else
 * ((M - b)(pi/2 - th) + A cos th)/pi with th = asin((b - M)/A), M the mean, A the half span</pre>
 *
 * <p>Source: single sine with horizontal cut-off as the University of California IPM pages define
 * it; closed form and 200 000-point integration in sheet season.md section 6; check values
 * season-gdd.csv.
 */
public final class SineDegreeDays {
  private SineDegreeDays() {}

  /**
   * One day.
   *
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param baseCelsius temperature under which nothing grows, C
   * @param upperCelsius temperature over which nothing is gained, C; infinite for none
   * @return C d
   * @throws Impossible if the highest lies under the lowest, or the upper not over the base
   */
  public static double ofDay(
      double tminCelsius, double tmaxCelsius, double baseCelsius, double upperCelsius) {
    DegreeDays.bounds(tminCelsius, tmaxCelsius, baseCelsius, upperCelsius);
    return above(tminCelsius, tmaxCelsius, baseCelsius)
        - above(tminCelsius, tmaxCelsius, upperCelsius);
  }

  private static double above(double tmin, double tmax, double bound) {
    double mean = (tmax + tmin) / 2;
    if (tmin >= bound) {
      return mean - bound;
    }
    if (tmax <= bound) {
      return 0;
    }
    double half = (tmax - tmin) / 2;
    double angle = Math.asin((bound - mean) / half);
    return ((mean - bound) * (Math.PI / 2 - angle) + half * Math.cos(angle)) / Math.PI;
  }
}

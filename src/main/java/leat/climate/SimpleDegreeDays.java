package leat.climate;

import leat.numeric.Impossible;

/**
 * Degree days of the day's mean over the base: max(0, (Tmax + Tmin)/2 - Tb).
 *
 * <p>Source: sheet season.md section 6, check values season-gdd.csv.
 */
public final class SimpleDegreeDays {
  private SimpleDegreeDays() {}

  /**
   * One day.
   *
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param baseCelsius temperature under which nothing grows, C
   * @return C d
   * @throws Impossible if the highest lies under the lowest
   */
  public static double ofDay(double tminCelsius, double tmaxCelsius, double baseCelsius) {
    Accepted.range(tminCelsius, tmaxCelsius);
    return Math.max(0, (tmaxCelsius + tminCelsius) / 2 - baseCelsius);
  }
}

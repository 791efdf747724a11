package leat.climate;

import leat.numeric.Impossible;

/**
 * Degree days with both temperatures first held between base and upper, then averaged.
 *
 * <p>Source: sheet season.md section 6, check values season-gdd.csv.
 */
public final class ClippedDegreeDays {
  private ClippedDegreeDays() {}

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
    double low = Math.max(baseCelsius, Math.min(upperCelsius, tminCelsius));
    double high = Math.max(baseCelsius, Math.min(upperCelsius, tmaxCelsius));
    return (low + high) / 2 - baseCelsius;
  }
}

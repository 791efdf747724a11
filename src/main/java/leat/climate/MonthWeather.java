package leat.climate;

import leat.numeric.Impossible;

/**
 * A month of a climate table.
 *
 * @param tminCelsius mean of the lowest temperatures, C
 * @param tmaxCelsius mean of the highest temperatures, C
 * @param rainMm rain of the month, mm
 * @param rainDays days with rain; {@link #UNKNOWN} when not given
 */
public record MonthWeather(double tminCelsius, double tmaxCelsius, double rainMm, int rainDays) {
  /** Rain days that are not given. */
  public static final int UNKNOWN = -1;

  /** Share of a month's days with rain when their number is not given (common practice). */
  public static final double RAINY_SHARE = 0.3;

  /**
   * @throws Impossible if the temperatures are out of range or turned, rain is negative, or rain
   *     has no day or more days than the month
   */
  public MonthWeather {
    Accepted.celsius("tmin", tminCelsius);
    Accepted.celsius("tmax", tmaxCelsius);
    Accepted.range(tminCelsius, tmaxCelsius);
    Impossible.ifNegative("rain", rainMm);
    if (rainDays < UNKNOWN || rainDays > 31) {
      throw new Impossible("rain_days", "a month has 0 to 31 days");
    }
    if (rainDays == 0 && rainMm > 0) {
      throw new Impossible("rain_days", "rain needs a day to fall on");
    }
  }

  /** Rain days in a month of so many days, never more than it has. */
  int rainDaysOf(int length) {
    int given = rainDays == UNKNOWN ? (int) Math.round(RAINY_SHARE * length) : rainDays;
    return Math.min(given, length);
  }
}

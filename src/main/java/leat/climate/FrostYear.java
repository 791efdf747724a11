package leat.climate;

import java.time.LocalDate;
import leat.numeric.Impossible;

/**
 * Last frost of spring and first of autumn round one summer: the year is split at 1 July in the
 * north, at 1 January in the south, where the year is the one in which spring lies.
 *
 * <p>Source: sheet season.md section 6, check values season-frost.csv; thresholds and margin are
 * common practice. Air at 2 m reads 2 to 4 K warmer than leaves on a clear night (from memory).
 *
 * @param year the year in which spring lies
 * @param lastSpring last day of spring with frost; null when none was seen
 * @param firstAutumn first day of autumn with frost; null when none was seen
 * @param whole whether the weather covers every day of that year of frost
 */
public record FrostYear(int year, LocalDate lastSpring, LocalDate firstAutumn, boolean whole) {
  /** Threshold of tender crops, C. */
  public static final double TENDER_CELSIUS = 0;

  /** Threshold of hardy leaf crops, C. */
  public static final double HARDY_CELSIUS = -2;

  /** Below this wet pipes freeze, C. */
  public static final double PIPES_CELSIUS = -1;

  /** Margin kept from the last frost and before the first, days. */
  public static final int MARGIN_DAYS = 14;

  /**
   * The frosts round the summer of a year.
   *
   * @param weather the weather
   * @param year the year in which spring lies
   * @param thresholdCelsius a lowest temperature down to this is frost, C
   * @param latitudeDegrees north positive, degrees
   * @throws Impossible if the latitude is outside its range
   */
  public static FrostYear of(
      Weather weather, int year, double thresholdCelsius, double latitudeDegrees) {
    boolean south = Accepted.latitude(latitudeDegrees) < 0;
    LocalDate begin = LocalDate.of(year, south ? 7 : 1, 1);
    LocalDate split = begin.plusMonths(6);
    LocalDate end = begin.plusMonths(12);
    LocalDate last = null;
    LocalDate first = null;
    boolean whole = true;
    for (LocalDate date = begin; date.isBefore(end); date = date.plusDays(1)) {
      WeatherDay day = weather.on(date);
      whole &= day != null && day.hasTemperatures();
      if (day != null && day.tminCelsius() <= thresholdCelsius) {
        if (date.isBefore(split)) {
          last = date;
        } else if (first == null) {
          first = date;
        }
      }
    }
    return new FrostYear(year, last, first, whole);
  }

  /**
   * The year in which the spring of a planting lies: in the south a season begins before New Year.
   *
   * @param day a day of the season
   * @param latitudeDegrees north positive, degrees
   */
  public static int springYear(LocalDate day, double latitudeDegrees) {
    boolean before = latitudeDegrees < 0 && day.getMonthValue() < 7;
    return before ? day.getYear() - 1 : day.getYear();
  }
}

package leat.climate;

import java.time.LocalDate;

/**
 * A year of a weather file that does not cover the season.
 *
 * @param year the year of the file in which the season would begin
 * @param missing the first run of missing days, in the file's own dates
 * @param daysMissing all missing days of the season
 * @param inside whether that run lies between days that are there: a hole, too long to fill; else
 *     the file begins too late or ends too early
 */
public record LeftOutYear(int year, WeatherGap missing, int daysMissing, boolean inside) {
  static LeftOutYear of(int year, LocalDate firstDay, WeatherDay[] season) {
    int first = firstDay(season, 0, season.length - 1);
    int last = season.length - 1;
    int missing = 0;
    for (int i = 0; i < season.length; i++) {
      missing += season[i] == null ? 1 : 0;
    }
    int from = -1;
    int to = -1;
    for (int i = first + 1; i <= last && to < 0; i++) {
      if (season[i] == null && from < 0) {
        from = i;
      }
      if (season[i] != null && from >= 0) {
        to = i - 1;
      }
    }
    boolean inside = first >= 0 && to >= 0;
    if (!inside) {
      from = season[0] == null ? 0 : from;
      to = season[0] == null && first >= 0 ? first - 1 : last;
    }
    int shift = year - firstDay.getYear();
    WeatherGap gap =
        new WeatherGap(
            firstDay.plusDays(from).plusYears(shift), firstDay.plusDays(to).plusYears(shift));
    return new LeftOutYear(year, gap, missing, inside);
  }

  private static int firstDay(WeatherDay[] season, int from, int to) {
    for (int i = from; i <= to; i++) {
      if (season[i] != null) {
        return i;
      }
    }
    return -1;
  }
}

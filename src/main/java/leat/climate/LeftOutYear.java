package leat.climate;

import java.time.LocalDate;

/**
 * A year of a weather file that does not cover the season.
 *
 * @param year the year of the file in which the season would begin
 * @param missing the first run of missing days, in the file's own dates
 * @param daysMissing all missing days of the season
 * @param inside whether the season's first and last day are there: a hole too long to fill, which
 *     is a mistake in the file; else the file begins too late or ends too early
 */
public record LeftOutYear(int year, WeatherGap missing, int daysMissing, boolean inside) {
  static LeftOutYear of(int year, LocalDate firstDay, WeatherDay[] season) {
    int from = -1;
    int to = -1;
    int missing = 0;
    for (int i = 0; i < season.length; i++) {
      if (season[i] == null) {
        missing++;
        from = from < 0 ? i : from;
        to = to < 0 || to == i - 1 ? i : to;
      }
    }
    int shift = year - firstDay.getYear();
    WeatherGap gap =
        new WeatherGap(
            firstDay.plusDays(from).plusYears(shift), firstDay.plusDays(to).plusYears(shift));
    boolean inside = season[0] != null && season[season.length - 1] != null;
    return new LeftOutYear(year, gap, missing, inside);
  }
}

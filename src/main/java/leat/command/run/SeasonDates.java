package leat.command.run;

import java.time.LocalDate;
import leat.quantity.DateWords;
import leat.system.SeasonOf;

/** Days of a season, counted from 0, as dates. */
final class SeasonDates {
  private SeasonDates() {}

  /** A date of the season. */
  static LocalDate date(SeasonOf season, int day) {
    return season.from().plusDays(day);
  }

  /** Days as dates, with commas and a final "and". */
  static String dates(SeasonOf season, int[] days) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < days.length; i++) {
      String before = i == 0 ? "" : i == days.length - 1 ? " and " : ", ";
      words.append(before).append(DateWords.day(date(season, days[i])));
    }
    return words.toString();
  }
}

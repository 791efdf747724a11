package leat.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * The frosts to plan by: of all years of the weather the latest last frost of spring and the
 * earliest first frost of autumn, not their means, moved into the year of the plan.
 *
 * <p>Source: sheet season.md section 6 (common practice).
 *
 * @param years whole years of frost that were looked at
 * @param lastSpring latest last frost, in the plan's year; null when none was seen
 * @param firstAutumn earliest first frost, likewise
 */
public record FrostDates(List<FrostYear> years, LocalDate lastSpring, LocalDate firstAutumn) {
  /**
   * From all whole years.
   *
   * @param weather the weather
   * @param planYear the year in which the plan's spring lies
   * @param thresholdCelsius a lowest temperature down to this is frost, C
   * @param latitudeDegrees north positive, degrees
   * @throws Impossible if the latitude is outside its range
   */
  public static FrostDates of(
      Weather weather, int planYear, double thresholdCelsius, double latitudeDegrees) {
    List<FrostYear> years = new ArrayList<>();
    LocalDate last = null;
    LocalDate first = null;
    for (int year = weather.first().getYear(); year <= weather.last().getYear(); year++) {
      FrostYear one = FrostYear.of(weather, year, thresholdCelsius, latitudeDegrees);
      if (one.whole()) {
        years.add(one);
        LocalDate spring = moved(one.lastSpring(), planYear - year);
        LocalDate autumn = moved(one.firstAutumn(), planYear - year);
        last = spring != null && (last == null || spring.isAfter(last)) ? spring : last;
        first = autumn != null && (first == null || autumn.isBefore(first)) ? autumn : first;
      }
    }
    return new FrostDates(List.copyOf(years), last, first);
  }

  private static LocalDate moved(LocalDate date, int years) {
    return date == null ? null : date.plusYears(years);
  }

  /** First day on which tender plants are safe outside, with the margin; null when no frost. */
  public LocalDate safeFrom() {
    return lastSpring == null ? null : lastSpring.plusDays(FrostYear.MARGIN_DAYS);
  }

  /** Last day on which they are, with the margin; null when no frost. */
  public LocalDate safeUntil() {
    return firstAutumn == null ? null : firstAutumn.minusDays(FrostYear.MARGIN_DAYS);
  }
}

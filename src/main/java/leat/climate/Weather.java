package leat.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.numeric.Impossible;

/**
 * Daily weather of one place in order of date, gaps of up to three days filled; and the seasons in
 * it, matched by month and day: 29 February missing takes 28 February.
 *
 * <p>Source: sheet season.md section 1, "Weather file" (our own choices).
 */
public final class Weather {
  /** Longest season, days. */
  public static final int MOST_DAYS = 3660;

  private static final Comparator<WeatherDay> BY_DATE =
      new Comparator<>() {
        @Override
        public int compare(WeatherDay a, WeatherDay b) {
          return a.date().compareTo(b.date());
        }
      };

  private final WeatherDay[] days;
  private final List<WeatherGap> filled;
  private final List<WeatherCaution> cautions;

  private Weather(List<WeatherDay> days, List<WeatherGap> filled, List<WeatherCaution> cautions) {
    this.days = days.toArray(new WeatherDay[0]);
    this.filled = List.copyOf(filled);
    this.cautions = List.copyOf(cautions);
  }

  /**
   * Weather from rows in any order.
   *
   * @throws Impossible by the first of {@link WeatherCheck#problems}, or if there is no row
   */
  public static Weather of(List<WeatherDay> rows) {
    if (rows.isEmpty()) {
      throw new Impossible("weather", "there is no day in it");
    }
    WeatherCheck.refuse(WeatherCheck.problems(rows));
    List<WeatherDay> sorted = new ArrayList<>(rows);
    sorted.sort(BY_DATE);
    GapFill fill = new GapFill(sorted);
    return new Weather(fill.days, fill.filled, Unlikely.of(rows));
  }

  /** First day. */
  public LocalDate first() {
    return days[0].date();
  }

  /** Last day. */
  public LocalDate last() {
    return days[days.length - 1].date();
  }

  /** Number of days, the filled ones too. */
  public int size() {
    return days.length;
  }

  /** Gaps that were filled. */
  public List<WeatherGap> filled() {
    return filled;
  }

  /** What is unlikely in the rows. */
  public List<WeatherCaution> cautions() {
    return cautions;
  }

  /** The weather of a date; null when it is not there. */
  public WeatherDay on(LocalDate date) {
    int i = place(date);
    return i < days.length && days[i].date().isEqual(date) ? days[i] : null;
  }

  /** Place of the first day that is not before the date. */
  private int place(LocalDate date) {
    int low = 0;
    int high = days.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (days[middle].date().isBefore(date)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * The season in every year of this weather. A year is named by the one its first day lies in.
   *
   * @param firstDay first day of the season, in its own year
   * @param length days of the season
   * @throws Impossible if it has no day or over {@link #MOST_DAYS}
   */
  public SeasonYears season(LocalDate firstDay, int length) {
    if (length < 1 || length > MOST_DAYS) {
      throw new Impossible("season", "it lasts 1 to 3660 days");
    }
    int longer = firstDay.plusDays(length - 1L).getYear() - firstDay.getYear();
    List<SeasonWeather> years = new ArrayList<>();
    List<LeftOutYear> leftOut = new ArrayList<>();
    for (int year = first().getYear() - longer; year <= last().getYear(); year++) {
      year(year, firstDay, length, years, leftOut);
    }
    return new SeasonYears(List.copyOf(years), List.copyOf(leftOut));
  }

  private void year(
      int year,
      LocalDate firstDay,
      int length,
      List<SeasonWeather> years,
      List<LeftOutYear> leftOut) {
    WeatherDay[] season = new WeatherDay[length];
    int there = 0;
    for (int i = 0; i < length; i++) {
      LocalDate date = firstDay.plusDays(i);
      WeatherDay day = matching(date, year - firstDay.getYear());
      if (day != null) {
        season[i] = day.on(date);
        there++;
      }
    }
    if (there == length) {
      years.add(new SeasonWeather(year, season));
    } else if (there > 0 || year >= first().getYear()) {
      leftOut.add(LeftOutYear.of(year, firstDay, season));
    }
  }

  private WeatherDay matching(LocalDate date, int shift) {
    // java.time turns 29 February into 28 February where the other year has none.
    WeatherDay day = on(date.plusYears(shift));
    boolean leap = date.getMonthValue() == 2 && date.getDayOfMonth() == 29;
    return day == null && leap ? on(date.minusDays(1).plusYears(shift)) : day;
  }
}

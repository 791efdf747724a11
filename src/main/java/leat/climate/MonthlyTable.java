package leat.climate;

import java.time.LocalDate;
import java.util.List;
import leat.numeric.Impossible;

/**
 * Days from a climate table of twelve months: temperatures on straight lines between the middles of
 * the months, December joining January; rain on equal days spread through the month, never on all
 * days, which would hide overflow.
 *
 * <pre>middle = first day + (L - 1)/2;  rain r/n on days floor((j - 0.5) L/n) + 1, j = 1..n</pre>
 *
 * <p>Monthly means in the place of days change ET0 after Hargreaves and Samani by -1.0 to +4.6 %
 * (48 months of Seattle).
 *
 * <p>Source: sheet season.md section 1 (our own choices), check values season-monthly.csv.
 */
public final class MonthlyTable {
  private static final int[] SHORTEST = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private final MonthWeather[] months;

  /**
   * @param months January to December
   * @throws Impossible unless there are twelve, none with more rain days than it has days
   */
  public MonthlyTable(List<MonthWeather> months) {
    if (months.size() != SHORTEST.length) {
      throw new Impossible("months", "a year has twelve months");
    }
    for (int i = 0; i < SHORTEST.length; i++) {
      if (months.get(i).rainDays() > SHORTEST[i] + (i == 1 ? 1 : 0)) {
        throw new Impossible("rain_days", "a month has more rain days than days");
      }
    }
    this.months = months.toArray(new MonthWeather[0]);
  }

  /** One day. */
  public WeatherDay day(LocalDate date) {
    MonthWeather own = months[date.getMonthValue() - 1];
    double past = date.getDayOfMonth() - 1 - (date.lengthOfMonth() - 1) / 2.0;
    LocalDate otherDate = date.withDayOfMonth(1).plusMonths(past < 0 ? -1 : 1);
    MonthWeather other = months[otherDate.getMonthValue() - 1];
    // From middle to middle: half of each month, whichever comes first.
    double share = Math.abs(past) / ((date.lengthOfMonth() + otherDate.lengthOfMonth()) / 2.0);
    return WeatherDay.of(
        date,
        own.tminCelsius() + share * (other.tminCelsius() - own.tminCelsius()),
        own.tmaxCelsius() + share * (other.tmaxCelsius() - own.tmaxCelsius()),
        rainMm(own, date));
  }

  private static double rainMm(MonthWeather month, LocalDate date) {
    int length = date.lengthOfMonth();
    int n = month.rainDaysOf(length);
    for (int j = 1; j <= n; j++) {
      if ((int) Math.floor((j - 0.5) * length / n) + 1 == date.getDayOfMonth()) {
        return month.rainMm() / n;
      }
    }
    return 0;
  }

  /**
   * The days of a season.
   *
   * @throws Impossible if it has no day or over {@link Weather#MOST_DAYS}
   */
  public SeasonWeather season(LocalDate firstDay, int length) {
    if (length < 1 || length > Weather.MOST_DAYS) {
      throw new Impossible("season", "it lasts 1 to 3660 days");
    }
    WeatherDay[] days = new WeatherDay[length];
    for (int i = 0; i < length; i++) {
      days[i] = day(firstDay.plusDays(i));
    }
    return new SeasonWeather(SeasonWeather.NO_YEAR, days);
  }
}

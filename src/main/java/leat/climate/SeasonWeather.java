package leat.climate;

/**
 * The weather of one season, day by day, under the season's own dates.
 *
 * <p>Source: a weather file's year, or a monthly table.
 */
public final class SeasonWeather {
  /** The year of weather that comes from a monthly table. */
  public static final int NO_YEAR = 0;

  private final int year;
  private final WeatherDay[] days;

  SeasonWeather(int year, WeatherDay[] days) {
    this.year = year;
    this.days = days;
  }

  /** The year of the file in which the season begins; {@link #NO_YEAR} for a monthly table. */
  public int year() {
    return year;
  }

  /** Number of days. */
  public int size() {
    return days.length;
  }

  /** Day {@code i} from 0, dated as the season is. */
  public WeatherDay day(int i) {
    return days[i];
  }

  /** Rain of each day, mm; unknown rain is 0. */
  public double[] rainMm() {
    double[] rain = new double[days.length];
    for (int i = 0; i < rain.length; i++) {
      rain[i] = days[i].rainOrNoneMm();
    }
    return rain;
  }

  /** Mean over days in a row of the middle of the two temperatures, C; NaN when one lacks it. */
  public double meanCelsius(int first, int last) {
    double sum = 0;
    for (int i = first; i <= last; i++) {
      sum += days[i].meanCelsius();
    }
    return sum / (last - first + 1);
  }

  /** Whether rain is known on any day. */
  public boolean knowsRain() {
    for (int i = 0; i < days.length; i++) {
      if (!Double.isNaN(days[i].rainMm())) {
        return true;
      }
    }
    return false;
  }

  /** The day of the highest middle; -1 when none has its temperatures. */
  public int warmest() {
    int warmest = -1;
    for (int i = 0; i < days.length; i++) {
      if (days[i].hasTemperatures()
          && (warmest < 0 || days[i].meanCelsius() > days[warmest].meanCelsius())) {
        warmest = i;
      }
    }
    return warmest;
  }

  /** The lowest temperature of all days, C; NaN when none is known. */
  public double coldestCelsius() {
    double coldest = Double.NaN;
    for (int i = 0; i < days.length; i++) {
      double tmin = days[i].tminCelsius();
      coldest = Double.isNaN(coldest) || tmin < coldest ? tmin : coldest;
    }
    return coldest;
  }

  /** Days whose middle lies above a temperature, C; -1 when a day lacks its temperatures. */
  public int daysAbove(double celsius) {
    int above = 0;
    for (int i = 0; i < days.length; i++) {
      if (!days[i].hasTemperatures()) {
        return -1;
      }
      above += days[i].meanCelsius() > celsius ? 1 : 0;
    }
    return above;
  }

  /** Lowest temperature of each day, C. */
  public double[] tminCelsius() {
    double[] tmin = new double[days.length];
    for (int i = 0; i < tmin.length; i++) {
      tmin[i] = days[i].tminCelsius();
    }
    return tmin;
  }

  /** Highest temperature of each day, C. */
  public double[] tmaxCelsius() {
    double[] tmax = new double[days.length];
    for (int i = 0; i < tmax.length; i++) {
      tmax[i] = days[i].tmaxCelsius();
    }
    return tmax;
  }

  /** Litres of the plants as the file gives them, L a day; null unless every day has them. */
  public double[] plantsL() {
    double[] litres = new double[days.length];
    for (int i = 0; i < litres.length; i++) {
      litres[i] = days[i].plantsL();
    }
    return whole(litres);
  }

  /** Litres from open water as the file gives them, L a day; null unless every day has them. */
  public double[] openL() {
    double[] litres = new double[days.length];
    for (int i = 0; i < litres.length; i++) {
      litres[i] = days[i].openL();
    }
    return whole(litres);
  }

  private static double[] whole(double[] values) {
    for (int i = 0; i < values.length; i++) {
      if (Double.isNaN(values[i])) {
        return null;
      }
    }
    return values;
  }
}

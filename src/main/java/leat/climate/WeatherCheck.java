package leat.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leat.numeric.Impossible;

/**
 * Everything that is wrong with rows of weather, each with its date.
 *
 * <p>Source: sheet season.md section 1, "Weather file"; bounds of sun, humidity and radiation by
 * definition: no place on Earth gets 50 MJ/m2 in a day above the air.
 */
public final class WeatherCheck {
  /** More radiation than reaches any place above the air, MJ/m2 a day. */
  public static final double MOST_RADIATION_MJ_M2 = 50;

  private static final int FIRST_YEAR = 1800;
  private static final int LAST_YEAR = 2999;
  private static final int MOST_YEARS = 300;

  private final List<WeatherProblem> found = new ArrayList<>();
  private WeatherDay day;
  private int row;

  private WeatherCheck() {}

  /** All problems of the rows, in their order; empty when they can be used. */
  public static List<WeatherProblem> problems(List<WeatherDay> rows) {
    WeatherCheck check = new WeatherCheck();
    Set<LocalDate> seen = new HashSet<>();
    boolean litres = everyRowHasLitres(rows);
    boolean any = false;
    for (int i = 0; i < rows.size(); i++) {
      check.take(rows.get(i), i);
      any |= rows.get(i).hasTemperatures();
      if (!seen.add(rows.get(i).date())) {
        check.add(WeatherProblem.Kind.DATE_TWICE, "date", Double.NaN);
      }
    }
    if (!rows.isEmpty()) {
      check.whole(rows, any || litres);
    }
    return check.found;
  }

  static boolean everyRowHasLitres(List<WeatherDay> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (Double.isNaN(rows.get(i).plantsL())) {
        return false;
      }
    }
    return true;
  }

  /** Refuses a single day by its first problem. */
  static void refuse(WeatherDay day) {
    WeatherCheck check = new WeatherCheck();
    check.take(day, 0);
    refuse(check.found);
  }

  static void refuse(List<WeatherProblem> problems) {
    if (!problems.isEmpty()) {
      throw new Impossible("weather", problems.get(0).reason());
    }
  }

  private void whole(List<WeatherDay> rows, boolean usable) {
    day = rows.get(0);
    row = 0;
    if (!usable) {
      add(WeatherProblem.Kind.NO_TEMPERATURES, "tmin_C", Double.NaN);
    }
    int least = Integer.MAX_VALUE;
    int most = Integer.MIN_VALUE;
    for (int i = 0; i < rows.size(); i++) {
      least = Math.min(least, rows.get(i).date().getYear());
      most = Math.max(most, rows.get(i).date().getYear());
    }
    if (least < FIRST_YEAR || most > LAST_YEAR || most - least > MOST_YEARS) {
      add(WeatherProblem.Kind.YEARS, "date", Double.NaN);
    }
  }

  private void take(WeatherDay next, int place) {
    day = next;
    row = place;
    temperatures();
    humidities();
    notNegative("rain_mm", day.rainMm(), Double.POSITIVE_INFINITY);
    notNegative("sun_h", day.sunHours(), 24);
    notNegative("radiation_MJ_m2", day.radiationMjM2(), MOST_RADIATION_MJ_M2);
    notNegative("wind_m_s", day.windMs(), Double.POSITIVE_INFINITY);
    notNegative("et0_mm", day.et0Mm(), Double.POSITIVE_INFINITY);
    notNegative("plants_L", day.plantsL(), Double.POSITIVE_INFINITY);
    notNegative("open_L", day.openL(), Double.POSITIVE_INFINITY);
  }

  private void temperatures() {
    temperature("tmin_C", day.tminCelsius());
    temperature("tmax_C", day.tmaxCelsius());
    temperature("dew_point_C", day.dewPointCelsius());
    if (day.tmaxCelsius() < day.tminCelsius()) {
      add(WeatherProblem.Kind.TMAX_UNDER_TMIN, "tmax_C", day.tmaxCelsius());
    }
  }

  private void temperature(String column, double celsius) {
    if (celsius < Accepted.COLDEST_CELSIUS || celsius > Accepted.HOTTEST_CELSIUS) {
      add(WeatherProblem.Kind.TEMPERATURE, column, celsius);
    }
  }

  private void humidities() {
    humidity("rh_min_pct", day.rhMinPct());
    humidity("rh_max_pct", day.rhMaxPct());
    humidity("rh_mean_pct", day.rhMeanPct());
    if (day.rhMaxPct() < day.rhMinPct()) {
      add(WeatherProblem.Kind.HUMIDITY_TURNED, "rh_max_pct", day.rhMaxPct());
    }
  }

  private void humidity(String column, double pct) {
    if (pct <= 0) {
      add(WeatherProblem.Kind.HUMIDITY, column, pct);
    } else if (pct > 100) {
      add(WeatherProblem.Kind.TOO_HIGH, column, pct);
    }
  }

  private void notNegative(String column, double value, double most) {
    if (value < 0) {
      add(WeatherProblem.Kind.NEGATIVE, column, value);
    } else if (value > most || Double.isInfinite(value)) {
      add(WeatherProblem.Kind.TOO_HIGH, column, value);
    }
  }

  private void add(WeatherProblem.Kind kind, String column, double value) {
    found.add(new WeatherProblem(kind, day.date(), row, column, value));
  }
}

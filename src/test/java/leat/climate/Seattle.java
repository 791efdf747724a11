package leat.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.Sheet;

/** Real daily weather, 2012 to 2015: season-weather-seattle.csv. */
final class Seattle {
  static final double LATITUDE = 47.45;
  static final Weather WEATHER = Weather.of(rows());

  private Seattle() {}

  static List<WeatherDay> rows() {
    List<WeatherDay> rows = new ArrayList<>();
    Sheet.of("season-weather-seattle.csv")
        .atLeast(1461)
        .forEach(
            r ->
                rows.add(
                    WeatherDay.of(
                        LocalDate.parse(r.text("date")),
                        r.num("tmin_C"),
                        r.num("tmax_C"),
                        r.num("rain_mm"))));
    return rows;
  }

  /** One year of the file from a date to so many days on. */
  static SeasonWeather from(LocalDate first, int days) {
    return WEATHER.season(first, days).years().stream()
        .filter(y -> y.year() == first.getYear())
        .findFirst()
        .orElseThrow();
  }
}

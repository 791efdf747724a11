package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each bound of a row of weather: at it nothing is said, just beyond it is. */
class WeatherBoundsTest {
  private static final double NO = Double.NaN;
  private static final LocalDate D = LocalDate.of(2027, 6, 1);

  private static WeatherDay day(double tmin, double tmax, double rain) {
    return WeatherDay.of(D, tmin, tmax, rain);
  }

  private static void quiet(WeatherDay day) {
    assertThat(Unlikely.of(List.of(day))).isEmpty();
    assertThat(WeatherCheck.problems(List.of(day))).isEmpty();
  }

  private static void unlikely(WeatherDay day, WeatherCaution.Kind kind, double value) {
    assertThat(Unlikely.of(List.of(day))).containsExactly(new WeatherCaution(kind, D, value, 1));
    boolean fahrenheit = kind == WeatherCaution.Kind.HOT || kind == WeatherCaution.Kind.WARM_NIGHT;
    assertThat(Unlikely.of(List.of(day)).get(0).looksFahrenheit()).isEqualTo(fahrenheit);
  }

  private static void wrong(WeatherDay day, WeatherProblem.Kind kind, String column) {
    List<WeatherProblem> found = WeatherCheck.problems(List.of(day));
    assertThat(found).extracting(WeatherProblem::kind).containsExactly(kind);
    assertThat(found).extracting(WeatherProblem::column).containsExactly(column);
  }

  @Test
  void unlikelyTemperatures() {
    quiet(day(30, 50, 0));
    unlikely(day(30, 50.5, 0), WeatherCaution.Kind.HOT, 50.5);
    quiet(day(36, 40, 0));
    unlikely(day(36.5, 40, 0), WeatherCaution.Kind.WARM_NIGHT, 36.5);
    quiet(day(-5, 30, 0));
    unlikely(day(-5.5, 30, 0), WeatherCaution.Kind.WIDE_SPAN, 35.5);
    quiet(day(10, 20, 0).withHumidity(20.5, NO, NO, NO));
    unlikely(
        day(10, 20, 0).withHumidity(20.75, NO, NO, NO), WeatherCaution.Kind.DEW_OVER_TMAX, 20.75);
  }

  @Test
  void unlikelySky() {
    WeatherDay mild = day(10, 20, 0);
    quiet(day(10, 20, 400));
    unlikely(day(10, 20, 401), WeatherCaution.Kind.RAIN, 401);
    quiet(mild.withSky(NO, NO, 30));
    unlikely(mild.withSky(NO, NO, 31), WeatherCaution.Kind.WIND, 31);
    quiet(mild.withGiven(20, NO, NO));
    unlikely(mild.withGiven(21, NO, NO), WeatherCaution.Kind.ET0, 21);
    quiet(mild.withSky(NO, 40, NO));
    unlikely(mild.withSky(NO, 41, NO), WeatherCaution.Kind.RADIATION, 41);
  }

  /** The first day and how many, in the order of the rows. */
  @Test
  void anUnlikelyKindIsToldOnce() {
    List<WeatherDay> rows = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      rows.add(WeatherDay.of(D.plusDays(i), 10, i == 0 ? 20 : 20 + 10 * i, i == 3 ? 500 : 0));
    }
    assertThat(Unlikely.of(rows))
        .containsExactly(
            new WeatherCaution(WeatherCaution.Kind.HOT, D.plusDays(4), 60, 1),
            new WeatherCaution(WeatherCaution.Kind.WIDE_SPAN, D.plusDays(3), 40, 2),
            new WeatherCaution(WeatherCaution.Kind.RAIN, D.plusDays(3), 500, 1));
  }

  @Test
  void impossibleTemperatures() {
    assertThat(WeatherCheck.problems(List.of(day(-60, -30, 0), day(40, 60, 0).on(D.plusDays(1)))))
        .isEmpty();
    wrong(day(-60.1, -30, 0), WeatherProblem.Kind.TEMPERATURE, "tmin_C");
    wrong(day(40, 60.1, 0), WeatherProblem.Kind.TEMPERATURE, "tmax_C");
    quiet(day(12, 12, 0));
    wrong(day(12, 11.9, 0), WeatherProblem.Kind.TMAX_UNDER_TMIN, "tmax_C");
  }

  @Test
  void impossibleHumidities() {
    WeatherDay mild = day(10, 20, 0);
    quiet(mild.withHumidity(NO, 100, 100, 100));
    quiet(mild.withHumidity(NO, 0.1, 0.1, 0.1));
    wrong(mild.withHumidity(NO, 0, 50, NO), WeatherProblem.Kind.HUMIDITY, "rh_min_pct");
    wrong(mild.withHumidity(NO, NO, 0, NO), WeatherProblem.Kind.HUMIDITY, "rh_max_pct");
    wrong(mild.withHumidity(NO, NO, NO, 100.1), WeatherProblem.Kind.TOO_HIGH, "rh_mean_pct");
    wrong(mild.withHumidity(NO, 50, 49.9, NO), WeatherProblem.Kind.HUMIDITY_TURNED, "rh_max_pct");
  }

  @Test
  void impossibleSky() {
    WeatherDay mild = day(10, 20, 0);
    quiet(mild.withSky(24, NO, 0));
    wrong(mild.withSky(24.1, NO, NO), WeatherProblem.Kind.TOO_HIGH, "sun_h");
    quiet(mild.withSky(0, 0, NO));
    assertThat(WeatherCheck.problems(List.of(mild.withSky(NO, 50, NO)))).isEmpty();
    wrong(mild.withSky(NO, 50.1, NO), WeatherProblem.Kind.TOO_HIGH, "radiation_MJ_m2");
    quiet(mild.withGiven(0, 0, 0));
    wrong(mild.withGiven(Double.POSITIVE_INFINITY, NO, NO), WeatherProblem.Kind.TOO_HIGH, "et0_mm");
  }

  @Test
  void impossibleYears() {
    WeatherDay mild = day(10, 20, 0);
    quiet(mild.on(LocalDate.of(1800, 1, 1)));
    quiet(mild.on(LocalDate.of(2999, 12, 31)));
    wrong(mild.on(LocalDate.of(1799, 12, 31)), WeatherProblem.Kind.YEARS, "date");
    wrong(mild.on(LocalDate.of(3000, 1, 1)), WeatherProblem.Kind.YEARS, "date");
    List<WeatherDay> apart = List.of(mild, mild.on(LocalDate.of(2327, 6, 1)));
    assertThat(WeatherCheck.problems(apart)).isEmpty();
  }

  /** Two days of a gap of three know their rain: each keeps its own. */
  @Test
  void filledDaysKeepTheirOwnRainInOrder() {
    List<WeatherDay> rows = new ArrayList<>();
    rows.add(day(10, 20, 0));
    rows.add(WeatherDay.of(D.plusDays(1), NO, NO, 3));
    rows.add(WeatherDay.of(D.plusDays(3), NO, NO, 7));
    rows.add(day(14, 24, 0).on(D.plusDays(4)));
    Weather weather = Weather.of(rows);
    SeasonWeather season = weather.season(D, 5).years().get(0);
    assertThat(season.rainMm()).containsExactly(0, 3, 0, 7, 0);
    assertThat(season.tminCelsius()).containsExactly(10, 11, 12, 13, 14);
    assertThat(weather.filled()).containsExactly(new WeatherGap(D.plusDays(1), D.plusDays(3)));
  }

  /** A year of the file without a day of the season is told all the same: it is the file's own. */
  @Test
  void aYearWithoutADayOfTheSeasonIsLeftOut() {
    List<WeatherDay> rows = new ArrayList<>();
    for (LocalDate d = LocalDate.of(2020, 12, 1); d.getYear() < 2022; d = d.plusDays(1)) {
      rows.add(WeatherDay.of(d, 8, 18, 0));
    }
    SeasonYears june = Weather.of(rows).season(D, 10);
    assertThat(june.years()).extracting(SeasonWeather::year).containsExactly(2021);
    assertThat(june.leftOut()).extracting(LeftOutYear::year).containsExactly(2020);
    assertThat(june.leftOut().get(0).daysMissing()).isEqualTo(10);
    assertThat(june.leftOut().get(0).inside()).isFalse();
  }

  /** A season over New Year may begin before the file: a year without a day of it is none of it. */
  @Test
  void aYearBeforeTheFileIsTakenOnlyForItsOwnDays() {
    List<WeatherDay> rows = new ArrayList<>();
    for (LocalDate d = LocalDate.of(2020, 3, 1); d.getYear() < 2022; d = d.plusDays(1)) {
      rows.add(WeatherDay.of(d, 8, 18, 0));
    }
    SeasonYears winter = Weather.of(rows).season(LocalDate.of(2027, 11, 10), 100);
    assertThat(winter.years()).extracting(SeasonWeather::year).containsExactly(2020);
    assertThat(winter.leftOut()).extracting(LeftOutYear::year).containsExactly(2021);
    rows.add(WeatherDay.of(LocalDate.of(2020, 2, 17), 8, 18, 0));
    assertThat(Weather.of(rows).season(LocalDate.of(2027, 11, 10), 100).leftOut())
        .extracting(LeftOutYear::year)
        .containsExactly(2019, 2021);
  }

  /** The first run of missing days, not all that lies between the first and the last of them. */
  @Test
  void onlyTheFirstRunOfMissingDaysIsNamed() {
    List<WeatherDay> rows = new ArrayList<>();
    for (int i : new int[] {1, 2, 8}) {
      rows.add(day(10, 20, 0).on(D.plusDays(i)));
    }
    LeftOutYear left = Weather.of(rows).season(D, 10).leftOut().get(0);
    assertThat(left.missing()).isEqualTo(new WeatherGap(D, D));
    assertThat(left.daysMissing()).isEqualTo(7);
  }
}

package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeatherTest {
  private static final double NO = Double.NaN;
  private static final LocalDate D = LocalDate.of(2027, 6, 1);

  private static WeatherDay day(int i) {
    return WeatherDay.of(D.plusDays(i), 10 + i, 20 + i, 1);
  }

  private static List<WeatherDay> days(int... which) {
    List<WeatherDay> rows = new ArrayList<>();
    for (int i : which) {
      rows.add(day(i));
    }
    return rows;
  }

  private static List<WeatherDay> straight(LocalDate from, LocalDate to) {
    List<WeatherDay> rows = new ArrayList<>();
    for (LocalDate d = from; !d.isAfter(to); d = d.plusDays(1)) {
      rows.add(WeatherDay.of(d, 8, 18, d.getDayOfMonth()));
    }
    return rows;
  }

  private static void problem(WeatherDay row, WeatherProblem.Kind kind, String column) {
    List<WeatherProblem> problems = WeatherCheck.problems(List.of(day(0), row));
    assertThat(problems).extracting(WeatherProblem::kind).containsExactly(kind);
    assertThat(problems.get(0).date()).isEqualTo(row.date());
    assertThat(problems.get(0).row()).isEqualTo(1);
    assertThat(problems.get(0).column()).isEqualTo(column);
    assertThatThrownBy(() -> Weather.of(List.of(day(0), row)))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining(row.date().toString());
  }

  @Test
  void eachProblemNamesItsDateAndColumn() {
    problem(WeatherDay.of(day(1).date(), 9, 8, 0), WeatherProblem.Kind.TMAX_UNDER_TMIN, "tmax_C");
    problem(WeatherDay.of(day(1).date(), 9, 75, 0), WeatherProblem.Kind.TEMPERATURE, "tmax_C");
    problem(WeatherDay.of(day(1).date(), -61, 8, 0), WeatherProblem.Kind.TEMPERATURE, "tmin_C");
    problem(WeatherDay.of(day(1).date(), 5, 8, -0.1), WeatherProblem.Kind.NEGATIVE, "rain_mm");
    problem(day(1).withHumidity(NO, 60, 40, NO), WeatherProblem.Kind.HUMIDITY_TURNED, "rh_max_pct");
    problem(day(1).withHumidity(NO, NO, 101, NO), WeatherProblem.Kind.TOO_HIGH, "rh_max_pct");
    problem(day(1).withHumidity(NO, NO, NO, 0), WeatherProblem.Kind.HUMIDITY, "rh_mean_pct");
    problem(day(1).withHumidity(99, NO, NO, NO), WeatherProblem.Kind.TEMPERATURE, "dew_point_C");
    problem(day(1).withSky(25, NO, NO), WeatherProblem.Kind.TOO_HIGH, "sun_h");
    problem(day(1).withSky(NO, 250, NO), WeatherProblem.Kind.TOO_HIGH, "radiation_MJ_m2");
    problem(day(1).withSky(NO, NO, -1), WeatherProblem.Kind.NEGATIVE, "wind_m_s");
    problem(day(1).withGiven(-1, NO, NO), WeatherProblem.Kind.NEGATIVE, "et0_mm");
    problem(day(1).withGiven(NO, -1, NO), WeatherProblem.Kind.NEGATIVE, "plants_L");
    problem(day(1).withGiven(NO, NO, -1), WeatherProblem.Kind.NEGATIVE, "open_L");
    problem(day(0), WeatherProblem.Kind.DATE_TWICE, "date");
    assertThatThrownBy(() -> Weather.of(List.of())).isInstanceOf(Impossible.class);
  }

  @Test
  void allProblemsAtOnceAndThoseOfTheWhole() {
    List<WeatherDay> rows =
        List.of(
            WeatherDay.of(D, 9, 8, -1),
            WeatherDay.of(D.plusDays(1), 99, 100, 0),
            WeatherDay.of(D, 5, 8, 0));
    assertThat(WeatherCheck.problems(rows))
        .extracting(WeatherProblem::kind)
        .containsExactly(
            WeatherProblem.Kind.TMAX_UNDER_TMIN,
            WeatherProblem.Kind.NEGATIVE,
            WeatherProblem.Kind.TEMPERATURE,
            WeatherProblem.Kind.TEMPERATURE,
            WeatherProblem.Kind.DATE_TWICE);
    WeatherDay blank = WeatherDay.of(D, NO, NO, 0);
    assertThat(WeatherCheck.problems(List.of(blank)).get(0).kind())
        .isEqualTo(WeatherProblem.Kind.NO_TEMPERATURES);
    assertThat(WeatherCheck.problems(List.of(blank.withGiven(NO, 2, NO)))).isEmpty();
    assertThat(
            WeatherCheck.problems(List.of(day(0), day(0).on(LocalDate.of(2328, 6, 2))))
                .get(0)
                .kind())
        .isEqualTo(WeatherProblem.Kind.YEARS);
    for (WeatherProblem.Kind kind : WeatherProblem.Kind.values()) {
      assertThat(new WeatherProblem(kind, D, 0, "x_C", 1).reason()).startsWith("2027-06-01: ");
    }
  }

  @Test
  void fahrenheitInAColumnOfCelsiusIsSeen() {
    List<WeatherDay> rows = new ArrayList<>();
    for (WeatherDay one : Seattle.rows().subList(0, 60)) {
      rows.add(
          WeatherDay.of(
              one.date(),
              one.tminCelsius() * 1.8 + 32,
              one.tmaxCelsius() * 1.8 + 32,
              one.rainMm()));
    }
    List<WeatherCaution> cautions = Unlikely.of(rows);
    assertThat(cautions).extracting(WeatherCaution::kind).contains(WeatherCaution.Kind.HOT);
    assertThat(cautions.get(0).looksFahrenheit()).isTrue();
    assertThat(cautions.get(0).days()).isGreaterThan(5);
    assertThat(cautions.get(0).date()).isEqualTo("2012-01-01");
    assertThat(Seattle.WEATHER.cautions()).isEmpty();
  }

  @Test
  void otherUnlikelyValues() {
    List<WeatherDay> rows =
        List.of(
            WeatherDay.of(D.plusDays(1), -10, 30, 500)
                .withSky(NO, 45, 40)
                .withHumidity(31, NO, NO, NO)
                .withGiven(25, NO, NO),
            day(0));
    assertThat(Unlikely.of(rows))
        .extracting(WeatherCaution::kind)
        .containsExactly(
            WeatherCaution.Kind.WIDE_SPAN,
            WeatherCaution.Kind.RAIN,
            WeatherCaution.Kind.WIND,
            WeatherCaution.Kind.ET0,
            WeatherCaution.Kind.RADIATION,
            WeatherCaution.Kind.DEW_OVER_TMAX,
            WeatherCaution.Kind.OUT_OF_ORDER);
    assertThat(WeatherCaution.Kind.values()).hasSize(9);
  }

  @Test
  void shortGapsAreFilledByStraightLinesWithoutRain() {
    Weather weather = Weather.of(days(0, 1, 5));
    assertThat(weather.size()).isEqualTo(6);
    assertThat(weather.filled()).containsExactly(new WeatherGap(D.plusDays(2), D.plusDays(4)));
    assertThat(weather.filled().get(0).days()).isEqualTo(3);
    for (int i = 2; i < 5; i++) {
      WeatherDay got = weather.on(D.plusDays(i));
      assertThat(got.tminCelsius()).isCloseTo(10 + i, within(1e-12));
      assertThat(got.tmaxCelsius()).isCloseTo(20 + i, within(1e-12));
      assertThat(got.rainMm()).isZero();
    }
  }

  @Test
  void aLongGapStaysOpenAndIsNamed() {
    Weather weather = Weather.of(days(0, 5, 6));
    assertThat(weather.size()).isEqualTo(3);
    assertThat(weather.filled()).isEmpty();
    SeasonYears season = weather.season(D, 7);
    assertThat(season.years()).isEmpty();
    LeftOutYear broken = season.broken();
    assertThat(broken.inside()).isTrue();
    assertThat(broken.missing()).isEqualTo(new WeatherGap(D.plusDays(1), D.plusDays(4)));
    assertThat(broken.daysMissing()).isEqualTo(4);
  }

  @Test
  void aBlankDayKeepsWhatItKnows() {
    WeatherDay blank = WeatherDay.of(D.plusDays(1), NO, NO, 7).withSky(NO, 12, NO);
    Weather weather = Weather.of(List.of(day(0), blank, day(2)));
    WeatherDay got = weather.on(D.plusDays(1));
    assertThat(got.tminCelsius()).isEqualTo(11);
    assertThat(got.rainMm()).isEqualTo(7);
    assertThat(got.radiationMjM2()).isEqualTo(12);
    assertThat(weather.filled()).hasSize(1);
    WeatherDay half = WeatherDay.of(D.plusDays(1), NO, 8, 7);
    WeatherDay line = Weather.of(List.of(day(0), half, day(2))).on(D.plusDays(1));
    assertThat(line.tminCelsius()).isEqualTo(11);
    assertThat(line.tmaxCelsius()).isEqualTo(21);
    WeatherDay none = WeatherDay.of(D, NO, 8, 7);
    assertThat(WeatherCheck.problems(List.of(none, none.on(D.plusDays(1)))))
        .extracting(WeatherProblem::kind)
        .containsExactly(WeatherProblem.Kind.NO_TEMPERATURES);
  }

  /** A file that ends in mid-season is left out for it, whatever holes it has. */
  @Test
  void aHoleInAYearThatEndsTooEarlyIsNoMistake() {
    SeasonYears season = Weather.of(days(0, 5, 6)).season(D, 20);
    assertThat(season.broken()).isNull();
    assertThat(season.leftOut().get(0).missing())
        .isEqualTo(new WeatherGap(D.plusDays(1), D.plusDays(4)));
    assertThat(season.leftOut().get(0).daysMissing()).isEqualTo(17);
  }

  @Test
  void rowsInAnyOrder() {
    List<WeatherDay> rows = days(0, 1, 2, 3, 4);
    Collections.reverse(rows);
    Weather weather = Weather.of(rows);
    assertThat(weather.first()).isEqualTo(D);
    assertThat(weather.last()).isEqualTo(D.plusDays(4));
    assertThat(weather.on(D.plusDays(1))).isEqualTo(day(1));
    assertThat(weather.cautions().get(0).kind()).isEqualTo(WeatherCaution.Kind.OUT_OF_ORDER);
    assertThat(weather.on(D.minusDays(1))).isNull();
    assertThat(weather.on(D.plusDays(5))).isNull();
  }

  @Test
  void yearsByMonthAndDayThoseTooShortAreLeftOut() {
    Weather weather = Weather.of(straight(LocalDate.of(2012, 5, 1), LocalDate.of(2015, 7, 1)));
    SeasonYears season = weather.season(LocalDate.of(2027, 4, 20), 164);
    assertThat(season.years()).extracting(SeasonWeather::year).containsExactly(2013, 2014);
    assertThat(season.years().get(0).day(0).date()).isEqualTo("2027-04-20");
    assertThat(season.years().get(0).day(0).rainMm()).isEqualTo(20);
    assertThat(season.leftOut())
        .containsExactly(
            new LeftOutYear(
                2012,
                new WeatherGap(LocalDate.of(2012, 4, 20), LocalDate.of(2012, 4, 30)),
                11,
                false),
            new LeftOutYear(
                2015,
                new WeatherGap(LocalDate.of(2015, 7, 2), LocalDate.of(2015, 9, 30)),
                91,
                false));
    assertThat(season.broken()).isNull();
    SeasonYears winter = Weather.of(days(0, 1)).season(LocalDate.of(2027, 11, 1), 30);
    assertThat(winter.years()).isEmpty();
    assertThat(winter.leftOut()).hasSize(1);
    assertThat(winter.leftOut().get(0).daysMissing()).isEqualTo(30);
    assertThat(winter.leftOut().get(0).missing())
        .isEqualTo(new WeatherGap(LocalDate.of(2027, 11, 1), LocalDate.of(2027, 11, 30)));
  }

  @Test
  void aSeasonOverNewYear() {
    SeasonYears season = Seattle.WEATHER.season(LocalDate.of(2026, 11, 1), 120);
    assertThat(season.years()).extracting(SeasonWeather::year).containsExactly(2012, 2013, 2014);
    assertThat(season.leftOut()).extracting(LeftOutYear::year).containsExactly(2011, 2015);
    SeasonWeather first = season.years().get(0);
    assertThat(first.day(61).date()).isEqualTo("2027-01-01");
    assertThat(first.day(61).tmaxCelsius())
        .isEqualTo(Seattle.WEATHER.on(LocalDate.of(2013, 1, 1)).tmaxCelsius());
  }

  /** 2028 has a 29 February, 2013 has not: it takes the 28th, and 1 March stays 1 March. */
  @Test
  void theLeapDay() {
    SeasonWeather leap = Seattle.WEATHER.season(LocalDate.of(2028, 2, 27), 5).years().get(1);
    assertThat(leap.year()).isEqualTo(2013);
    assertThat(leap.day(2).date()).isEqualTo("2028-02-29");
    assertThat(leap.day(2).tmaxCelsius())
        .isEqualTo(Seattle.WEATHER.on(LocalDate.of(2013, 2, 28)).tmaxCelsius());
    assertThat(leap.day(3).tmaxCelsius())
        .isEqualTo(Seattle.WEATHER.on(LocalDate.of(2013, 3, 1)).tmaxCelsius());
    SeasonWeather plain = Seattle.WEATHER.season(LocalDate.of(2027, 2, 27), 5).years().get(0);
    assertThat(plain.year()).isEqualTo(2012);
    assertThat(plain.day(2).tmaxCelsius())
        .isEqualTo(Seattle.WEATHER.on(LocalDate.of(2012, 3, 1)).tmaxCelsius());
  }

  /** A leap year's file that ends on the 28th serves a season that ends on the 29th. */
  @Test
  void theLeapDayMissingInALeapYear() {
    Weather weather = Weather.of(straight(LocalDate.of(2012, 2, 1), LocalDate.of(2012, 2, 28)));
    SeasonYears season = weather.season(LocalDate.of(2028, 2, 20), 10);
    assertThat(season.years().get(0).day(9).date()).isEqualTo("2028-02-29");
    assertThat(season.years().get(0).day(9).rainMm()).isEqualTo(28);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -3, 4000})
  void noSuchSeason(int days) {
    assertThatThrownBy(() -> Seattle.WEATHER.season(D, days)).isInstanceOf(Impossible.class);
  }

  /** Methods are not mixed: the season takes the best one that all its days allow. */
  @Test
  void oneMethodForASeason() {
    Site site = Site.of(48.2, 200);
    WeatherDay full = day(0).withHumidity(9, NO, NO, NO).withSky(8, NO, 2);
    SeasonWeather all =
        Weather.of(List.of(full, full.on(D.plusDays(1)))).season(D, 2).years().get(0);
    assertThat(SeasonEt0.of(all, site).method()).isEqualTo(Method.PENMAN_MONTEITH);
    assertThat(SeasonEt0.of(all, site).betterDays()).isZero();
    assertThat(SeasonEt0.of(all, site).mm()[0]).isEqualTo(ReferenceDay.of(full, site).et0Mm());
    SeasonWeather some = Weather.of(List.of(full, day(1))).season(D, 2).years().get(0);
    assertThat(SeasonEt0.of(some, site).method()).isEqualTo(Method.HARGREAVES_SAMANI);
    assertThat(SeasonEt0.of(some, site).betterDays()).isEqualTo(1);
    WeatherDay given = day(0).withGiven(4.4, NO, NO);
    SeasonWeather mixed =
        Weather.of(List.of(given, full.on(D.plusDays(1)))).season(D, 2).years().get(0);
    assertThat(SeasonEt0.of(mixed, site).method()).isEqualTo(Method.HARGREAVES_SAMANI);
    SeasonWeather pan =
        Weather.of(List.of(given, given.on(D.plusDays(1)))).season(D, 2).years().get(0);
    assertThat(SeasonEt0.of(pan, site).method()).isEqualTo(Method.ET0_FILE);
    assertThat(SeasonEt0.of(pan, site).mm()).containsExactly(4.4, 4.4);
  }

  @Test
  void litresOfTheFile() {
    WeatherDay blank = WeatherDay.of(D, NO, NO, NO).withGiven(NO, 2.5, 0.1);
    SeasonWeather season =
        Weather.of(List.of(blank, blank.on(D.plusDays(2)))).season(D, 3).years().get(0);
    assertThat(season.plantsL()).containsExactly(2.5, 2.5, 2.5);
    assertThat(season.openL()).containsExactly(0.1, 0.1, 0.1);
    assertThat(season.rainMm()).containsExactly(0, 0, 0);
    assertThat(season.meanCelsius(0, 2)).isNaN();
    assertThatThrownBy(() -> SeasonEt0.of(season, Site.of(48, 0))).isInstanceOf(Impossible.class);
    assertThat(Seattle.from(LocalDate.of(2012, 5, 1), 3).plantsL()).isNull();
    assertThat(Seattle.from(LocalDate.of(2012, 5, 1), 3).openL()).isNull();
  }

  @Test
  void aDayByItself() {
    Site site = Site.of(48.2, 200);
    ReferenceDay hot = ReferenceDay.of(WeatherDay.of(LocalDate.of(2027, 7, 10), 14, 31, NO), site);
    assertThat(hot.method().word()).isEqualTo("hargreaves-samani");
    assertThat(hot.dewPointCelsius()).isCloseTo(14, within(1e-9));
    assertThat(hot.humidityBy()).isEqualTo(HumidityBy.TMIN);
    ReferenceDay pan = ReferenceDay.of(WeatherDay.of(D, NO, NO, NO).withGiven(5, NO, NO), site);
    assertThat(pan.method()).isEqualTo(Method.ET0_FILE);
    assertThat(pan.et0Mm()).isEqualTo(5);
    assertThat(pan.dewPointCelsius()).isNaN();
    assertThat(pan.rsMjM2()).isNaN();
    assertThatThrownBy(() -> ReferenceDay.of(WeatherDay.of(D, 9, 8, 0), site))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("2027-06-01");
    assertThatThrownBy(() -> ReferenceDay.of(WeatherDay.of(D, NO, NO, 0), site))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Site.of(4790, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Site.of(47, 99_999)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Site(47, 0, false, 0.05)).isInstanceOf(Impossible.class);
  }

  /** Polar night: no sun, no thirst from the sun, and nothing that is not a number. */
  @Test
  void polarNight() {
    WeatherDay day =
        WeatherDay.of(LocalDate.of(2027, 12, 21), -15, -8, 0)
            .withHumidity(NO, 70, 90, NO)
            .withSky(0, NO, 1);
    ReferenceDay got = ReferenceDay.of(day, Site.of(75, 0));
    assertThat(got.method()).isEqualTo(Method.PENMAN_MONTEITH);
    assertThat(got.et0Mm()).isBetween(0.0, 0.5);
    assertThat(got.daylightHours()).isZero();
    assertThat(got.raMjM2()).isZero();
    assertThat(got.rsMjM2()).isZero();
  }
}

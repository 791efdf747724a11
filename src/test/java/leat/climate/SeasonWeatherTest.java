package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** What a season's days say together, by hand. */
class SeasonWeatherTest {
  private static final double NO = Double.NaN;
  private static final LocalDate D = LocalDate.of(2027, 6, 1);
  private static final Site SITE = Site.of(48.2, 200);

  private static WeatherDay day(int i, double tmin, double tmax, double rain) {
    return WeatherDay.of(D.plusDays(i), tmin, tmax, rain);
  }

  private static SeasonWeather season(WeatherDay... days) {
    return new SeasonWeather(2027, days);
  }

  /** Middles 15, 20, 20, 12 C. */
  private static final SeasonWeather FOUR =
      season(day(0, 10, 20, NO), day(1, 14, 26, NO), day(2, 12, 28, 0), day(3, 8, 16, NO));

  @Test
  void theWarmestDayIsTheFirstOfEquals() {
    assertThat(FOUR.warmest()).isEqualTo(1);
    assertThat(season(day(0, 20, 30, 0), day(1, 10, 20, 0)).warmest()).isZero();
    assertThat(season(day(0, NO, 40, 0), day(1, 10, NO, 0), day(2, 1, 2, 0)).warmest())
        .isEqualTo(2);
    assertThat(season(day(0, NO, NO, 0)).warmest()).isEqualTo(-1);
  }

  @Test
  void theColdestNight() {
    assertThat(FOUR.coldestCelsius()).isEqualTo(8);
    assertThat(season(day(0, NO, NO, 0), day(1, 3, 9, 0), day(2, NO, 5, 0)).coldestCelsius())
        .isEqualTo(3);
    assertThat(season(day(0, -4, 9, 0), day(1, 3, 9, 0)).coldestCelsius()).isEqualTo(-4);
    assertThat(season(day(0, NO, 9, 0)).coldestCelsius()).isNaN();
  }

  @Test
  void daysAboveATemperature() {
    assertThat(FOUR.daysAbove(11.9)).isEqualTo(4);
    assertThat(FOUR.daysAbove(15)).as("15 itself is not above").isEqualTo(2);
    assertThat(FOUR.daysAbove(20)).isZero();
    assertThat(season(day(0, 10, 20, 0), day(1, NO, 30, 0)).daysAbove(5)).isEqualTo(-1);
  }

  @Test
  void theMeanOfDaysInARow() {
    assertThat(FOUR.meanCelsius(0, 3)).isEqualTo(67 / 4.0);
    assertThat(FOUR.meanCelsius(1, 2)).isEqualTo(20);
    assertThat(FOUR.meanCelsius(3, 3)).isEqualTo(12);
    assertThat(season(day(0, 10, 20, 0), day(1, NO, 30, 0)).meanCelsius(0, 1)).isNaN();
  }

  @Test
  void rainIsKnownWhenAnyDayKnowsIt() {
    assertThat(FOUR.knowsRain()).isTrue();
    assertThat(FOUR.rainMm()).containsExactly(0, 0, 0, 0);
    assertThat(season(day(0, 1, 2, NO)).knowsRain()).isFalse();
  }

  /** A day of ET0 alone cannot join days of temperatures alone; its date is told. */
  @Test
  void aDayThatAllowsNoSharedMethodIsNamed() {
    WeatherDay given = WeatherDay.of(D.plusDays(1), NO, NO, 0).withGiven(4.4, NO, NO);
    assertThatThrownBy(() -> SeasonEt0.of(season(day(0, 10, 20, 0), given), SITE))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("2027-06-02");
    assertThat(SeasonEt0.of(season(given), SITE).mm()).containsExactly(4.4);
  }

  /** Without weather each day is one of 4 mm (the sheet's own day). */
  @Test
  void aSeasonWithoutWeatherMayLastADay() {
    assertThat(SeasonEt0.withoutWeather(1).mm()).containsExactly(4);
    assertThat(SeasonEt0.withoutWeather(1).method()).isEqualTo(Method.DRINKS);
    assertThatThrownBy(() -> SeasonEt0.withoutWeather(0)).isInstanceOf(Impossible.class);
  }

  /** FAO-56 chapter 4: radiation or sun, humidity in any form, wind; without one of them not. */
  @Test
  void whatPenmanMonteithAsksFor() {
    WeatherDay day = day(0, 10, 20, 0);
    WeatherDay sky = day.withSky(8, NO, 2);
    for (WeatherDay enough :
        List.of(
            sky.withHumidity(9, NO, NO, NO),
            sky.withHumidity(NO, NO, 80, NO),
            sky.withHumidity(NO, NO, NO, 60),
            day.withSky(NO, 22, 2).withHumidity(9, NO, NO, NO))) {
      assertThat(ReferenceDay.methodOf(enough)).isEqualTo(Method.PENMAN_MONTEITH);
    }
    for (WeatherDay lacking :
        List.of(
            sky,
            sky.withHumidity(NO, 40, NO, NO),
            day.withSky(NO, NO, 2).withHumidity(9, NO, NO, NO),
            day.withSky(8, NO, NO).withHumidity(9, NO, NO, NO))) {
      assertThat(ReferenceDay.methodOf(lacking)).isEqualTo(Method.HARGREAVES_SAMANI);
    }
    assertThat(ReferenceDay.methodOf(day(0, NO, 20, 0))).isEqualTo(Method.DRINKS);
    assertThat(ReferenceDay.methodOf(day(0, 10, NO, 0))).isEqualTo(Method.DRINKS);
  }

  @Test
  void aSeasonOfAClimateTableHasItsOwnBounds() {
    MonthlyTable table = table(28, 31);
    assertThat(table.season(D, 1).size()).isEqualTo(1);
    assertThat(table.season(D, Weather.MOST_DAYS).size()).isEqualTo(3660);
    assertThat(table.season(D, 1).year()).isEqualTo(SeasonWeather.NO_YEAR);
    Weather weather = Weather.of(List.of(day(0, 10, 20, 0)));
    assertThat(weather.season(D, 1).years()).hasSize(1);
    assertThat(weather.season(D, Weather.MOST_DAYS).leftOut()).isNotEmpty();
  }

  /** 29 days of rain fit into a February of a leap year, 30 into none, 31 into a March. */
  @Test
  void noMoreRainDaysThanDays() {
    assertThat(table(29, 31).day(LocalDate.of(2028, 2, 29)).rainMm()).isCloseTo(3, within(1e-12));
    assertThatThrownBy(() -> table(30, 31)).isInstanceOf(Impossible.class);
    MonthWeather[] months = new MonthWeather[12];
    java.util.Arrays.fill(months, new MonthWeather(5, 15, 10, 10));
    months[3] = new MonthWeather(5, 15, 10, 31);
    assertThatThrownBy(() -> new MonthlyTable(List.of(months))).isInstanceOf(Impossible.class);
    months[3] = new MonthWeather(5, 15, 10, 30);
    assertThat(new MonthlyTable(List.of(months)).day(LocalDate.of(2027, 4, 9)).rainMm())
        .isGreaterThan(0);
  }

  private static MonthlyTable table(int february, int march) {
    MonthWeather[] months = new MonthWeather[12];
    java.util.Arrays.fill(months, new MonthWeather(5, 15, 10, 10));
    months[1] = new MonthWeather(5, 15, 87, february);
    months[2] = new MonthWeather(5, 15, 10, march);
    return new MonthlyTable(List.of(months));
  }
}

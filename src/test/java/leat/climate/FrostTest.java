package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FrostTest {
  /** The rows of New York need weather that is not kept here. */
  static Stream<Row> rows() {
    return Sheet.of("season-frost.csv").where(r -> r.text("location").equals("Seattle")).atLeast(3);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asTheSheet(Row r) {
    FrostYear year =
        FrostYear.of(Seattle.WEATHER, (int) r.num("year"), r.num("threshold_C"), Seattle.LATITUDE);
    assertThat(year.lastSpring()).isEqualTo(r.text("last_spring"));
    assertThat(year.firstAutumn()).isEqualTo(r.text("first_autumn"));
    assertThat(ChronoUnit.DAYS.between(year.lastSpring(), year.firstAutumn()) - 1)
        .isEqualTo((long) r.num("frost_free_days"));
    assertThat(year.whole()).isTrue();
  }

  /** Of the four years 2012 has the latest last frost of spring, 19 March. */
  @Test
  void theLatestYearWithAMargin() {
    FrostDates dates = FrostDates.of(Seattle.WEATHER, 2027, 0, Seattle.LATITUDE);
    assertThat(dates.years()).hasSize(4);
    LocalDate latest = LocalDate.of(2027, 1, 1);
    LocalDate earliest = LocalDate.of(2027, 12, 31);
    for (WeatherDay day : Seattle.rows()) {
      if (day.tminCelsius() <= 0) {
        LocalDate moved = day.date().withYear(2027);
        if (day.date().getMonthValue() < 7) {
          latest = moved.isAfter(latest) ? moved : latest;
        } else {
          earliest = moved.isBefore(earliest) ? moved : earliest;
        }
      }
    }
    assertThat(dates.lastSpring()).isEqualTo(latest);
    assertThat(dates.firstAutumn()).isEqualTo(earliest);
    assertThat(dates.safeFrom()).isEqualTo(latest.plusDays(14));
    assertThat(dates.safeUntil()).isEqualTo(earliest.minusDays(14));
  }

  private static Weather still(LocalDate from, LocalDate to, List<LocalDate> frosts) {
    List<WeatherDay> days = new ArrayList<>();
    for (LocalDate d = from; !d.isAfter(to); d = d.plusDays(1)) {
      days.add(WeatherDay.of(d, frosts.contains(d) ? -1 : 8, 15, 0));
    }
    return Weather.of(days);
  }

  @Test
  void southOfTheEquatorSummerRunsOverNewYear() {
    LocalDate spring = LocalDate.of(2026, 9, 12);
    LocalDate autumn = LocalDate.of(2027, 5, 3);
    Weather weather =
        still(
            LocalDate.of(2026, 1, 1),
            LocalDate.of(2027, 12, 31),
            List.of(LocalDate.of(2026, 8, 1), spring, autumn, LocalDate.of(2027, 6, 1)));
    FrostYear south = FrostYear.of(weather, 2026, 0, -35);
    assertThat(south.lastSpring()).isEqualTo(spring);
    assertThat(south.firstAutumn()).isEqualTo(autumn);
    assertThat(south.whole()).isTrue();
    assertThat(FrostYear.of(weather, 2027, 0, -35).whole()).isFalse();
    FrostYear north = FrostYear.of(weather, 2026, 0, 35);
    assertThat(north.lastSpring()).isNull();
    assertThat(north.firstAutumn()).isEqualTo(LocalDate.of(2026, 8, 1));
    FrostDates dates = FrostDates.of(weather, 2030, 0, -35);
    assertThat(dates.lastSpring()).isEqualTo(LocalDate.of(2030, 9, 12));
    assertThat(dates.firstAutumn()).isEqualTo(LocalDate.of(2031, 5, 3));
    FrostDates none = FrostDates.of(weather, 2030, -5, -35);
    assertThat(none.safeFrom()).isNull();
    assertThat(none.safeUntil()).isNull();
  }

  /** In the south a season of November to March has its spring in the year it begins. */
  @Test
  void theYearOfTheSpringOfASeason() {
    assertThat(FrostYear.springYear(LocalDate.of(2027, 6, 30), -35)).isEqualTo(2026);
    assertThat(FrostYear.springYear(LocalDate.of(2027, 7, 1), -35)).isEqualTo(2027);
    assertThat(FrostYear.springYear(LocalDate.of(2027, 1, 1), -35)).isEqualTo(2026);
    assertThat(FrostYear.springYear(LocalDate.of(2027, 6, 30), 35)).isEqualTo(2027);
    assertThat(FrostYear.springYear(LocalDate.of(2027, 6, 30), 0)).isEqualTo(2027);
  }

  /** On the equator the year is split as in the north. */
  @Test
  void theEquatorCountsAsNorth() {
    java.util.List<WeatherDay> rows = new java.util.ArrayList<>();
    for (LocalDate d = LocalDate.of(2027, 1, 1); d.getYear() < 2028; d = d.plusDays(1)) {
      boolean frost = d.getDayOfMonth() == 1 && (d.getMonthValue() == 3 || d.getMonthValue() == 10);
      rows.add(WeatherDay.of(d, frost ? 0 : 0.1, 18, 0));
    }
    FrostYear year = FrostYear.of(Weather.of(rows), 2027, 0, 0);
    assertThat(year.lastSpring()).isEqualTo(LocalDate.of(2027, 3, 1));
    assertThat(year.firstAutumn()).isEqualTo(LocalDate.of(2027, 10, 1));
    assertThat(year.whole()).isTrue();
  }
}

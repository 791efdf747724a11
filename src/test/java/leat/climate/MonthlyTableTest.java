package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MonthlyTableTest {
  private static final double LATITUDE = 48.2;

  private static Stream<Row> kind(String kind, int atLeast) {
    return Sheet.of("season-monthly.csv").where(r -> r.text("kind").equals(kind)).atLeast(atLeast);
  }

  static Stream<Row> days() {
    return kind("day", 8);
  }

  static Stream<Row> sums() {
    return kind("month_sum", 3);
  }

  private static MonthlyTable table() {
    return new MonthlyTable(
        kind("table", 12)
            .map(
                r ->
                    new MonthWeather(
                        r.num("tmin_C"),
                        r.num("tmax_C"),
                        r.num("rain_mm"),
                        (int) r.num("rain_days")))
            .toList());
  }

  private static double et0(WeatherDay day) {
    return ReferenceDay.of(day, Site.of(LATITUDE, 0)).et0Mm();
  }

  @ParameterizedTest
  @MethodSource("days")
  void day(Row r) {
    WeatherDay day = table().day(LocalDate.parse(r.text("date")));
    assertThat(day.tminCelsius()).isCloseTo(r.num("tmin_C"), within(r.num("tol_abs")));
    assertThat(day.tmaxCelsius()).isCloseTo(r.num("tmax_C"), within(r.num("tol_abs")));
    assertThat(day.rainMm()).isCloseTo(r.num("rain_mm"), within(r.num("tol_abs")));
    assertThat(et0(day))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("et0_mm"), within(r.num("tol_abs")));
  }

  @ParameterizedTest
  @MethodSource("sums")
  void monthSum(Row r) {
    YearMonth month = YearMonth.parse(r.text("date"));
    SeasonWeather days = table().season(month.atDay(1), month.lengthOfMonth());
    double rain = 0;
    double et0 = 0;
    for (int i = 0; i < days.size(); i++) {
      rain += days.day(i).rainMm();
      et0 += et0(days.day(i));
    }
    assertThat(rain).isCloseTo(r.num("rain_mm"), within(r.num("tol_abs")));
    // Twelve printed digits of a sum of up to 146 mm.
    assertThat(et0).isCloseTo(r.num("et0_mm"), within(r.num("tol_abs")));
  }

  /** However many days it falls on, a month's rain is all there, on that many days. */
  @Property(tries = 300)
  void rainIsAllThere(
      @ForAll @DoubleRange(min = 0.1, max = 400) double mm,
      @ForAll @IntRange(min = -1, max = 28) int rainDays,
      @ForAll @IntRange(min = 1, max = 12) int month,
      @ForAll @IntRange(min = 2027, max = 2028) int year) {
    int given = rainDays == 0 ? 1 : rainDays;
    List<MonthWeather> months = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      months.add(new MonthWeather(1, 9, mm, given));
    }
    YearMonth of = YearMonth.of(year, month);
    double[] rain = new MonthlyTable(months).season(of.atDay(1), of.lengthOfMonth()).rainMm();
    double sum = 0;
    int days = 0;
    for (double one : rain) {
      sum += one;
      days += one > 0 ? 1 : 0;
    }
    assertThat(sum).isCloseTo(mm, within(1e-9 * mm));
    assertThat(days).isEqualTo(given > 0 ? given : (int) Math.round(0.3 * of.lengthOfMonth()));
  }

  @Test
  void refusals() {
    assertThatThrownBy(() -> new MonthlyTable(List.of())).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new MonthWeather(9, 8, 0, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new MonthWeather(1, 8, -1, 3)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new MonthWeather(1, 8, 30, 0)).isInstanceOf(Impossible.class);
    List<MonthWeather> february = new ArrayList<>(twelve(5));
    february.set(1, new MonthWeather(1, 9, 30, 30));
    assertThatThrownBy(() -> new MonthlyTable(february)).isInstanceOf(Impossible.class);
  }

  private static List<MonthWeather> twelve(int rainDays) {
    List<MonthWeather> months = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      months.add(new MonthWeather(1, 9, 30, rainDays));
    }
    return months;
  }
}

package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Months of real weather through the whole chain: file, season, ET0, warmth. */
class SeattleMonthsTest {
  static Stream<Row> rows() {
    return Sheet.of("season-seattle.csv").atLeast(36);
  }

  private static Offset<Double> rel(Row r, String column) {
    return within(Math.max(1e-9, r.num("tol_rel") * Math.abs(r.num(column))));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void month(Row r) {
    LocalDate first = LocalDate.of((int) r.num("year"), (int) r.num("month"), 1);
    SeasonWeather month = Seattle.from(first, (int) r.num("days"));
    SeasonEt0 et0 = SeasonEt0.of(month, Site.of(r.num("latitude_deg"), 0));
    double rain = 0;
    double tmax = 0;
    double tmin = 0;
    double ra = 0;
    double sum = 0;
    double most = 0;
    int frost = 0;
    for (int i = 0; i < month.size(); i++) {
      rain += month.rainMm()[i];
      tmax += month.tmaxCelsius()[i] / month.size();
      tmin += month.tminCelsius()[i] / month.size();
      frost += month.tminCelsius()[i] <= FrostYear.TENDER_CELSIUS ? 1 : 0;
      ra +=
          ExtraterrestrialRadiation.mjM2(r.num("latitude_deg"), month.day(i).date().getDayOfYear());
      sum += et0.mm()[i];
      most = Math.max(most, et0.mm()[i]);
    }
    assertThat(et0.method()).isEqualTo(Method.HARGREAVES_SAMANI);
    assertThat(rain).isCloseTo(r.num("rain_mm"), rel(r, "rain_mm"));
    assertThat(tmax).isCloseTo(r.num("tmax_mean_C"), rel(r, "tmax_mean_C"));
    assertThat(tmin).isCloseTo(r.num("tmin_mean_C"), rel(r, "tmin_mean_C"));
    assertThat(frost).isEqualTo((int) r.num("frost_days"));
    assertThat(ra).isCloseTo(r.num("ra_MJ_m2"), rel(r, "ra_MJ_m2"));
    assertThat(sum)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("et0_hargreaves_mm"), rel(r, "et0_hargreaves_mm"));
    assertThat(most).isCloseTo(r.num("et0_max_day_mm"), rel(r, "et0_max_day_mm"));
    for (int base : new int[] {4, 10}) {
      double warmth = 0;
      for (int i = 0; i < month.size(); i++) {
        double low = month.tminCelsius()[i];
        double high = month.tmaxCelsius()[i];
        warmth += DegreeDays.SIMPLE.ofDay(low, high, base, DegreeDays.NO_UPPER);
      }
      assertThat(warmth)
          .isCloseTo(r.num("gdd_base" + base + "_simple"), rel(r, "gdd_base" + base + "_simple"));
    }
  }

  /** Sheet section 10: 799, 832, 866, 899 mm for 2012 to 2015. */
  @Test
  void years() {
    int[] expected = {799, 832, 866, 899};
    for (int year = 2012; year <= 2015; year++) {
      LocalDate first = LocalDate.of(year, 1, 1);
      double sum = 0;
      for (double mm :
          SeasonEt0.of(Seattle.from(first, first.lengthOfYear()), Site.of(Seattle.LATITUDE, 0))
              .mm()) {
        sum += mm;
      }
      assertThat(Math.round(sum)).isEqualTo(expected[year - 2012]);
    }
  }
}

package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SunTest {
  static Stream<Row> rows() {
    return Sheet.of("season-daylength.csv").atLeast(42);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asTheSheet(Row r) {
    LocalDate date = LocalDate.parse(r.text("date"));
    double latitude = r.num("latitude_deg");
    assertThat(date.getDayOfYear()).isEqualTo((int) r.num("day_of_year"));
    assertThat(DayLength.hours(latitude, date.getDayOfYear()))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("daylight_fao_h"), within(r.num("tol_fao_h")));
    assertThat(Math.toDegrees(SunPosition.declinationRad(date.getDayOfYear())))
        .isCloseTo(r.num("declination_fao_deg"), within(1e-9));
  }

  /** Second route: the sun's height stepped through the day, what is above the horizon summed. */
  @ParameterizedTest
  @CsvSource({
    "48.2, 15",
    "48.2, 200",
    "-20, 246",
    "0, 80",
    "60, 355",
    "66, 355",
    "66, 172",
    "70, 100",
    "75, 355",
    "75, 172",
    "-52, 300"
  })
  void radiationAndHoursByIntegration(double latitude, int day) {
    int steps = 400_000;
    double phi = Math.toRadians(latitude);
    double delta = 0.409 * Math.sin(2 * Math.PI * day / 365 - 1.39);
    double sum = 0;
    int above = 0;
    for (int i = 0; i < steps; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / steps - Math.PI;
      double sine =
          Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.cos(angle);
      sum += Math.max(0, sine);
      above += sine > 0 ? 1 : 0;
    }
    double distance = 1 + 0.033 * Math.cos(2 * Math.PI * day / 365);
    double ra = 0.0820 * 1440 * distance * sum / steps;
    assertThat(ExtraterrestrialRadiation.mjM2(latitude, day))
        .isCloseTo(ra, within(1e-7 * Math.max(1, ra)));
    assertThat(DayLength.hours(latitude, day)).isCloseTo(24.0 * above / steps, within(2e-4));
  }
}

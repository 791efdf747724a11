package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.Instant;
import java.time.ZoneId;
import java.util.stream.Stream;
import leat.Sheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the sheets log-*.csv. */
class LogSheetsTest {
  static Stream<Sheet.Row> edges() {
    return Sheet.of("log-edges.csv").atLeast(4);
  }

  @ParameterizedTest
  @MethodSource("edges")
  void fallingEdge(Sheet.Row r) {
    double step = r.num("step_level_mm") / 1000;
    double h = r.num("hysteresis_mm") / 1000;
    double dip = r.num("pump_dip_mm") / 1000;
    double tol = r.num("tol_mm") / 1000;
    assertThat(FallingEdge.atRest(step, h, dip))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("falling_edge_at_rest_mm") / 1000, within(tol));
    assertThat(FallingEdge.atRest(step, h, 0))
        .as(r.idAndProvenance())
        .isCloseTo(r.num("falling_edge_pump_never_runs_mm") / 1000, within(tol));
    assertThat(step).isCloseTo(r.num("rising_edge_mm") / 1000, within(tol));
  }

  static Stream<Sheet.Row> splits() {
    return Sheet.of("log-ec-split.csv").atLeast(6);
  }

  @ParameterizedTest
  @MethodSource("splits")
  void ecSplit(Sheet.Row r) {
    EcSplit s =
        EcSplit.of(
            r.num("volume_start_L"),
            r.num("ec_start_mS_cm"),
            r.num("volume_end_L"),
            r.num("ec_end_mS_cm"),
            r.num("rain_L"));
    double tol = r.num("tol_abs");
    String as = r.idAndProvenance();
    assertThat(s.used()).as(as).isCloseTo(r.num("used_L"), within(tol));
    assertThat(s.byConcentration()).as(as).isCloseTo(r.num("by_concentration"), within(tol));
    assertThat(s.byDilution()).as(as).isCloseTo(r.num("by_dilution"), within(tol));
    assertThat(s.bySalt()).as(as).isCloseTo(r.num("by_salt"), within(tol));
    assertThat(s.uptake()).as(as).isCloseTo(r.num("salt_uptake_ec_mS_cm"), within(tol));
    assertThat(s.byConcentration() + s.byDilution() + s.bySalt())
        .as(as)
        .isCloseTo(r.num("ec_end_mS_cm") - r.num("ec_start_mS_cm"), within(1e-12));
  }

  static Stream<Sheet.Row> forecasts() {
    return Sheet.of("log-forecast.csv").atLeast(5);
  }

  @ParameterizedTest
  @MethodSource("forecasts")
  void daysLeft(Sheet.Row r) {
    UseMean use = UseMean.of(r.list("daily_uses_L", ";"));
    double low = r.num("volume_low_L");
    double high = r.num("volume_high_L");
    DaysLeft left =
        DaysLeft.of(
            (low + high) / 2, high - low, r.num("low_mark_L"), use.mean(), use.sd(), use.n());
    double tol = r.num("tol_rel") * 100;
    String as = r.idAndProvenance();
    assertThat(use.mean()).as(as).isCloseTo(r.num("mean_use_L"), withinPercentage(tol));
    assertThat(use.sd()).as(as).isCloseTo(r.num("sd_use_L"), within(1e-8));
    assertThat(left.days()).as(as).isCloseTo(r.num("days_left"), withinPercentage(tol));
    assertThat(left.low()).as(as).isCloseTo(r.num("days_left_low"), withinPercentage(tol));
    assertThat(left.high()).as(as).isCloseTo(r.num("days_left_high"), withinPercentage(tol));
  }

  static Stream<Sheet.Row> times() {
    return Sheet.of("log-times.csv").atLeast(12);
  }

  @ParameterizedTest
  @MethodSource("times")
  void times(Sheet.Row r) {
    LogTimes times = new LogTimes(ZoneId.of(r.text("site_zone")), "time");
    String before = r.text("previous_row_text");
    if (before.endsWith("(second)")) {
      before = before.replace(" (second)", "");
      // The sheet's word for a row that already was the second: one before it stood later.
      times.read(before.replace("T02:00", "T02:45"));
      assertThat(times.read(before)).isEqualTo(LogTimes.Status.SECOND);
    } else if (!before.isEmpty()) {
      assertThat(times.read(before).isTime()).isTrue();
    }
    LogTimes.Status status = times.read(r.text("text"));
    assertThat(status.name().toLowerCase(java.util.Locale.ROOT))
        .as(r.idAndProvenance())
        .isEqualTo(r.text("status"));
    if (r.has("utc")) {
      assertThat(Instant.ofEpochMilli(times.millis()))
          .as(r.idAndProvenance())
          .isEqualTo(Instant.parse(r.text("utc")));
    }
  }
}

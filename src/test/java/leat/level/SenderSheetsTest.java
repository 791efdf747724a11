package leat.level;

import static leat.level.SheetTanks.L;
import static leat.level.SheetTanks.MM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of level-decode.csv and level-plan-decode.csv. */
class SenderSheetsTest {
  private static Status status(String word) {
    return switch (word) {
      case "LOW" -> Status.UNDER_RANGE;
      case "HIGH" -> Status.OVER_RANGE;
      case "BETWEEN" -> Status.BETWEEN_STEPS;
      default -> Status.valueOf(word);
    };
  }

  private static double ohm(Row r) {
    return r.numOr("measured_ohm", Double.NaN);
  }

  private static Motion motion(Row r) {
    return Motion.valueOf(r.text("motion").toUpperCase());
  }

  static Stream<Row> decodes() {
    return Sheet.of("level-decode.csv").atLeast(42);
  }

  @ParameterizedTest
  @MethodSource("decodes")
  void decode(Row r) {
    String id = r.text("sender_id");
    Tank tank = LadderSheetsTest.tank(id);
    Sender sender =
        new Sender(
            Staircase.byLadder(tank, LadderSheetsTest.ladder(id)),
            LadderSheetsTest.limits(id, r.num("lead_ohm")),
            tank.capacity());
    Reading out = sender.decode(ohm(r), motion(r), new Reading());
    String why = r.idAndProvenance();
    assertThat(out.status()).as(why).isEqualTo(status(r.text("class")));
    assertThat(out.hasBand()).as(why).isEqualTo(r.has("reed_low"));
    // a reading without a band carries the whole tank in this sheet
    double low = out.hasBand() ? out.levelLow() : 0;
    double high = out.hasBand() ? out.levelHigh() : tank.height();
    double least = out.hasBand() ? out.volumeLow() : 0;
    double most = out.hasBand() ? out.volumeHigh() : tank.capacity();
    assertThat(low / MM).as(why).isCloseTo(r.num("level_low_mm"), within(r.num("tol_level_mm")));
    assertThat(high / MM).as(why).isCloseTo(r.num("level_high_mm"), within(r.num("tol_level_mm")));
    assertThat(least / L).as(why).isCloseTo(r.num("litres_low"), within(r.num("tol_L")));
    assertThat(most / L).as(why).isCloseTo(r.num("litres_high"), within(r.num("tol_L")));
    if (out.hasBand()) {
      assertThat(out.stepLow()).as(why).isEqualTo((int) r.num("reed_low"));
      assertThat(out.stepHigh()).as(why).isEqualTo((int) r.num("reed_high"));
    }
  }

  static Sender planSender(Row r) {
    double[] bottom = r.list("tank_bottom_mm", "x");
    double[] top = r.list("tank_top_mm", "x");
    double corner = r.num("tank_corner_mm") * MM;
    Tank tank =
        TaperedBox.of(
            bottom[0] * MM,
            bottom[1] * MM,
            corner,
            top[0] * MM,
            top[1] * MM,
            corner,
            r.num("tank_height_mm") * MM);
    String[] steps = r.text("steps_mm_ohm").split(";");
    double[] level = new double[steps.length];
    double[] ohm = new double[steps.length];
    for (int i = 0; i < steps.length; i++) {
      level[i] = Double.parseDouble(steps[i].split("=")[0]) * MM;
      ohm[i] = Double.parseDouble(steps[i].split("=")[1]);
    }
    return new Sender(
        Staircase.bySteps(tank, level, ohm, r.num("hysteresis_mm") * MM),
        new Limits(
            r.num("reading_tolerance_ohm"),
            r.num("tolerance_pct") / 100,
            r.num("lead_ohm"),
            r.num("open_above_ohm"),
            r.num("short_below_ohm")),
        tank.volume(r.num("tank_full_mm") * MM));
  }

  static Stream<Row> planDecodes() {
    return Sheet.of("level-plan-decode.csv").atLeast(18);
  }

  @ParameterizedTest
  @MethodSource("planDecodes")
  void planDecode(Row r) {
    Reading out = planSender(r).decode(ohm(r), motion(r), new Reading());
    String why = r.idAndProvenance();
    assertThat(out.status().word()).as(why).isEqualTo(r.text("status"));
    assertThat(out.hasOhm()).as(why).isEqualTo(r.has("reading_ohm"));
    if (out.hasOhm() && !Double.isInfinite(out.ohm())) {
      assertThat(out.ohm()).as(why).isCloseTo(r.num("reading_ohm"), within(1e-9));
    }
    assertThat(out.hasLevels()).as(why).isEqualTo(r.has("level_low_mm"));
    if (!out.hasBand()) {
      return;
    }
    assertThat(out.levelLow() / MM)
        .as(why)
        .isCloseTo(r.num("level_low_mm"), within(r.num("tol_mm")));
    assertThat(out.levelHigh() / MM)
        .as(why)
        .isCloseTo(r.num("level_high_mm"), within(r.num("tol_mm")));
    assertThat(out.volume() / L).as(why).isCloseTo(r.num("volume_L"), within(r.num("tol_L")));
    assertThat(out.volumeLow() / L)
        .as(why)
        .isCloseTo(r.num("volume_low_L"), within(r.num("tol_L")));
    assertThat(out.volumeHigh() / L)
        .as(why)
        .isCloseTo(r.num("volume_high_L"), within(r.num("tol_L")));
    assertThat(out.fullShare() * 100)
        .as(why)
        .isCloseTo(r.num("full_pct"), within(r.num("tol_pct")));
  }
}

package leat.level;

import static leat.level.SheetTanks.MM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of level-eseries, -ladder-design, -divider and -divider-design. */
class DesignSheetsTest {
  static Stream<Row> series() {
    return Sheet.of("level-eseries.csv").atLeast(132);
  }

  @ParameterizedTest
  @MethodSource("series")
  void series(Row r) {
    assertThat(ESeries.valueOf(r.id()).hundredths((int) r.num("index")) / 100.0)
        .isEqualTo(r.num("mantissa_ohm"));
  }

  static Stream<Row> ladders() {
    return Sheet.of("level-ladder-design.csv")
        .where(r -> !r.text("objective").equals("equal_litre_positions"))
        .atLeast(8);
  }

  private static double[] reeds(Row r) {
    return Ladder.evenReeds(
        (int) r.num("steps"), r.num("level_first_mm") * MM, r.num("pitch_mm") * MM);
  }

  @ParameterizedTest
  @MethodSource("ladders")
  void ladder(Row r) {
    double first = r.num("ohm_first");
    double last = r.num("ohm_last");
    double[] target =
        r.text("objective").equals("equal_ohm")
            ? LadderDesign.equalOhms(first, last, (int) r.num("steps"))
            : LadderDesign.ohmsByVolume(first, last, SheetTanks.byId(r.text("tank_id")), reeds(r));
    double[] wanted = r.list("target_ohm", ";");
    for (int i = 0; i < wanted.length; i++) {
      assertThat(target[i]).as(r.idAndProvenance()).isCloseTo(wanted[i], within(0.5001e-4));
    }
    LadderDesign d = LadderDesign.of(ESeries.valueOf(r.text("series")), target);
    double tol = r.num("tol_max_error_ohm");
    assertThat(d.maxError()).as(r.id()).isCloseTo(r.num("best_max_error_ohm"), within(tol));
    assertThat(d.sumOfSquares()).as(r.id()).isCloseTo(r.num("best_sum_sq_ohm2"), within(tol));
    assertThat(d.feedForwardMaxError())
        .as(r.id())
        .isCloseTo(r.num("feedforward_max_error_ohm"), within(tol));
    assertThat(d.feedForward()).as(r.id()).isEqualTo(r.list("feedforward_resistor_ohm", ";"));
    assertThat(d.separateMaxError())
        .as(r.id())
        .isCloseTo(r.num("separate_rounding_max_error_ohm"), within(tol));
    // the same ladder upside down
    double[] falling = new double[target.length];
    for (int i = 0; i < target.length; i++) {
      falling[i] = target[target.length - 1 - i];
    }
    LadderDesign f = LadderDesign.of(ESeries.valueOf(r.text("series")), falling);
    assertThat(f.maxError()).isEqualTo(d.maxError());
    assertThat(f.returnAt()).isEqualTo(Ladder.ReturnAt.TOP);
    Ladder drawn =
        new Ladder(
            Ladder.evenReeds(target.length, 0.04, 0.02),
            f.resistor(),
            f.returnAt(),
            0.011,
            0.012,
            0.03,
            0.04 + 0.02 * target.length);
    for (int i = 0; i < target.length; i++) {
      assertThat(drawn.node(i)).isCloseTo(f.node()[i], within(1e-9));
      assertThat(f.error(i)).isBetween(-f.maxError(), f.maxError());
    }
  }

  static Stream<Row> positions() {
    return Sheet.of("level-ladder-design.csv")
        .where(r -> r.text("objective").equals("equal_litre_positions"))
        .atLeast(2);
  }

  @ParameterizedTest
  @MethodSource("positions")
  void positions(Row r) {
    double[] wanted = r.list("reed_levels_mm", ";");
    double[] reeds =
        LadderDesign.equalVolumeReeds(
            SheetTanks.byId(r.text("tank_id")),
            r.num("level_first_mm") * MM,
            wanted[wanted.length - 1] * MM,
            (int) r.num("steps"));
    for (int i = 0; i < wanted.length; i++) {
      assertThat(reeds[i] / MM).as(r.idAndProvenance()).isCloseTo(wanted[i], within(0.001));
    }
  }

  private static Divider divider(Row r, double fixed) {
    return new Divider(
        r.text("sender_side").equals("low") ? Divider.Side.LOW : Divider.Side.HIGH,
        r.num("supply_V"),
        r.num("supply_tol_pct") / 100,
        fixed,
        r.num("fixed_tol_pct") / 100,
        (int) r.num("adc_bits"),
        r.num("reference_V"),
        r.num("reference_tol_pct") / 100,
        r.text("ratiometric").equals("true"),
        r.num("adc_error_lsb"));
  }

  private static void close(Row r, String column, double value) {
    double wanted = r.num(column);
    assertThat(value)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(wanted, withinPercentage(100 * r.num("tol_rel")));
  }

  static Stream<Row> dividers() {
    return Sheet.of("level-divider.csv").atLeast(18);
  }

  @ParameterizedTest
  @MethodSource("dividers")
  void divider(Row r) {
    Divider d = divider(r, r.num("fixed_ohm"));
    double lead = r.num("lead_ohm");
    int code = (int) r.num("counts");
    if (r.text("given").equals("ohm")) {
      double ohm = r.num("sender_ohm");
      assertThat(d.code(ohm, lead)).as(r.id()).isEqualTo(code);
      double overFixed = d.current(ohm, lead) * d.fixed();
      close(r, "node_V", d.side() == Divider.Side.LOW ? d.supply() - overFixed : overFixed);
      close(r, "sender_mA", d.current(ohm, lead) * 1000);
      close(r, "sender_mW", d.senderPower(ohm, lead) * 1000);
      close(r, "fixed_mW", Math.pow(d.current(ohm, lead), 2) * d.fixed() * 1000);
    }
    boolean over = r.text("expect").equals("over_range");
    assertThat(d.isOverRange(code)).as(r.id()).isEqualTo(over);
    Divider.Band band = d.band(code, lead);
    close(r, "ohm_back_low", band.low());
    if (over) {
      assertThat(band.high()).as(r.id()).isNull();
    } else {
      close(r, "ohm_back", d.ohm(code, lead));
      close(r, "ohm_back_high", band.high());
    }
  }

  static Stream<Row> dividerDesigns() {
    return Sheet.of("level-divider-design.csv").atLeast(10);
  }

  @ParameterizedTest
  @MethodSource("dividerDesigns")
  void dividerDesign(Row r) {
    String series = r.text("series");
    DividerDesign d =
        DividerDesign.best(
            divider(r, 1),
            r.list("sender_ohm_list", ";"),
            r.num("lead_ohm"),
            r.num("ladder_tol_pct") / 100,
            r.has("max_sender_mA") ? r.num("max_sender_mA") / 1000 : null,
            series.equals("continuous") ? null : ESeries.valueOf(series),
            0);
    close(r, "best_fixed_ohm", d.divider().fixed());
    close(r, "smallest_gap_counts", d.gap());
    String[] pair = r.text("smallest_gap_between_ohm").split("-");
    assertThat(d.gapLow()).as(r.id()).isEqualTo(Double.parseDouble(pair[0]));
    assertThat(d.gapHigh()).as(r.id()).isEqualTo(Double.parseDouble(pair[1]));
    double[] codes = r.list("counts_list", ";");
    for (int i = 0; i < codes.length; i++) {
      assertThat(d.steps()[i].code()).as(r.id()).isEqualTo((int) codes[i]);
    }
    close(r, "greatest_sender_mA", d.greatestCurrent() * 1000);
    close(r, "greatest_sender_mW", d.greatestPower() * 1000);
    close(r, "worst_misread_ohm", d.steps()[d.worst()].misread());
    assertThat(d.steps()[d.worst()].ohm()).as(r.id()).isEqualTo(r.num("worst_misread_at_ohm"));
    assertThat(d.allApart()).isEqualTo(r.text("neighbours_stay_apart").equals("true"));
  }
}

package leat.level;

import static leat.level.SheetTanks.L;
import static leat.level.SheetTanks.MM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of level-fit.csv, and what a fit must do besides. */
class FitSheetTest {
  private static SenderFit fit(Row r) {
    return SenderFit.of(
        SheetTanks.times(r.list("litres_list", ";"), L),
        r.list("ohm_list", ";"),
        Motion.valueOf(r.text("motion").toUpperCase()),
        r.text("ohm_direction").equals("decreasing"),
        r.num("same_within_ohm"));
  }

  static Stream<Row> values() {
    return Sheet.of("level-fit.csv").where(r -> r.text("expect").equals("value")).atLeast(8);
  }

  private static void list(Row r, String column, double[] got, double tolerance) {
    double[] wanted = r.list(column, ";");
    assertThat(got).as(r.id() + " " + column).hasSize(wanted.length);
    for (int i = 0; i < wanted.length; i++) {
      assertThat(got[i]).as(r.id() + " " + column + i).isCloseTo(wanted[i], within(tolerance));
    }
  }

  @ParameterizedTest
  @MethodSource("values")
  void fits(Row r) {
    SenderFit f = fit(r);
    double ohm = r.num("tol_ohm");
    assertThat(f.raw()).hasSize((int) r.num("readings"));
    list(r, "isotonic_ohm_list", f.isotonic(), ohm);
    assertThat(f.isotonicRms()).isCloseTo(r.num("isotonic_rms_ohm"), within(ohm));
    assertThat(f.isotonicMax()).isCloseTo(r.num("isotonic_max_abs_ohm"), within(ohm));
    assertThat(f.orderViolations()).isEqualTo((int) r.num("order_violations"));
    assertThat(f.steps()).hasSize((int) r.num("steps_found"));
    list(r, "step_ohm_list", f.steps().stream().mapToDouble(SenderFit.Step::ohm).toArray(), ohm);
    list(
        r,
        "step_readings_list",
        f.steps().stream().mapToDouble(SenderFit.Step::readings).toArray(),
        0);
    list(
        r,
        "edge_low_L_list",
        f.edges().stream().mapToDouble(e -> e.low() / L).toArray(),
        r.num("tol_L"));
    list(
        r,
        "edge_high_L_list",
        f.edges().stream().mapToDouble(e -> e.high() / L).toArray(),
        r.num("tol_L"));
    list(
        r,
        "edge_mid_L_list",
        f.edges().stream().mapToDouble(e -> e.middle() / L).toArray(),
        r.num("tol_L"));
    assertThat(f.stepRms()).isCloseTo(r.num("step_rms_ohm"), within(ohm));
    assertThat(f.stepMax()).isCloseTo(r.num("step_max_abs_ohm"), within(ohm));
    StringBuilder suspects = new StringBuilder();
    for (int i = 0; i < f.steps().size(); i++) {
      if (f.steps().get(i).suspect()) {
        suspects.append(suspects.isEmpty() ? "" : ";").append(i);
      }
    }
    assertThat(suspects.toString()).isEqualTo(r.text("suspect_step_list"));
    if (r.has("edge_low_mm_list")) {
      Tank tank = SheetTanks.byId(r.text("tank_id"));
      double mm = r.num("tol_mm");
      list(r, "edge_low_mm_list", levels(tank, f, -1), mm);
      list(r, "edge_high_mm_list", levels(tank, f, 1), mm);
      list(r, "edge_mid_mm_list", levels(tank, f, 0), mm);
    }
    double[] truth = r.list("true_edge_L_list", ";");
    if (truth.length == f.edges().size()) {
      for (int i = 0; i < truth.length; i++) {
        // a true edge lies in the pour in which the reading changed
        assertThat(truth[i] * L)
            .as(r.id() + " edge " + i)
            .isBetween(f.edges().get(i).low(), f.edges().get(i).high());
      }
    }
  }

  private static double[] levels(Tank tank, SenderFit f, int side) {
    return f.edges().stream()
        .mapToDouble(e -> tank.level(side < 0 ? e.low() : side > 0 ? e.high() : e.middle()) / MM)
        .toArray();
  }

  static Stream<Row> refused() {
    return Sheet.of("level-fit.csv").where(r -> r.text("expect").equals("reject")).atLeast(2);
  }

  @ParameterizedTest
  @MethodSource("refused")
  void refuses(Row r) {
    assertThatThrownBy(() -> fit(r)).as(r.idAndProvenance()).isInstanceOf(Impossible.class);
  }

  @ParameterizedTest
  @MethodSource("values")
  void directionIsSeenUnlessNothingChanges(Row r) {
    Pours.Direction wanted =
        r.id().equals("FT07")
            ? Pours.Direction.UNCLEAR
            : r.text("ohm_direction").equals("decreasing")
                ? Pours.Direction.FALLS
                : Pours.Direction.RISES;
    assertThat(Pours.direction(r.list("litres_list", ";"), r.list("ohm_list", ";")))
        .isEqualTo(wanted);
  }

  @ParameterizedTest
  @MethodSource("values")
  void suggestedWindowFindsTheSameSteps(Row r) {
    double[] litres = SheetTanks.times(r.list("litres_list", ";"), L);
    double[] ohms = r.list("ohm_list", ";");
    double same = Pours.suggestedSameWithin(litres, ohms);
    SenderFit f =
        SenderFit.of(
            litres,
            ohms,
            Motion.valueOf(r.text("motion").toUpperCase()),
            r.text("ohm_direction").equals("decreasing"),
            same);
    assertThat(f.steps()).as(r.id() + " same within " + same).hasSize((int) r.num("steps_found"));
  }

  /** Least squares by another way: the minimax formula of isotonic regression. */
  @Test
  void isotonicIsTheMinimaxOfMeans() {
    Random r = new Random(3);
    for (int c = 0; c < 300; c++) {
      int n = 2 + r.nextInt(20);
      double[] v = new double[n];
      double[] y = new double[n];
      for (int i = 0; i < n; i++) {
        v[i] = i * 1e-3;
        y[i] = r.nextInt(100);
      }
      SenderFit f = SenderFit.of(v, y, Motion.RISING, false, 5);
      for (int i = 0; i < n; i++) {
        double max = Double.NEGATIVE_INFINITY;
        for (int a = 0; a <= i; a++) {
          double min = Double.POSITIVE_INFINITY;
          for (int b = i; b < n; b++) {
            double sum = 0;
            for (int k = a; k <= b; k++) {
              sum += y[k];
            }
            min = Math.min(min, sum / (b - a + 1));
          }
          max = Math.max(max, min);
        }
        assertThat(f.isotonic()[i]).isCloseTo(max, within(1e-9));
      }
    }
  }

  @Test
  void additionsMixedRowsAndHysteresis() {
    assertThat(Pours.runningTotals(0.002, new double[] {0.002, 0, 0.003}))
        .containsExactly(new double[] {0.004, 0.004, 0.007}, within(1e-15));
    assertThatThrownBy(() -> Pours.runningTotals(0, new double[] {0.002, -0.003}))
        .isInstanceOf(Impossible.class);
    int[] order = Pours.order(new double[] {3, 1, 2, 1, 3});
    assertThat(order).containsExactly(1, 3, 2, 0, 4);
    Row up = Sheet.of("level-fit.csv").where(r -> r.id().equals("FT01")).rows().get(0);
    Row down = Sheet.of("level-fit.csv").where(r -> r.id().equals("FT02")).rows().get(0);
    SenderFit rising = fit(up);
    SenderFit falling = fit(down);
    // the drawing's hysteresis is 3 mm; pours of 2 L are 12 mm wide
    double h = SenderFit.hysteresis(rising, falling, SheetTanks.byId("T1"));
    assertThat(h).isBetween(0.0, 0.009);
    assertThat(rising.edgeVolumes()).hasSize(7);
    assertThat(rising.below()).isEqualTo(rising.steps().get(0).ohm());
    Staircase s =
        Staircase.byEdgesAlone(0.062, rising.edgeVolumes(), rising.edgeOhms(), rising.below(), 0);
    Sender sender = new Sender(s, Limits.DEFAULT, 0.06);
    Reading out = sender.decode(49.5, Motion.UNKNOWN, new Reading());
    assertThat(out.volumeLow()).isCloseTo(0.017, within(1e-12));
    assertThat(out.volumeHigh()).isCloseTo(0.023, within(1e-12));
    assertThat(out.hasLevels()).isFalse();
    assertThatThrownBy(out::levelLow).isInstanceOf(Impossible.class);
  }
}

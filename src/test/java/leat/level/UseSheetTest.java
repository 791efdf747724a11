package leat.level;

import static leat.level.SheetTanks.L;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of level-use.csv. */
class UseSheetTest {
  private static final double HOUR = 3600;
  private static final double DAY = 86400;

  static Stream<Row> rows() {
    return Sheet.of("level-use.csv").atLeast(12);
  }

  private static void rate(Row r, String column, Double value) {
    if (!r.has(column)) {
      assertThat(value).as(r.id() + " " + column).isNull();
      return;
    }
    assertThat(value).as(r.id() + " " + column).isNotNull();
    double wanted = r.num(column);
    // volumes stand in the sheet to 1E-6 L
    assertThat(value * DAY / L)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(wanted, withinPercentage(100 * r.num("tol_rel")));
  }

  private static StepUse log(Row r) {
    StepUse log = new StepUse();
    for (String run : r.text("series_h_step").split(";")) {
      String[] ends = run.split(":")[0].split("\\.\\.");
      int step = Integer.parseInt(run.split(":")[1]);
      log.add(Double.parseDouble(ends[0]) * HOUR, step);
      log.add(Double.parseDouble(ends[1]) * HOUR, step);
    }
    return log;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void use(Row r) {
    Staircase stairs =
        Staircase.byLadder(
            LadderSheetsTest.tank(r.text("sender_id")),
            LadderSheetsTest.ladder(r.text("sender_id")));
    for (String edge : r.text("falling_edge_L_list").split(";")) {
      int below = Integer.parseInt(edge.split("[>=]")[1]);
      assertThat(stairs.volumeHigh(below, Motion.FALLING) / L)
          .isCloseTo(Double.parseDouble(edge.split("=")[1]), within(1e-6));
    }
    StepUse.Result u =
        log(r).result(stairs, r.num("edge_uncertainty_L") * L, r.num("chatter_max_h") * HOUR);
    assertThat(u.changes()).as(r.id()).hasSize((int) r.num("transitions"));
    assertThat(u.segments()).as(r.id()).isEqualTo((int) r.num("segments"));
    assertThat(u.outcome().name().toLowerCase()).as(r.id()).isEqualTo(r.text("result"));
    if (r.has("used_L")) {
      assertThat(u.used() / L).as(r.id()).isCloseTo(r.num("used_L"), within(2e-6));
      assertThat(u.span() / HOUR).as(r.id()).isCloseTo(r.num("span_h"), within(1e-9));
    }
    rate(r, "use_L_per_day", u.use());
    rate(r, "use_low_L_per_day", u.low());
    rate(r, "use_high_L_per_day", u.high());
    rate(r, "steady_low_L_per_day", u.steadyLow());
    rate(r, "steady_high_L_per_day", u.steadyHigh());
    rate(r, "naive_L_per_day", u.naive());
    StepUse.Next next = StepUse.next(u, stairs, r.num("edge_uncertainty_L") * L);
    if (u.outcome() == StepUse.Outcome.RATE) {
      assertThat(next.latest()).isGreaterThan(next.earliest());
    }
  }

  @Test
  void timeDoesNotGoBack() {
    StepUse log = new StepUse();
    log.add(10, 3);
    assertThatThrownBy(() -> log.add(9, 3)).isInstanceOf(Impossible.class);
  }
}

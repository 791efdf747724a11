package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * pump --balance as typed, with a plan of each case of hydraulics-balance.csv (SciPy and
 * python-fluids; a network solver and a second reading of the csv, see its provenance column).
 */
class BalanceCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** A tower that wants nothing is left out of a plan: wanted must be above 0. */
  static Stream<String> cases() {
    Set<String> closed =
        Sheet.of("hydraulics-balance.csv")
            .where(r -> r.text("mode").equals("wanted") && r.num("wanted_L_min") == 0)
            .atLeast(1)
            .map(Row::id)
            .collect(Collectors.toSet());
    return Sheet.of("hydraulics-balance.csv")
        .where(r -> r.text("riser").equals("1") && !closed.contains(r.id()))
        .atLeast(20)
        .map(Row::id);
  }

  private static String plan(List<Row> rows) {
    Row f = rows.get(0);
    StringBuilder plan = new StringBuilder("pump:\n");
    String[] points = f.text("points_flow_L_min_head_m").split(";");
    if (f.text("pump_curve").equals("parabola")) {
      plan.append("  shutoff_head: ").append(points[0].split(":")[1]).append(" m\n");
      plan.append("  max_flow: ").append(points[1].split(":")[0]).append(" L/min\n");
    } else {
      plan.append("  curve:\n");
      for (String point : points) {
        String[] pair = point.split(":");
        plan.append("    - ").append(pair[0]).append(" L/min @ ").append(pair[1]).append(" m\n");
      }
    }
    plan.append("  derate: ").append(100 * f.num("head_derate")).append(" %\n");
    plan.append("  speed: ").append(100 * f.num("speed_ratio")).append(" %\n");
    plan.append("tank: {low: ").append(f.text("low_m")).append(" m, full: ");
    plan.append(f.text("full_m")).append(" m}\n");
    if (f.has("common_length_m") && f.num("common_length_m") > 0) {
      plan.append("pipe: ").append(pipe(f, "common_")).append('\n');
    }
    plan.append("towers:\n");
    for (Row r : rows) {
      plan.append("  - {name: t").append(r.text("riser"));
      plan.append(", outlet: ").append(r.text("outlet_m")).append(" m, riser: ");
      plan.append(pipe(r, "riser_"));
      if (r.text("mode").equals("wanted")) {
        plan.append(", wanted: ").append(r.text("wanted_L_min")).append(" L/min");
      }
      plan.append("}\n");
    }
    return plan.toString();
  }

  private static String pipe(Row r, String of) {
    return "{length: "
        + r.text(of + "length_m")
        + " m, bore: "
        + r.text(of + "bore_mm")
        + " mm, roughness: "
        + r.text(of + "rough_mm")
        + " mm, k: "
        + r.text(of + "K_sum")
        + "}";
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyCaseOfTheSheet(String id) throws Exception {
    List<Row> rows = Sheet.of("hydraulics-balance.csv").where(r -> r.id().equals(id)).rows();
    Row f = rows.get(0);
    Cli cli =
        Cli.piped(
            plan(rows),
            "pump",
            "--plan",
            "-",
            "--balance",
            f.text("mode"),
            "--jug",
            f.text("jug_L") + " L",
            "--at",
            f.text("set_at"),
            "--temperature",
            f.text("temperature_C") + " C",
            "--format",
            "json");
    assertThat(cli.err).as(id).doesNotContain("-:");
    JsonNode all = JSON.readTree(cli.out);
    String status = f.text("status").replace('_', '-');
    assertThat(cli.exit).isEqualTo(status.equals("wanted") || status.equals("equal") ? 0 : 1);
    assertThat(all).hasSize(rows.size());
    for (int i = 0; i < rows.size(); i++) {
      Row r = rows.get(i);
      JsonNode a = all.get(i);
      assertThat(a.get("tower").asText()).isEqualTo("t" + r.text("riser"));
      assertThat(a.get("status").asText()).isEqualTo(status);
      same(r, a, "set_flow_L_min", "set_flow_L_min", 1);
      same(r, a, "open_flow_L_min", "open_flow_L_min", 1);
      same(r, a, "valve_head_m", "valve_head_m", 1);
      same(r, a, "valve_K", "valve_K", 1);
      same(r, a, "jug_s", "jug_set_s", 1);
      same(r, a, "flow_full_L_min", "full_flow_L_min", 1);
      same(r, a, "flow_low_L_min", "low_flow_L_min", 1);
      if (f.num("head_derate_worn") == 0.7) {
        same(r, a, "flow_70pct_L_min", "worn_low_flow_L_min", 1);
      }
      same(f, a, "share_of_wanted_pct", "share_of_wanted", 100);
      same(f, a, "left_for_others_L_min", "left_for_others_L_min", 1);
      same(r, a, "order", "hand_order", 1);
      assertThat(a.get("valve").asText()).isEqualTo(r.text("valve"));
      if (f.has("limiting_riser")) {
        assertThat(a.get("limiting").asText()).isEqualTo("t" + f.text("limiting_riser"));
      } else {
        assertThat(a.get("limiting").isNull()).isTrue();
      }
    }
  }

  private static void same(Row r, JsonNode a, String key, String column, double factor) {
    if (!r.has(column)) {
      assertThat(a.get(key).isNull() || key.equals("order")).as(r.id() + " " + key).isTrue();
      return;
    }
    double expected = r.num(column) * factor;
    assertThat(a.get(key).asDouble())
        .as(r.idAndProvenance() + " " + key)
        .isCloseTo(
            expected, within(r.num("tol_abs") * factor + r.num("tol_rel") * Math.abs(expected)));
  }

  /** BA13: the tall tower is dry at open valves and has its want once the low one is throttled. */
  @Test
  void aTowerThatStarvesAtOpenValvesIsWatered() {
    List<Row> rows = Sheet.of("hydraulics-balance.csv").where(r -> r.id().equals("BA13")).rows();
    Cli cli = Cli.piped(plan(rows), "pump", "--plan", "-", "--balance", "wanted");
    assertThat(rows.get(0).num("open_flow_L_min") * rows.get(1).num("open_flow_L_min")).isZero();
    assertThat(cli.exit).isZero();
    assertThat(cli.out).startsWith("With the valves set, every tower gets the flow it wants.");
    assertThat(cli.out).contains("fills in its time");
  }

  /** With three valves and more those set before drift: sheet hydraulics-balance.md section 4. */
  @Test
  void twoRoundsAreAskedForWhenSeveralValvesAreSet() {
    Cli cli = Cli.run("pump", "--plan", "terrace.yaml", "--balance", "wanted");
    assertThat(cli.out).contains("Go round 2 times", "south, then north");
    Cli one = Cli.run("pump", "--plan", "terrace.yaml", "--balance", "equal");
    assertThat(one.exit).isZero();
    assertThat(one.out)
        .doesNotContain("Go round")
        .contains("decides, its valve stays open", "close the one of south");
  }

  @Test
  void whatIsShortSaysTheShareAndEndsWithOne() {
    Cli cli =
        Cli.run(
            "pump",
            "--plan",
            "terrace.yaml",
            "--balance",
            "wanted",
            "--throttle-to",
            "9 L/min",
            "--at",
            "full");
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out).contains("each tower can get", "left for the others together");
  }
}

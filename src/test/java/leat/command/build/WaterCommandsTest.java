package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import leat.Sheet;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * head, pump, tank and check as typed, against the sheets; sources stand in the sheets' provenance
 * columns.
 */
class WaterCommandsTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static JsonNode json(Cli cli) throws Exception {
    return JSON.readTree(cli.out);
  }

  /**
   * Worked example of sheet hydraulics.md section 4 (computed, friction checked against
   * python-fluids).
   */
  @Test
  void headOfTheWorkedExample() throws Exception {
    Cli cli =
        Cli.run(
            "head",
            "--flow",
            "8 L/min",
            "--lift",
            "1.9 m",
            "--bore",
            "13 mm",
            "--length",
            "2.2 m",
            "--roughness",
            "0.0015 mm",
            "--temperature",
            "20 C",
            "--k",
            "2.5",
            "--format",
            "json");
    assertThat(cli.exit).isZero();
    JsonNode a = json(cli);
    assertThat(a.get("velocity_m_s").asDouble()).isCloseTo(1.004528, within(5e-7));
    assertThat(a.get("reynolds").asDouble()).isCloseTo(13015, within(0.5));
    assertThat(a.get("regime").asText()).isEqualTo("turbulent");
    assertThat(a.get("friction_factor").asDouble()).isCloseTo(0.0290333, within(5e-8));
    assertThat(a.get("static_head_m").asDouble()).isEqualTo(1.9);
    assertThat(a.get("friction_head_m").asDouble()).isCloseTo(0.252784, within(5e-7));
    assertThat(a.get("fitting_head_m").asDouble()).isCloseTo(0.128622, within(5e-7));
    assertThat(a.get("total_head_m").asDouble()).isCloseTo(2.281405, within(5e-7));
  }

  static Stream<Sheet.Row> headLosses() {
    return Sheet.of("hydraulics-headloss.csv")
        .having("temperature_C", "total_head_m_colebrook")
        .atLeast(16);
  }

  @ParameterizedTest
  @MethodSource("headLosses")
  void headOfEveryRowOfTheSheet(Sheet.Row r) throws Exception {
    List<String> args =
        new ArrayList<>(
            List.of("head", "--format", "json", "--lift", r.text("static_head_m") + " m"));
    args.addAll(
        List.of(
            "--flow",
            r.text("flow_L_min") + " L/min",
            "--temperature",
            r.text("temperature_C") + " C"));
    for (String section : r.has("bore2_mm") ? new String[] {"1", "2"} : new String[] {"1"}) {
      args.addAll(
          List.of(
              "--bore",
              r.text("bore" + section + "_mm") + " mm",
              "--length",
              r.text("length" + section + "_m") + " m"));
      args.addAll(
          List.of(
              "--roughness",
              r.text("rough" + section + "_mm") + " mm",
              "--k",
              r.text("K" + section + "_sum")));
    }
    JsonNode a = json(Cli.run(args.toArray(new String[0])));
    assertThat(a.get("total_head_m").asDouble())
        .as(r.idAndProvenance())
        .isCloseTo(
            r.num("total_head_m_colebrook"), withinPercentage(100 * r.num("tol_rel_same_model")));
  }

  /**
   * Sheet hydraulics-measured.csv, row MQ01: flow by the printed curve, and the derate of its
   * bucket.
   */
  @Test
  void pumpOfRowMq01() throws Exception {
    Sheet.Row r =
        Sheet.of("hydraulics-measured.csv")
            .where(x -> x.id().equals("MQ01"))
            .atLeast(1)
            .findFirst()
            .orElseThrow();
    String[] line = {
      "pump",
      "--shutoff-head",
      "2.4 m",
      "--max-flow",
      "1000 L/h",
      "--lift",
      "1.7 m",
      "--bore",
      "12 mm",
      "--length",
      "1.9 m",
      "--k",
      "2.5",
      "--format",
      "json"
    };
    Cli cli = Cli.run(line);
    assertThat(cli.exit).isZero();
    JsonNode a = json(cli);
    double tolerance = 100 * r.num("tol_rel");
    assertThat(a.get("flow_L_min").asDouble())
        .isCloseTo(r.num("flow_by_printed_curve_L_min"), withinPercentage(tolerance));
    assertThat(a.get("reaches_top").asBoolean()).isTrue();
    assertThat(a.get("margin_m").asDouble()).isCloseTo(0.7, within(1e-9));
    assertThat(a.get("margin_pct").asDouble()).isCloseTo(100 * 0.7 / 1.7, within(1e-8));
    double riser = Math.PI / 4 * 0.12 * 0.12 * 17;
    assertThat(a.get("riser_L").asDouble()).isCloseTo(riser, withinPercentage(1e-6));
    assertThat(a.get("drain_back_L").asDouble()).isCloseTo(riser, withinPercentage(1e-6));
    assertThat(a.get("fill_time_s").asDouble())
        .isCloseTo(60 * riser / a.get("flow_L_min").asDouble(), withinPercentage(1e-6));
    double power =
        998.2067 * 9.80665 * a.get("flow_L_min").asDouble() / 60000 * a.get("head_m").asDouble();
    assertThat(a.get("hydraulic_power_W").asDouble()).isCloseTo(power, withinPercentage(1e-4));
    List<String> measured = new ArrayList<>(List.of(line));
    measured.addAll(List.of("--measured", "5 L in 66 s"));
    JsonNode b = json(Cli.run(measured.toArray(new String[0])));
    assertThat(b.get("derate_pct").asDouble())
        .isCloseTo(r.num("derate_pct"), withinPercentage(tolerance));
    assertThat(b.get("derate_low_pct").asDouble())
        .isCloseTo(r.num("derate_low_pct"), withinPercentage(tolerance));
    assertThat(b.get("derate_high_pct").asDouble())
        .isCloseTo(r.num("derate_high_pct"), withinPercentage(tolerance));
  }

  @Test
  void aPumpThatCannotReachIsNo() throws Exception {
    Cli cli =
        Cli.run(
            "pump",
            "--shutoff-head",
            "1.6 m",
            "--max-flow",
            "1000 L/h",
            "--lift",
            "1.7 m",
            "--bore",
            "12 mm",
            "--length",
            "1.9 m",
            "--k",
            "2.5",
            "--format",
            "json");
    assertThat(cli.exit).isEqualTo(1);
    JsonNode a = json(cli);
    assertThat(a.get("flow_L_min").asDouble()).isZero();
    assertThat(a.get("reaches_top").asBoolean()).isFalse();
    assertThat(a.get("fill_time_s").isNull()).isTrue();
    assertThat(a.get("status").asText()).isEqualTo("no-flow");
  }

  /**
   * Second way: valve head = head of the derated curve at 4 L/min less what `head` says the riser
   * takes.
   */
  @Test
  void theValveHoldsBackTheRest() throws Exception {
    JsonNode a =
        json(
            Cli.run(
                "pump",
                "--point",
                "0 L/h@2.4 m",
                "--point",
                "600 L/h@1.7 m",
                "--point",
                "1000 L/h@0 m",
                "--derate",
                "85 %",
                "--throttle-to",
                "4 L/min",
                "--lift",
                "1.3 m",
                "--bore",
                "12 mm",
                "--length",
                "1.6 m",
                "--format",
                "json"));
    JsonNode riser =
        json(
            Cli.run(
                "head",
                "--flow",
                "4 L/min",
                "--lift",
                "1.3 m",
                "--bore",
                "12 mm",
                "--length",
                "1.6 m",
                "--format",
                "json"));
    // PCHIP through (0, 2.4) (10, 1.7) (16.667, 0) L/min at 4 L/min, by hand after sheet
    // hydraulics.md section 5:
    double h0 = 10;
    double h1 = 20.0 / 3;
    double s0 = -0.07;
    double s1 = -0.255;
    double d1 = ((2 * h1 + h0) + (h1 + 2 * h0)) / ((2 * h1 + h0) / s0 + (h1 + 2 * h0) / s1);
    double d0 = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
    d0 = d0 * s0 <= 0 ? 0 : d0;
    double t = 0.4;
    double head =
        (2 * t * t * t - 3 * t * t + 1) * 2.4
            + (t * t * t - 2 * t * t + t) * h0 * d0
            + (3 * t * t - 2 * t * t * t) * 1.7
            + (t * t * t - t * t) * h0 * d1;
    assertThat(a.get("valve_head_m").asDouble())
        .isCloseTo(0.85 * head - riser.get("total_head_m").asDouble(), within(1e-8));
    assertThat(a.get("litre_in_s").asDouble()).isCloseTo(15, within(1e-9));
  }

  @Test
  void aPlanGivesARowATowerAndLevel() throws Exception {
    JsonNode rows = json(Cli.run("pump", "--plan", "terrace.yaml", "--format", "json"));
    assertThat(rows).hasSize(4);
    assertThat(rows.get(0).get("tower").asText()).isEqualTo("north");
    assertThat(rows.get(0).get("at").asText()).isEqualTo("low");
    assertThat(rows.get(3).get("tower").asText()).isEqualTo("south");
    assertThat(rows.get(3).get("at").asText()).isEqualTo("full");
    assertThat(rows.get(0).get("flow_L_min").asDouble())
        .isLessThan(rows.get(2).get("flow_L_min").asDouble());
    double back =
        rows.get(0).get("drain_back_L").asDouble() + rows.get(1).get("drain_back_L").asDouble();
    double risers = rows.get(0).get("riser_L").asDouble() + rows.get(1).get("riser_L").asDouble();
    assertThat(back).as("hold_up of the plan").isCloseTo(risers + 2.4, within(1e-9));
  }

  @Test
  void measuredWinsOverDerate() throws Exception {
    String[] line = {
      "pump",
      "--plan",
      "terrace.yaml",
      "--format",
      "json",
      "--level",
      "330 mm",
      "--set",
      "pump.measured=9.2 L/min @ 330 mm"
    };
    JsonNode rows = json(Cli.run(line));
    double sum =
        rows.get(0).get("flow_L_min").asDouble() + rows.get(1).get("flow_L_min").asDouble();
    assertThat(sum).isCloseTo(9.2, within(1e-9));
    assertThat(rows.get(0).get("derate_pct").asDouble()).isNotEqualTo(80);
  }

  @Test
  void aStarvedTowerIsNamedAndGetsExactlyNothing() throws Exception {
    Cli cli =
        Cli.run(
            "pump",
            "--plan",
            "terrace.yaml",
            "--format",
            "json",
            "--set",
            "towers[0].outlet=2.3 m");
    assertThat(cli.exit).isEqualTo(1);
    assertThat(json(cli).get(0).get("flow_L_min").asDouble()).isZero();
    Cli text = Cli.run("pump", "--plan", "terrace.yaml", "--set", "towers[0].outlet=2.3 m");
    assertThat(text.out).startsWith("Tower north gets nothing at the refill mark");
    assertThat(text.out).contains("alone it would be reached, the others pull it down");
  }

  /**
   * Sheet level-tank-volume.csv holds the shapes; this is the contract's own line, volume by the
   * prismatoid formula.
   */
  @Test
  void tankOfTheContract() throws Exception {
    Cli cli =
        Cli.run(
            "tank",
            "--shape",
            "tapered-box",
            "--top",
            "540 mm x 360 mm",
            "--bottom",
            "480 mm x 300 mm",
            "--height",
            "330 mm",
            "--level",
            "200 mm",
            "--format",
            "json");
    double l = 480 + 60 * 200 / 330.0;
    double w = 300 + 60 * 200 / 330.0;
    double middle = (480 + l) / 2 * ((300 + w) / 2);
    double litres = 200 * (480.0 * 300 + 4 * middle + l * w) / 6 / 1e6;
    assertThat(json(cli).get("volume_L").asDouble()).isCloseTo(litres, within(1e-9));
    assertThat(json(cli).get("level_mm").asDouble()).isEqualTo(200);
    Cli back =
        Cli.run(
            "tank",
            "--shape",
            "tapered-box",
            "--top",
            "540 mm x 360 mm",
            "--bottom",
            "480 mm x 300 mm",
            "--height",
            "330 mm",
            "--volume",
            "20 L",
            "--format",
            "json");
    double level = json(back).get("level_mm").asDouble();
    Cli again =
        Cli.run(
            "tank",
            "--shape",
            "tapered-box",
            "--top",
            "540 mm x 360 mm",
            "--bottom",
            "480 mm x 300 mm",
            "--height",
            "330 mm",
            "--level",
            level + " mm",
            "--format",
            "json");
    assertThat(json(again).get("volume_L").asDouble()).isCloseTo(20, within(1e-8));
  }

  @Test
  void csvAndJsonHoldTheSameNumbers() throws Exception {
    JsonNode rows = json(Cli.run("pump", "--plan", "terrace.yaml", "--format", "json"));
    String[] lines = Cli.run("pump", "--plan", "terrace.yaml", "--format", "csv").out.split("\n");
    String[] keys = lines[0].split(",", -1);
    assertThat(lines).hasSize(rows.size() + 1);
    for (int r = 0; r < rows.size(); r++) {
      String[] cells = lines[r + 1].split(",", -1);
      for (int c = 0; c < keys.length; c++) {
        JsonNode value = rows.get(r).get(keys[c]);
        assertThat(cells[c])
            .as(keys[c])
            .isEqualTo(value.isNull() ? "" : value.asText().replaceAll("\\.0$", ""));
      }
    }
    Cli spreadsheet =
        Cli.run(
            "pump",
            "--plan",
            "terrace.yaml",
            "--format",
            "csv",
            "--delimiter",
            ";",
            "--decimal",
            ",");
    assertThat(spreadsheet.out.split("\n")[1])
        .isEqualTo(lines[1].replace(',', ';').replace('.', ','));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG"})
  void anyLocaleAnswersAlike(String tag) {
    Locale before = Locale.getDefault();
    String expected = Cli.run("pump", "--plan", "terrace.yaml", "--format", "csv").out;
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(Cli.run("pump", "--plan", "terrace.yaml", "--format", "csv").out)
          .isEqualTo(expected);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void oneBrokenPlanDoesNotHideTheOthers() {
    Cli cli =
        Cli.run("check", "first-tower.yaml", "no-such.yaml", "proud-tower.yaml", "--format", "csv");
    assertThat(cli.exit).isEqualTo(3);
    assertThat(cli.err).contains("no-such.yaml: no such file");
    assertThat(cli.out)
        .contains("first-tower.yaml,reaches-top,pass")
        .contains("proud-tower.yaml,reaches-top,fail");
  }

  @Test
  void examplesBehaveAsTheySay() {
    assertThat(Cli.run("check", "first-tower.yaml").exit).isZero();
    assertThat(Cli.run("check", "terrace.yaml").exit).isZero();
    assertThat(Cli.run("check", "terrace.yaml", "--strict").exit).isEqualTo(1);
    assertThat(Cli.run("check", "proud-tower.yaml").exit).isEqualTo(1);
  }
}

package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;

/** --bores, --needed and the common pipe, against the same question typed another way. */
class WhichTubeWhichPumpTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static JsonNode json(String... args) throws Exception {
    Cli cli = Cli.run(args);
    assertThat(cli.exit).as(cli.err).isLessThan(2);
    return JSON.readTree(cli.out);
  }

  /** Second route: each tube typed as --bore. */
  @Test
  void headOfEachTubeIsTheHeadOfItsBore() throws Exception {
    JsonNode rows =
        json(
            "head",
            "--flow",
            "8 L/min",
            "--lift",
            "1.9 m",
            "--length",
            "2.2 m",
            "--bores",
            "--format",
            "json");
    assertThat(rows.size()).isGreaterThan(5);
    for (JsonNode row : rows) {
      JsonNode one =
          json(
              "head",
              "--flow",
              "8 L/min",
              "--lift",
              "1.9 m",
              "--length",
              "2.2 m",
              "--bore",
              row.get("bore_mm").asText() + " mm",
              "--format",
              "json");
      assertThat(row.get("total_head_m").asDouble())
          .isCloseTo(one.get("total_head_m").asDouble(), within(1e-9));
      assertThat(row.get("velocity_m_s").asDouble())
          .isCloseTo(one.get("velocity_m_s").asDouble(), within(1e-9));
    }
  }

  /** Second route: each tube laid over the plan with --set. */
  @Test
  void flowOfEachTubeIsTheFlowOfThePlanWithIt() throws Exception {
    JsonNode rows =
        json("pump", "--plan", "terrace.yaml", "--bores", "--tower", "south", "--format", "json");
    assertThat(rows.size()).isGreaterThan(5);
    for (JsonNode row : rows) {
      JsonNode plan =
          json(
              "pump",
              "--plan",
              "terrace.yaml",
              "--format",
              "json",
              "--set",
              "towers[1].riser.bore=" + row.get("bore_mm").asText() + " mm");
      assertThat(row.get("flow_L_min").asDouble())
          .isCloseTo(plan.get(1).get("flow_L_min").asDouble(), within(1e-8));
    }
  }

  @Test
  void theTubeThatGivesWhatIsWantedIsNamed() {
    Cli cli = Cli.run("pump", "--plan", "terrace.yaml", "--bores");
    assertThat(cli.exit).isZero();
    assertThat(cli.out).startsWith("The narrowest tube that gives north the 4.00 L/min it wants");
    Cli never =
        Cli.run("pump", "--plan", "terrace.yaml", "--bores", "--set", "towers[0].wanted=20 L/min");
    assertThat(never.exit).isEqualTo(1);
  }

  /**
   * Worked example of sheet hydraulics.md section 4: 8 L/min take 2.281405 m; the smallest parabola
   * through that at 70 % is 1.5 times as high and the square root of 3 as wide.
   */
  @Test
  void theLeastPumpOfTheWorkedExample() throws Exception {
    JsonNode a =
        json(
            "pump",
            "--needed",
            "--throttle-to",
            "8 L/min",
            "--lift",
            "1.9 m",
            "--bore",
            "13 mm",
            "--length",
            "2.2 m",
            "--k",
            "2.5",
            "--format",
            "json");
    assertThat(a.get("head_m").asDouble()).isCloseTo(2.281405, within(5e-7));
    assertThat(a.get("shutoff_head_m").asDouble()).isCloseTo(1.5 * 2.281405 / 0.7, within(2e-6));
    assertThat(a.get("max_flow_L_min").asDouble()).isCloseTo(8 * Math.sqrt(3), within(1e-6));
  }

  /** What the answer says is enough, balanced, is; a hair less is not. Both rounded up. */
  @Test
  void thePrintedNumbersWaterTheTowers() {
    Cli needed = Cli.run("pump", "--plan", "terrace.yaml", "--needed");
    assertThat(needed.out)
        .startsWith("The smallest pump that would do has 3.40 m and 13.9 L/min on its box.");
    assertThat(balance("3.40 m", "13.9 L/min").exit).isZero();
    assertThat(balance("3.38 m", "13.8 L/min").exit).isEqualTo(1);
  }

  private static Cli balance(String head, String flow) {
    return Cli.run(
        "pump",
        "--plan",
        "terrace.yaml",
        "--balance",
        "wanted",
        "--point",
        "0 L/min@" + head,
        "--point",
        "8 L/min@" + parabola(head, flow) + " m",
        "--point",
        flow + "@0 m");
  }

  private static double parabola(String head, String flow) {
    double h = Double.parseDouble(head.split(" ")[0]);
    double x = 8 / Double.parseDouble(flow.split(" ")[0]);
    return h * (1 - x * x);
  }

  /** Second route: common pipe and riser each by itself, the common one with all the water. */
  @Test
  void theCommonPipeCarriesAllTowers() throws Exception {
    JsonNode a = json("head", "--plan", "terrace.yaml", "--flow", "4 L/min", "--format", "json");
    JsonNode common =
        json(
            "head",
            "--flow",
            "8 L/min",
            "--lift",
            "0 m",
            "--bore",
            "19 mm",
            "--length",
            "0.6 m",
            "--k",
            "4.4",
            "--format",
            "json");
    JsonNode riser =
        json(
            "head",
            "--flow",
            "4 L/min",
            "--lift",
            "1.65 m",
            "--bore",
            "13 mm",
            "--length",
            "1.9 m",
            "--k",
            "2.55",
            "--format",
            "json");
    // common: entrance 0.5, two elbows 1.5, tee 0.9; riser: elbow 1.5, exit 1, ball valve 0.05
    assertThat(a.get("total_head_m").asDouble())
        .isCloseTo(
            common.get("total_head_m").asDouble() + riser.get("total_head_m").asDouble(),
            within(1e-9));
    assertThat(a.get("common_flow_L_min").asDouble()).isCloseTo(8, within(1e-9));
  }

  /** K 0.5 (entrance) and 1 (exit) of sheet hydraulics-fittings.csv, two screwed elbows 1.5. */
  @Test
  void aNamedFittingKeepsEntranceAndExit() throws Exception {
    String[] line = {
      "head",
      "--flow",
      "8 L/min",
      "--lift",
      "1.9 m",
      "--bore",
      "13 mm",
      "--length",
      "2.2 m",
      "--format",
      "json",
      "--fitting",
      "elbow=2"
    };
    assertThat(json(line).get("fittings_k").asDouble()).isCloseTo(4.5, within(1e-12));
    String[] all = java.util.Arrays.copyOf(line, line.length + 4);
    all[line.length] = "--fitting";
    all[line.length + 1] = "entrance-rounded=1";
    all[line.length + 2] = "--fitting";
    all[line.length + 3] = "exit=1";
    assertThat(json(all).get("fittings_k").asDouble()).isCloseTo(4.04, within(1e-12));
  }

  /**
   * By hand: entrance K 0.5 on 19 mm, exit 1 on 13 mm, contraction by Crane K 0.5 (1 - d2/D2) on
   * the narrow one.
   */
  @Test
  void twoBoresHaveEntranceContractionAndExitWhereTheyBelong() throws Exception {
    JsonNode a =
        json(
            "head",
            "--flow",
            "8 L/min",
            "--lift",
            "1.9 m",
            "--bore",
            "19 mm",
            "--bore",
            "13 mm",
            "--length",
            "1 m",
            "--length",
            "2.2 m",
            "--format",
            "json");
    double q = 8 / 60000.0;
    double v19 = q / (Math.PI * 0.019 * 0.019 / 4);
    double v13 = q / (Math.PI * 0.013 * 0.013 / 4);
    double narrow = 1 + 0.5 * (1 - 13.0 * 13 / (19.0 * 19));
    double expected = (0.5 * v19 * v19 + narrow * v13 * v13) / (2 * 9.80665);
    assertThat(a.get("fitting_head_m").asDouble()).isCloseTo(expected, within(1e-7));
  }

  @Test
  void aPriceStandsBesideTheTubeThatHasOne() throws Exception {
    JsonNode rows =
        json(
            "pump",
            "--plan",
            "terrace.yaml",
            "--bores",
            "--set",
            "prices.tubes={16 mm hose: 4.20 EUR}",
            "--format",
            "json");
    int priced = 0;
    for (JsonNode row : rows) {
      boolean named = row.get("tube").asText().equals("16 mm hose");
      assertThat(row.get("price").isNull()).isEqualTo(!named);
      priced += named && row.get("price").asDouble() == 4.2 ? 1 : 0;
    }
    assertThat(priced).isEqualTo(1);
    Cli typo =
        Cli.run(
            "head",
            "--flow",
            "8 L/min",
            "--lift",
            "1.9 m",
            "--length",
            "2 m",
            "--bores",
            "--set",
            "prices.tubes={16mm: 4 EUR}");
    assertThat(typo.out).contains("prices.tubes names \"16mm\"");
  }

  /** Every question of pump and head has its formulas. */
  @Test
  void allQuestionsExplain() throws Exception {
    String[][] lines = {
      {"pump", "--plan", "terrace.yaml"},
      {"pump", "--plan", "terrace.yaml", "--needed"},
      {"pump", "--plan", "terrace.yaml", "--bores"},
      {"pump", "--plan", "terrace.yaml", "--balance", "equal"},
      {"pump", "--plan", "terrace.yaml", "--measured", "10 L in 65 s"},
      {"tank", "--plan", "first-tower.yaml", "--level", "200 mm"},
      {"tank", "--plan", "first-tower.yaml", "--thirst", "8 L/d", "--days", "7"},
    };
    for (String[] line : lines) {
      String[] explained = java.util.Arrays.copyOf(line, line.length + 3);
      explained[line.length] = "--explain";
      explained[line.length + 1] = "--format";
      explained[line.length + 2] = "csv";
      Cli csv = Cli.run(explained);
      assertThat(csv.err).as(String.join(" ", line)).contains("Working: ").contains("source ");
      assertThat(csv.out).doesNotContain("Working");
    }
  }
}

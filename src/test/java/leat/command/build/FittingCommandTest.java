package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import leat.Sheet;
import leat.cli.Cli;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fittings with a size, ridges: as flags and as keys, against rows of hydraulics-fittings.csv. */
class FittingCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static JsonNode json(String... args) throws Exception {
    Cli cli = Cli.run(args);
    assertThat(cli.exit).as(cli.err).isLessThan(2);
    return JSON.readTree(cli.out);
  }

  private static double k(String id) {
    return Sheet.of("hydraulics-fittings.csv")
        .atLeast(154)
        .filter(r -> r.text("case_id").equals(id))
        .findFirst()
        .orElseThrow()
        .num("K");
  }

  /**
   * K 1.5 of entrance and exit is on top; a tee's printed K is moved to the part of the flow that
   * its pipe carries.
   */
  @ParameterizedTest
  @CsvSource({
    "screen=1 @ 40 %, 16 mm, FI125, 1",
    "screen-punched=1 @ 40 %, 16 mm, FI126, 1",
    "tee-branch=1 @ 50 %, 16 mm, FI137, 0.5",
    "tee-run=1 @ 60 %, 16 mm, FI140, 0.4",
    "plug-cock=2 @ 20 deg, 16 mm, FI028, 0.70710678",
    "entrance-rounded=1 @ 0.64 mm, 16 mm, FI004, 1",
    "narrowing=1 @ 16 mm, 8 mm, FI081, 1"
  })
  void flagGivesTheSheetsK(String fitting, String bore, String id, double share) throws Exception {
    JsonNode head =
        json(
            "head",
            "--flow",
            "8 L/min",
            "--lift",
            "1.9 m",
            "--bore",
            bore,
            "--length",
            "2.2 m",
            "--fitting",
            fitting,
            "--format",
            "json");
    double ends = fitting.startsWith("entrance") ? 1 : 1.5;
    assertThat(head.get("fittings_k").asDouble() - ends)
        .isCloseTo(k(id) / (share * share), within(1e-6));
  }

  /** The same fittings as keys of a plan lose what their K typed as one number loses. */
  @ParameterizedTest
  @CsvSource({
    "'{entrance: 1, screen: 2 @ 40 %, exit: 1}', FI125, 2",
    "'{entrance: 1, tee-run: 1 @ 0 %, exit: 1}', FI001, 0",
    "'{entrance: 1, plug-cock: 1 @ 20 deg, exit: 1}', FI028, 1"
  })
  void keyGivesTheSheetsK(String fittings, String id, double count) throws Exception {
    JsonNode named = pump("towers[0].riser.fittings=" + fittings);
    JsonNode summed = pump("towers[0].riser.k=" + (1.5 + count * k(id)));
    assertThat(named.get("flow_L_min").asDouble())
        .isCloseTo(summed.get("flow_L_min").asDouble(), within(1e-9));
  }

  private static JsonNode pump(String set) throws Exception {
    return json(
            "pump",
            "--plan",
            "first-tower.yaml",
            "--set",
            "towers[0].riser.k=",
            "--set",
            "towers[0].riser.fittings=",
            "--set",
            set,
            "--format",
            "json")
        .get(0);
  }

  /** Sheet row FI151: 16 mm, ridges 4 mm apart, f 0.1408439067; one K for each ridge. */
  @ParameterizedTest
  @CsvSource({"head", "pump"})
  void ridgesAreReached(String command) throws Exception {
    double each = k("FI151");
    double area = Math.PI / 4 * 0.016 * 0.016;
    if (command.equals("head")) {
      JsonNode head =
          json(
              "head",
              "--flow",
              "8 L/min",
              "--lift",
              "1.9 m",
              "--bore",
              "16 mm",
              "--length",
              "2 m",
              "--ridges",
              "4 mm",
              "--format",
              "json");
      double v = 8e-3 / 60 / area;
      assertThat(head.get("friction_factor").asDouble()).isCloseTo(0.1408439067, within(1e-9));
      assertThat(head.get("friction_head_m").asDouble())
          .isCloseTo(500 * each * v * v / (2 * 9.80665), within(1e-9));
      return;
    }
    JsonNode pump =
        json(
            "pump",
            "--shutoff-head",
            "2.4 m",
            "--max-flow",
            "1000 L/h",
            "--lift",
            "1.7 m",
            "--bore",
            "16 mm",
            "--length",
            "2 m",
            "--k",
            "1.5",
            "--ridges",
            "4 mm",
            "--format",
            "json");
    double flow = pump.get("flow_L_min").asDouble() / 60e3;
    double v = flow / area;
    double lost = (500 * each + 1.5) * v * v / (2 * 9.80665);
    assertThat(pump.get("head_m").asDouble()).isCloseTo(1.7 + lost, within(1e-6));
  }
}

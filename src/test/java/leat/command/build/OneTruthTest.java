package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;

/**
 * One truth about the pump: what a bucket found on the tower as written holds for every what-if.
 * The figures are held against each other, not against a sheet: the share of the unchanged plan,
 * typed as {@code pump.derate}, must give the same answer as the bucket that found it.
 */
class OneTruthTest {
  private static final String PLAN = "first-tower.yaml";

  private static Ran pump(String... sets) {
    return run("pump --plan " + PLAN + " --format json", sets);
  }

  private static Ran check(String... sets) {
    return run("check " + PLAN + " --format json", sets);
  }

  private static Ran run(String line, String... sets) {
    List<String> args = new ArrayList<>(List.of(line.split(" ")));
    for (String set : sets) {
      args.addAll(List.of("--set", set));
    }
    return Ran.run(args.toArray(new String[0]));
  }

  private static JsonNode finding(Ran ran, String rule) {
    for (JsonNode row : ran.json()) {
      if (row.get("rule").asText().equals(rule)) {
        return row;
      }
    }
    throw new AssertionError(rule + " is not in " + ran.out());
  }

  private static boolean hasNote(Ran ran, String code) {
    JsonNode first = ran.json().isArray() ? ran.json().get(0) : ran.json();
    for (JsonNode note : first.get("notes")) {
      if (note.get("code").asText().equals(code)) {
        return true;
      }
    }
    return false;
  }

  private static double share() {
    return pump().json().get(0).get("derate_pct").asDouble();
  }

  @Test
  void aNarrowerRiserGivesLessNeverMore() {
    double last = Double.POSITIVE_INFINITY;
    for (String bore : List.of("16 mm", "13 mm", "10 mm", "8 mm", "7 mm", "5 mm")) {
      JsonNode low = pump("towers[0].riser.bore=" + bore).json().get(0);
      assertThat(low.get("derate_pct").asDouble()).as(bore).isEqualTo(share());
      assertThat(low.get("flow_L_min").asDouble()).as(bore).isLessThan(last);
      last = low.get("flow_L_min").asDouble();
    }
  }

  @Test
  void whatIfsAgreeWithTheShareTyped() {
    String derate = "pump.derate=" + share() + " %";
    for (String what : List.of("towers[0].riser.bore=8 mm", "pump.shutoff_head=3 m")) {
      JsonNode measured = pump(what).json();
      JsonNode typed = pump(what, derate).json();
      for (int i = 0; i < 2; i++) {
        assertThat(measured.get(i).get("flow_L_min").asDouble())
            .as(what)
            .isCloseTo(typed.get(i).get("flow_L_min").asDouble(), within(1e-9));
      }
      assertThat(finding(check(what), "pump-margin").get("value").asDouble())
          .as(what)
          .isCloseTo(
              finding(check(what, derate), "pump-margin").get("value").asDouble(), within(1e-9));
    }
  }

  @Test
  void aFlagForTheRiserLeavesTheShareAlone() {
    JsonNode low =
        run("pump --plan " + PLAN + " --format json --bore 8mm --length 2m").json().get(0);
    assertThat(low.get("derate_pct").asDouble()).isEqualTo(share());
    JsonNode lift = run("pump --plan " + PLAN + " --format json --lift 1m").json().get(0);
    assertThat(lift.get("derate_pct").asDouble()).isEqualTo(share());
  }

  @Test
  void aPumpUnderTheLiftFails() {
    Ran ran = check("pump.shutoff_head=1 m");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(finding(ran, "reaches-top").get("verdict").asText()).isEqualTo("fail");
    assertThat(pump("pump.shutoff_head=1 m").exit()).isEqualTo(1);
  }

  @Test
  void aBucketThatIsTypedStandsUnderTheTowerAsWritten() {
    String bucket = "pump.measured=6 L/min @ 250 mm";
    double asWritten = pump(bucket).json().get(0).get("derate_pct").asDouble();
    assertThat(asWritten).isLessThan(share());
    for (String other : List.of("towers[0].riser.bore=8 mm", "towers[0].outlet=1.5 m")) {
      assertThat(pump(bucket, other).json().get(0).get("derate_pct").asDouble())
          .as(other)
          .isEqualTo(asWritten);
      assertThat(pump(other, bucket).json().get(0).get("derate_pct").asDouble())
          .as(other)
          .isEqualTo(asWritten);
    }
  }

  @Test
  void aWholePumpBringsItsOwnBucket() {
    String whole = "pump={shutoff_head: 3 m, max_flow: 1200 L/h, measured: 6 L/min @ 250 mm}";
    double own = pump(whole).json().get(0).get("derate_pct").asDouble();
    assertThat(own).isLessThan(share());
    assertThat(pump(whole, "towers[0].riser.bore=9 mm").json().get(0).get("derate_pct").asDouble())
        .isEqualTo(own);
    JsonNode without = pump("pump={shutoff_head: 3 m, max_flow: 1200 L/h}").json().get(0);
    assertThat(without.get("derate_pct").asDouble()).isEqualTo(100);
  }

  @Test
  void aFlowThatNothingExplainsIsSaidEverywhere() {
    String over = "pump.measured=12 L/min @ 250 mm";
    String beyond = "pump.measured=30 L/min @ 250 mm";
    for (String[] one : new String[][] {{over, "over-100"}, {beyond, "beyond-curve"}}) {
      Ran pump = pump(one[0]);
      assertThat(pump.exit()).isEqualTo(1);
      assertThat(hasNote(pump, one[1])).isTrue();
      assertThat(pump.json().get(0).get("derate_pct").asDouble()).isEqualTo(100);
      assertThat(pump.json().get(0).get("flow_L_min").asDouble())
          .isEqualTo(pump("pump.derate=100 %").json().get(0).get("flow_L_min").asDouble());
      Ran check = check(one[0]);
      assertThat(check.exit()).isEqualTo(1);
      assertThat(hasNote(check, one[1])).isTrue();
      assertThat(finding(check, "pump-measured").get("verdict").asText()).isEqualTo("fail");
      Ran duty =
          run("duty --plan " + PLAN + " --price 0.31EUR/kWh --days 180 --format json", one[0]);
      assertThat(duty.exit()).as(duty.out() + duty.err()).isEqualTo(1);
      assertThat(hasNote(duty, one[1])).isTrue();
    }
  }

  /** Ceiling: lift over shut-off head, here 1.30 m - 0.25 m over 2.4 m. */
  @Test
  void nothingInTheBucketIsACeiling() {
    String none = "pump.measured=0 L/min @ 250 mm";
    Ran pump = pump(none);
    assertThat(pump.exit()).isEqualTo(1);
    assertThat(hasNote(pump, "no-flow")).isTrue();
    for (JsonNode row : pump.json()) {
      assertThat(row.get("derate_pct").isNull()).isTrue();
      assertThat(row.get("derate_high_pct").asDouble()).isCloseTo(105 / 2.4, within(1e-9));
    }
    assertThat(pump.json().get(0).get("flow_L_min").asDouble()).isEqualTo(0);
    Ran flag =
        Ran.run("pump", "--plan", PLAN, "--measured", "0 L/min @ 250 mm", "--format", "json");
    assertThat(flag.exit()).isEqualTo(1);
    assertThat(flag.json().get("derate_pct").isNull()).isTrue();
    assertThat(flag.json().get("derate_high_pct").asDouble()).isCloseTo(105 / 2.4, within(1e-9));
    assertThat(check(none).exit()).isEqualTo(1);
  }

  /** Outlet less level is 1.7999999999999998 m where decimal numbers give 1.8 m. */
  @Test
  void aLiftEqualToTheShutOffHeadIsExactlyNoFlow() {
    String[] sets = {
      "towers[0].outlet=1.9 m",
      "tank.low=100 mm",
      "pump.measured=",
      "pump.derate=100 %",
      "pump.shutoff_head=1.8 m"
    };
    Ran pump = pump(sets);
    JsonNode low = pump.json().get(0);
    assertThat(pump.exit()).isEqualTo(1);
    assertThat(low.get("flow_L_min").asDouble()).isEqualTo(0);
    assertThat(low.get("margin_m").asDouble()).isEqualTo(0);
    assertThat(low.get("status").asText()).isEqualTo("no-flow");
    assertThat(finding(check(sets), "reaches-top").get("verdict").asText()).isEqualTo("fail");
  }

  @Test
  void thePrintedHeadAloneIsNotBelieved() {
    String[] untold = {"pump.measured=", "pump.derate="};
    Ran pump = pump(untold);
    Ran seventy = pump("pump.derate=70 %");
    for (int i = 0; i < 2; i++) {
      JsonNode row = pump.json().get(i);
      assertThat(row.get("flow_at_70pct_L_min").asDouble())
          .isEqualTo(seventy.json().get(i).get("flow_L_min").asDouble());
      assertThat(row.get("derate_pct").asDouble()).isEqualTo(100);
      assertThat(seventy.json().get(i).get("flow_at_70pct_L_min").isNull()).isTrue();
    }
    assertThat(run("pump --plan " + PLAN, untold).out())
        .contains("by the printed head; ")
        .contains(" at the 70 % that many pumps give.");
    for (String rule : List.of("reaches-top", "pump-margin", "run-covers")) {
      assertThat(finding(check(untold), rule).get("value"))
          .isEqualTo(finding(check("pump.derate=70 %"), rule).get("value"));
    }
    assertThat(check(untold).json().get(0).get("taken").toString())
        .contains("70 % of the printed head, as many pumps give");
    String duty = "duty --plan " + PLAN + " --price 0.31EUR/kWh --days 180";
    assertThat(run(duty, untold).out()).contains("70 % of the printed head, as many pumps give");
  }

  @Test
  void withoutAPlanTheSentenceGivesBoth() {
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
      "2.5"
    };
    assertThat(Ran.run(line).out())
        .containsPattern(
            "The pump reaches the top: [0-9.]+ L/min by the printed head; nothing at the 70 % that many pumps give\\.");
  }
}

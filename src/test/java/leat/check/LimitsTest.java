package leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import leat.cli.Cli;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Refused;
import leat.plan.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits of one's own: an impossible one is contained, a wrong one refused, none is off. */
class LimitsTest {
  private static Plan plan(String limits) {
    Plan.Draft draft =
        PlanFile.read("first-tower.yaml", new File("examples/first-tower.yaml"), null);
    return draft.set("limits", Source.flag("--set", limits)).read();
  }

  @ParameterizedTest
  @ValueSource(strings = {"riser-not-slow: 0 m/s", "pump-margin: -5 %", "rest-day: 0 min"})
  void anImpossibleLimitLeavesItsRuleUnknownAndJudgesAllOthers(String limit) {
    String rule = limit.substring(0, limit.indexOf(':'));
    int others = 0;
    for (Finding finding : Rules.judge(new Subject(plan("{" + limit + "}")))) {
      if (finding.rule().id().equals(rule)) {
        assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(finding.reason()).contains("limits." + rule, "a limit above 0 is needed");
      } else {
        others += finding.verdict() == Verdict.UNKNOWN ? 0 : 1;
      }
    }
    assertThat(others).isGreaterThan(20);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "crops-share: banana",
        "crops-share: 5",
        "pump-margin: 2 L",
        "pump-margin: much",
        "riser-slow: 1 m/s",
        "pump-measured: 50 %"
      })
  void aWrongLimitIsRefused(String limit) {
    assertThatThrownBy(() -> Rules.judge(new Subject(plan("{" + limit + "}"))))
        .isInstanceOf(Refused.class);
  }

  @Test
  void anOldNameIsMetWithTodays() {
    assertThatThrownBy(() -> Rules.judge(new Subject(plan("{riser-slow: 1 m/s}"))))
        .hasMessageContaining("did you mean \"riser-not-slow\"?");
    assertThat(Cli.run("check", "first-tower.yaml", "--rule", "siphon-back").err)
        .isEqualTo("leat check: no rule \"siphon-back\"; did you mean \"no-siphon\"?\n");
  }

  @Test
  void noneIsOffInAllFormatsAndCountsNowhere() {
    String[] set = {"--set", "limits={film-not-flooding: none, crops-share: none}"};
    Cli text = Cli.run("check", "first-tower.yaml", set[0], set[1]);
    assertThat(text.out).startsWith("Nothing fails: 24 pass, 4 warn, 5 need values");
    assertThat(text.out).contains("  off      film-not-flooding");
    Cli csv = Cli.run("check", "first-tower.yaml", set[0], set[1], "-f", "csv");
    assertThat(csv.out).contains("first-tower.yaml,crops-share,off,,");
    Cli json = Cli.run("check", "first-tower.yaml", set[0], set[1], "-f", "json");
    assertThat(json.out).contains("\"verdict\": \"off\"");
  }
}

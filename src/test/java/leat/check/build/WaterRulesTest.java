package leat.check.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each rule fails on a plan spoilt for it, and its advice, followed to the letter, makes it pass.
 */
class WaterRulesTest {
  private static final Pattern ADVICE =
      Pattern.compile("([a-z_]+(?:\\[\\d+])?(?:\\.[a-z_]+)+) of ([\\d.]+ (?:mm|m|N|L/min))");

  private static Plan plan(String file, String... sets) {
    Plan.Draft draft = PlanFile.read(file, new File("examples/" + file), null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  private static Finding find(Plan plan, String rule, String place) {
    for (Finding finding : Rules.judge(new Subject(plan))) {
      if (finding.rule().id().equals(rule) && (place == null || place.equals(finding.place()))) {
        return finding;
      }
    }
    return null;
  }

  static Stream<Arguments> spoilt() {
    return Stream.of(
        Arguments.of("reaches-top", "first-tower.yaml", null, List.of("towers[0].outlet=1.8 m")),
        Arguments.of("pump-margin", "first-tower.yaml", null, List.of("towers[0].outlet=1.6 m")),
        Arguments.of("tower-starved", "terrace.yaml", "north", List.of("towers[0].outlet=2.3 m")),
        Arguments.of("flow-wanted", "terrace.yaml", "north", List.of()),
        Arguments.of(
            "outlet-over-top", "first-tower.yaml", null, List.of("towers[0].outlet=1.2 m")),
        Arguments.of("reach", "terrace.yaml", "north", List.of("limits={reach: 1.5 m}")),
        Arguments.of("siphon-back", "first-tower.yaml", null, List.of("towers[0].outlet=0.2 m")),
        Arguments.of("freeboard", "first-tower.yaml", null, List.of("tank.full=318 mm")),
        Arguments.of("intake-covered", "first-tower.yaml", null, List.of("tank.low=50 mm")),
        Arguments.of(
            "cap-lift",
            "first-tower.yaml",
            null,
            List.of("towers[0].cap.grip=0 N", "towers[0].cap.mass=5 g")),
        Arguments.of("film-flood", "first-tower.yaml", null, List.of("towers[0].wanted=")),
        Arguments.of("gap-carries", "first-tower.yaml", null, List.of("towers[0].cap.gap=1 mm")),
        Arguments.of("gap-clogs", "first-tower.yaml", null, List.of("towers[0].cap.gap=0.8 mm")),
        Arguments.of(
            "riser-fast",
            "first-tower.yaml",
            null,
            List.of(
                "towers[0].riser.bore=9 mm",
                "pump.measured=",
                "towers[0].wanted=",
                "pump.shutoff_head=6 m")),
        Arguments.of("riser-slow", "first-tower.yaml", null, List.of("towers[0].wanted=2 L/min")),
        Arguments.of(
            "strainer-head",
            "first-tower.yaml",
            null,
            List.of("strainer.diameter=30 mm", "strainer.clogged=90 %")),
        Arguments.of("strainer-holds", "first-tower.yaml", null, List.of()));
  }

  @ParameterizedTest
  @MethodSource("spoilt")
  void theAdviceFollowedPasses(String rule, String file, String place, List<String> sets) {
    Plan broken = plan(file, sets.toArray(new String[0]));
    Finding finding = find(broken, rule, place);
    assertThat(finding).as(rule).isNotNull();
    assertThat(finding.verdict()).as(rule).isIn(Verdict.FAIL, Verdict.WARN);
    Matcher advice = ADVICE.matcher(finding.advice().render(false));
    List<String> tried = new ArrayList<>();
    while (advice.find()) {
      tried.add(advice.group());
      Plan mended = broken.with(advice.group(1), advice.group(2));
      Finding after = find(mended, rule, place);
      assertThat(after == null ? Verdict.PASS : after.verdict())
          .as(rule + ", advice followed: " + advice.group())
          .isEqualTo(Verdict.PASS);
    }
    assertThat(tried)
        .as("advice of " + rule + " names a key and a value: " + finding.advice().render(false))
        .isNotEmpty();
  }

  @Test
  void everyRuleHasASpoiltPlanOrATestOfItsOwn() {
    List<String> covered = new ArrayList<>(List.of("run-out", "film-closed", "pump-guess"));
    spoilt().forEach(a -> covered.add((String) a.get()[0]));
    for (Rule rule : WaterRules.all()) {
      assertThat(covered).contains(rule.id());
    }
  }

  @Test
  void aPumpPastTheEndOfItsCurveWarns() {
    Plan plan =
        plan(
            "first-tower.yaml",
            "pump.measured=",
            "pump.shutoff_head=",
            "pump.max_flow=",
            "pump.curve=[0 L/h @ 6 m, 300 L/h @ 5.8 m]");
    assertThat(find(plan, "run-out", null).verdict()).isEqualTo(Verdict.WARN);
    assertThat(find(plan("first-tower.yaml"), "run-out", null).verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void aThinFilmWarnsAndAFullOneDoesNot() {
    assertThat(
            find(plan("terrace.yaml", "towers[0].outlet=1.9 m"), "film-closed", "north").verdict())
        .isEqualTo(Verdict.WARN);
    assertThat(find(plan("first-tower.yaml"), "film-closed", null).verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void aGuessedPumpWarnsAMeasuredOneDoesNotAndAnImpossibleOneFails() {
    assertThat(find(plan("terrace.yaml"), "pump-guess", null).verdict()).isEqualTo(Verdict.WARN);
    assertThat(find(plan("first-tower.yaml"), "pump-guess", null).verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(
            find(plan("first-tower.yaml", "pump.measured=30 L/min @ 250 mm"), "pump-guess", null)
                .verdict())
        .isEqualTo(Verdict.FAIL);
  }

  @Test
  void limitsOfThePlanWin() {
    assertThat(
            find(plan("first-tower.yaml", "limits={pump-margin: 50 %}"), "pump-margin", null)
                .verdict())
        .isEqualTo(Verdict.FAIL);
    assertThat(
            find(plan("first-tower.yaml", "limits={pump-margin: 5 %}"), "pump-margin", null)
                .limit())
        .isEqualTo(0.05);
  }

  @Test
  void missingKeysAreUnknownAndNameTheKey() {
    Finding finding = find(plan("first-tower.yaml", "tank.intake="), "intake-covered", null);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.advice().render(false)).isEqualTo("needs tank.intake");
  }
}

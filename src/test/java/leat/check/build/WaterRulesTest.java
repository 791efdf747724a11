package leat.check.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.check.Cure;
import leat.check.Judged;
import leat.check.Rule;
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
  private static Plan plan(String file, String... sets) {
    Plan.Draft draft = PlanFile.read(file, new File("examples/" + file), null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  private static Judged find(Plan plan, String rule, String place) {
    for (Judged finding : Judged.all(plan)) {
      if (finding.rule().equals(rule) && (place == null || place.equals(finding.part()))) {
        return finding;
      }
    }
    return null;
  }

  static Stream<Arguments> spoilt() {
    return Stream.of(
        Arguments.of("reaches-top", "first-tower.yaml", null, List.of("towers[0].outlet=1.8 m")),
        Arguments.of("pump-margin", "first-tower.yaml", null, List.of("towers[0].outlet=1.6 m")),
        Arguments.of(
            "tower-fed",
            "terrace.yaml",
            "north",
            List.of("towers[0].outlet=2.3 m", "towers[0].riser.valve=", "towers[1].riser.valve=")),
        Arguments.of(
            "flow-wanted",
            "terrace.yaml",
            "north",
            List.of("towers[0].riser.valve=", "towers[1].riser.valve=")),
        Arguments.of("valve-needed", "first-tower.yaml", null, List.of()),
        Arguments.of(
            "outlet-over-top", "first-tower.yaml", null, List.of("towers[0].outlet=1.2 m")),
        Arguments.of("reach", "terrace.yaml", "north", List.of("limits={reach: 1.5 m}")),
        Arguments.of("no-siphon", "first-tower.yaml", null, List.of("towers[0].outlet=0.2 m")),
        Arguments.of("freeboard", "first-tower.yaml", null, List.of("tank.full=318 mm")),
        Arguments.of("intake-covered", "first-tower.yaml", null, List.of("tank.low=50 mm")),
        Arguments.of(
            "cap-lift",
            "first-tower.yaml",
            null,
            List.of("towers[0].cap.grip=0 N", "towers[0].cap.mass=5 g")),
        Arguments.of("film-not-flooding", "first-tower.yaml", null, List.of("towers[0].wanted=")),
        Arguments.of("gap-carries", "first-tower.yaml", null, List.of("towers[0].cap.gap=1 mm")),
        Arguments.of("gap-clear", "first-tower.yaml", null, List.of("towers[0].cap.gap=0.8 mm")),
        Arguments.of(
            "riser-not-fast",
            "first-tower.yaml",
            null,
            List.of(
                "towers[0].riser.bore=9 mm",
                "pump.measured=",
                "towers[0].wanted=",
                "pump.shutoff_head=6 m")),
        Arguments.of(
            "riser-not-slow",
            "first-tower.yaml",
            null,
            List.of("towers[0].wanted=2 L/min", "towers[0].riser.valve=ball")),
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
    Judged finding = find(broken, rule, place);
    assertThat(finding).as(rule).isNotNull();
    assertThat(finding.verdict()).as(rule).isIn(Verdict.FAIL, Verdict.WARN);
    assertThat(finding.cures()).as(rule + ": " + finding.advice()).isNotEmpty();
    for (Cure cure : finding.cures()) {
      Judged after = find(cure.on(broken), rule, place);
      assertThat(after == null ? Verdict.PASS : after.verdict())
          .as(rule + ", advice followed: " + cure.words().render(false))
          .isEqualTo(Verdict.PASS);
    }
  }

  @Test
  void everyRuleHasASpoiltPlanOrATestOfItsOwn() {
    List<String> covered =
        new ArrayList<>(List.of("pump-on-curve", "film-closed", "pump-measured"));
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
    assertThat(find(plan, "pump-on-curve", null).verdict()).isEqualTo(Verdict.WARN);
    assertThat(find(plan("first-tower.yaml"), "pump-on-curve", null).verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void aThinFilmWarnsAndAFullOneDoesNot() {
    assertThat(
            find(plan("first-tower.yaml", "towers[0].outlet=1.7 m"), "film-closed", null).verdict())
        .isEqualTo(Verdict.WARN);
    assertThat(find(plan("first-tower.yaml"), "film-closed", null).verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void aGuessedPumpWarnsAMeasuredOneDoesNotAndAnImpossibleOneFails() {
    assertThat(find(plan("terrace.yaml"), "pump-measured", null).verdict()).isEqualTo(Verdict.WARN);
    assertThat(find(plan("first-tower.yaml"), "pump-measured", null).verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(
            find(plan("first-tower.yaml", "pump.measured=30 L/min @ 250 mm"), "pump-measured", null)
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
    Judged finding = find(plan("first-tower.yaml", "tank.intake="), "intake-covered", null);
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.advice()).isEqualTo("needs tank.intake");
  }
}

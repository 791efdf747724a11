package leat.check.sense;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.check.Judged;
import leat.check.Rule;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each rule of the sender: a plan that passes, one that fails by a hair, and its advice, followed.
 */
class LevelRulesTest {
  private static Plan plan(String... sets) {
    Plan.Draft draft = PlanFile.read("sender-tub.yaml", new File("examples/sender-tub.yaml"), null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  private static Judged find(String rule, String... sets) {
    List<Judged> found = Judged.all(plan(sets));
    for (Judged finding : found) {
      if (finding.rule().equals(rule)) {
        return finding;
      }
    }
    return null;
  }

  private static String advice(Judged finding) {
    return finding.advice();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // rule | passes | breaks by a hair | verdict | value | limit, base units
        "low-above-step|tank.low=60 mm|tank.low=59.9 mm|FAIL|0.0599|0.06",
        // falling, the step of 27 ohm lasts 4 mm longer: to 56 mm
        "intake-seen|tank.intake=56 mm|tank.intake=56.1 mm|FAIL|0.056|0.0561",
        "full-seen|tank.full=240 mm|tank.full=240.2 mm|WARN|0.0386112782|0.0386468",
      })
  void byAHair(
      String rule, String passes, String breaks, Verdict verdict, double value, double limit) {
    assertThat(find(rule, passes).verdict()).isEqualTo(Verdict.PASS);
    Judged broken = find(rule, breaks);
    assertThat(broken.verdict()).isEqualTo(verdict);
    assertThat(broken.value()).isCloseTo(value, within(1e-6));
    assertThat(broken.limit()).isCloseTo(limit, within(1e-5));
    assertThat(advice(broken)).contains(passes.substring(0, passes.indexOf('=')) + " of ");
    Matcher mend = Pattern.compile("(tank\\.\\w+) of ([0-9.]+) mm").matcher(advice(broken));
    assertThat(mend.find()).isTrue();
    assertThat(find(rule, mend.group(1) + "=" + mend.group(2) + " mm").verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void aStepAgainstADaysThirst() {
    // widest middle band: 216 to 240 mm, 38.6112782 L - 34.3565091 L
    double widest = 38.6112782281 - 34.3565091;
    Judged passes = find("step-under-thirst", "drinks=4.26 L/d");
    assertThat(passes.verdict()).isEqualTo(Verdict.PASS);
    assertThat(passes.value() * 1000).isCloseTo(widest, within(1e-5));
    assertThat(find("step-under-thirst", "drinks=4.25 L/d").verdict()).isEqualTo(Verdict.WARN);
    assertThat(find("step-under-thirst").verdict()).isEqualTo(Verdict.UNKNOWN);
    String crops =
        "crops=[{name: chard, pots: 18, water: 0.20 L/d}, {name: basil, pots: 6, water: 0.12 L/d}]";
    Judged byCrops = find("step-under-thirst", crops);
    assertThat(byCrops.limit() * 1000).isCloseTo(18 * 0.2 + 6 * 0.12, within(1e-9));
    assertThat(find("step-under-thirst", crops, "thirst=124 %").limit() * 1000)
        .isCloseTo(1.24 * (18 * 0.2 + 6 * 0.12), within(1e-9));
  }

  @Test
  void theDipOfTheRunningTowers() {
    // 24 mm, a pitch of 20 and a hysteresis of 4, under the full mark at 280 mm
    Judged small = find("dip-seen", "hold_up=1.2 L");
    assertThat(small.verdict()).isEqualTo(Verdict.WARN);
    assertThat(small.limit()).isCloseTo(0.024, within(1e-9));
    assertThat(find("dip-seen", "hold_up=4.4 L").verdict()).isEqualTo(Verdict.WARN);
    assertThat(find("dip-seen", "hold_up=4.5 L").verdict()).isEqualTo(Verdict.PASS);
    assertThat(find("dip-seen").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(advice(small)).contains("cap_sensor");
    Judged capped = find("dip-seen", "hold_up=1.2 L", "cap_sensor={wet: 1350, dry: 2750}");
    assertThat(capped.verdict()).isEqualTo(Verdict.PASS);
    assertThat(capped.words()).isEqualTo("cap sensor");
  }

  @Test
  void stepsAtTheAdc() {
    assertThat(find("steps-resolvable").words()).isEqualTo("all told apart by the ADC");
    // DD05 of level-divider-design.csv: 1.1 V of 5 % cannot tell the upper steps apart
    Judged own =
        find(
            "steps-resolvable",
            "sender.divider={supply: 5 V, supply_tolerance: 5 %, reference: 1.1 V, reference_tolerance: 5 %, resistor: 866 ohm, bits: 10, adc_error: 2}");
    assertThat(own.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(own.words()).matches("\\d+ of 10 pairs alike to the ADC");
    assertThat(advice(own)).contains("sender.divider.ratiometric of true");
    assertThat(own.cures()).isNotEmpty();
    Judged large = find("steps-resolvable", "sender.divider.resistor=20 kohm");
    assertThat(large.verdict()).isEqualTo(Verdict.FAIL);
    Matcher mend = Pattern.compile("sender.divider.resistor of (\\S+) ohm").matcher(advice(large));
    assertThat(mend.find()).isTrue();
    assertThat(
            find("steps-resolvable", "sender.divider.resistor=" + mend.group(1) + " ohm").verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(find("steps-resolvable", "sender.divider=").words())
        .isEqualTo("all told apart by a meter");
    assertThat(find("steps-resolvable", "sender.divider=", "sender.tolerance=4.5 %").words())
        .isEqualTo("1 of 10 pairs alike to a meter");
  }

  @Test
  void aDrawnSenderIsAGuess() {
    assertThat(find("sender-fitted").verdict()).isEqualTo(Verdict.WARN);
    assertThat(
            find(
                    "sender-fitted",
                    "sender.steps=",
                    "sender.edges=[9 L = 27 ohm, 15 L = 43 ohm]",
                    "sender.below=10 ohm")
                .verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void withoutASenderThereIsNothingToJudge() {
    for (Rule rule : LevelRules.all()) {
      assertThat(find(rule.id(), "sender="))
          .as("%s judges nothing without a sender, as every rule of this room", rule.id())
          .isNull();
    }
  }

  @Test
  void anOwnLimitCounts() {
    assertThat(find("full-seen", "limits={full-seen: 38 L}").verdict()).isEqualTo(Verdict.PASS);
    assertThat(find("step-under-thirst", "limits={step-under-thirst: 4 L}").verdict())
        .isEqualTo(Verdict.WARN);
  }
}

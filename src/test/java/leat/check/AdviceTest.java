package leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Refused;
import org.junit.jupiter.api.Test;

/**
 * Advice on plans changed at random: every cure that is told is followed on a plan of its own, read
 * afresh; the finding passes then and nothing else newly fails. The share of failing findings that
 * have such advice is printed.
 */
class AdviceTest {
  private static final int PLANS = 500;
  private static final long SEED = 20270410;
  private static final double LEAST = 0.90;
  private static final String[] FILES = {
    "examples/first-tower.yaml",
    "examples/proud-tower.yaml",
    "examples/terrace.yaml",
    "examples/hard-water.yaml",
    "examples/night-rate.yaml",
    "examples/sender-tub.yaml",
    "src/test/resources/plans/rules/battery.yaml"
  };

  /** Keys that are changed, each with values a grower may write. */
  private static final String[][] VALUES = {
    {"pump.shutoff_head", "1.6 m", "2 m", "2.6 m", "3.5 m"},
    {"pump.max_flow", "400 L/h", "700 L/h", "1500 L/h"},
    {"pump.derate", "60 %", "75 %", "95 %"},
    {"towers[0].outlet", "0.9 m", "1.2 m", "1.5 m", "1.8 m", "2.2 m"},
    {"towers[0].riser.bore", "6 mm", "8 mm", "10 mm", "16 mm"},
    {"towers[0].modules[0].count", "3", "8", "11"},
    {"towers[0].base.height", "300 mm", "450 mm", "700 mm"},
    {"towers[0].cap.mass", "20 g", "60 g"},
    {"towers[0].cap.grip", "0 N", "0.5 N"},
    {"towers[0].wanted", "2 L/min", "5 L/min"},
    {"towers[1].outlet", "0.9 m", "1.9 m"},
    {"tank.full", "200 mm", "250 mm", "300 mm", "315 mm"},
    {"tank.low", "45 mm", "60 mm", "120 mm"},
    {"tank.intake", "20 mm", "60 mm"},
    {"tank.rain_area", "0.02 m2", "0.05 m2"},
    {"strainer.diameter", "25 mm", "40 mm"},
    {"strainer.clogged", "80 %", "92 %"},
    {"timing[0].run", "8 s", "20 s", "40 s"},
    {"timing[0].rest", "90 s", "20 min", "45 min", "70 min"},
    {"sender.divider.resistor", "33 ohm", "4.7 kohm"},
    {"sender.tolerance", "3 %", "6 %"},
    {"controller.relay.cycles", "3000", "12000"},
    {"controller.relay.rated", "0.5 A", "3 A"},
    {"backup.capacity", "1 Ah", "4 Ah"},
    {"pump.supply.cable.length", "4 m", "30 m"},
    {"limits", "{reach: 1.3 m}", "{cost-season: 2 EUR}", "{pump-margin: 40 %}"},
    {"target.ec", "0.3 mS/cm", "1.2 mS/cm"},
    {"water.ec", "0.2 mS/cm", "0.9 mS/cm"},
  };

  private static Plan random(Random random) {
    String file = FILES[random.nextInt(FILES.length)];
    while (true) {
      Plan plan = PlanFile.read(file, new File(file), null).read();
      try {
        for (int n = 2 + random.nextInt(3); n > 0; n--) {
          String[] key = VALUES[random.nextInt(VALUES.length)];
          plan = plan.with(key[0], key[1 + random.nextInt(key.length - 1)]);
        }
        Rules.judge(new Subject(plan));
        return plan;
      } catch (Refused e) {
        continue;
      }
    }
  }

  @Test
  void nineOfTenFailingFindingsHaveAdviceThatWorks() {
    Random random = new Random(SEED);
    int fails = 0;
    int cured = 0;
    int warns = 0;
    int warnsCured = 0;
    Map<String, Integer> without = new LinkedHashMap<>();
    for (int i = 0; i < PLANS; i++) {
      Plan plan = random(random);
      Subject subject = new Subject(plan);
      List<Finding> before = Rules.judge(subject);
      Advisor advisor = new Advisor(subject);
      for (Finding finding : before) {
        if (!finding.isBreach()) {
          continue;
        }
        List<Cure> cures = advisor.working(finding);
        cures.forEach(cure -> holds(plan, before, finding, cure));
        boolean works = !cures.isEmpty();
        if (finding.verdict() == Verdict.FAIL) {
          fails++;
          cured += works ? 1 : 0;
          if (!works) {
            without.merge(finding.rule().id(), 1, Integer::sum);
          }
        } else {
          warns++;
          warnsCured += works ? 1 : 0;
        }
      }
    }
    System.out.printf(
        "advice works for %d of %d failing findings (%.1f %%), %d of %d warnings; none for %s%n",
        cured, fails, 100.0 * cured / fails, warnsCured, warns, without);
    assertThat(fails).isGreaterThan(300);
    assertThat(cured).isGreaterThanOrEqualTo((int) Math.ceil(LEAST * fails));
  }

  /** Follows a cure by itself: not by the advisor's own trial. */
  private static void holds(Plan plan, List<Finding> before, Finding finding, Cure cure) {
    Plan followed = plan;
    for (int k = 0; k < cure.keys().size(); k++) {
      followed = followed.with(cure.keys().get(k), cure.values().get(k));
    }
    List<String> newly = new ArrayList<>();
    for (Finding now : Rules.judge(new Subject(followed))) {
      boolean own = now.rule() == finding.rule() && now.part() == finding.part();
      if (own) {
        assertThat(now.verdict()).as(cure.words().render(false)).isEqualTo(Verdict.PASS);
      }
      if (now.verdict() == Verdict.FAIL
          && before.stream()
              .noneMatch(b -> b.rule() == now.rule() && b.verdict() == Verdict.FAIL)) {
        newly.add(now.rule().id());
      }
    }
    assertThat(newly).as(finding.rule().id() + ": " + cure.words().render(false)).isEmpty();
  }
}

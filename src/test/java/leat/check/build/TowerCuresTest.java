package leat.check.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import leat.Sheet;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Subject;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Section;
import leat.plan.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Changes of a tower that rules propose: modules counted by hand, sizes of hose from the sheet,
 * flows by the plan that follows them. North of terrace.yaml: 7 modules of 140 mm under 2 of 160
 * mm, outlet at 1.76 m, top at 1.74 m; south: 6 of 160 mm.
 */
class TowerCuresTest {
  private static final int NORTH = 0;
  private static final int SOUTH = 1;
  private static final double L_MIN = 1 / 60000.0;

  private static Plan plan(String file, String... sets) {
    Plan.Draft draft = PlanFile.read(file, new File("examples/" + file), null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  private static Subject terrace(String... sets) {
    return new Subject(plan("terrace.yaml", sets));
  }

  private static String words(Cure cure) {
    return cure == null ? "none" : cure.words().render(false);
  }

  /** From the top down, and one module is always left of a kind. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.001|towers[0].modules[1].count of 1 (1 module fewer)",
        "0.16|towers[0].modules[1].count of 1 (1 module fewer)",
        "0.161|towers[0].modules[1].count of 1 with towers[0].modules[0].count of 6 (2 modules fewer)",
        "0.30|towers[0].modules[1].count of 1 with towers[0].modules[0].count of 6 (2 modules fewer)",
        "0.301|towers[0].modules[1].count of 1 with towers[0].modules[0].count of 5 (3 modules fewer)",
        "1.00|towers[0].modules[1].count of 1 with towers[0].modules[0].count of 1 (7 modules fewer)",
        "1.001|none",
        "0|none",
      })
  void fewerModules(double lower, String cure) {
    assertThat(words(TowerCures.fewerModules(terrace(), NORTH, lower))).isEqualTo(cure);
  }

  @Test
  void aModuleWithoutOverlapCountsWithItsWholeHeight() {
    Subject subject = terrace("towers[1].modules=[{count: 6, height: 180 mm, diameter: 110 mm}]");
    assertThat(words(TowerCures.fewerModules(subject, SOUTH, 0.18)))
        .isEqualTo("towers[1].modules[0].count of 5 (1 module fewer)");
    assertThat(words(TowerCures.fewerModules(subject, SOUTH, 0.19)))
        .isEqualTo("towers[1].modules[0].count of 4 (2 modules fewer)");
    Subject one = terrace("towers[1].modules=[{height: 180 mm, diameter: 110 mm}]");
    assertThat(words(TowerCures.fewerModules(one, SOUTH, 0.01)))
        .as("a stack of one module stays")
        .isEqualTo("none");
  }

  /** The stack that is left is as low as was asked, and one module more would not be. */
  @Test
  void theStackBecomesLowEnoughAndNoLowerThanByOneModule() {
    Subject subject = terrace();
    double before = ShapeRule.top(RuleOfTowers.towers(subject).get(NORTH));
    for (double lower = 0.01; lower < 1; lower += 0.013) {
      Cure cure = TowerCures.fewerModules(subject, NORTH, lower);
      Section tower = cure.on(subject.plan()).root().sections("towers").get(NORTH);
      double sunk = before - ShapeRule.top(tower);
      assertThat(sunk).isBetween(lower, lower + 0.16);
    }
  }

  @Test
  void anOutletIsLoweredWithTheStackUnderIt() {
    assertThat(words(TowerCures.lowered(terrace(), NORTH, 1.75)))
        .isEqualTo("towers[0].outlet of 1.75 m");
    assertThat(words(TowerCures.lowered(terrace(), NORTH, 1.74)))
        .as("at the very top")
        .isEqualTo("towers[0].outlet of 1.74 m");
    assertThat(words(TowerCures.lowered(terrace(), NORTH, 1.70)))
        .isEqualTo(
            "towers[0].outlet of 1.70 m with towers[0].modules[1].count of 1 (1 module fewer)");
    assertThat(TowerCures.lowered(terrace(), NORTH, 0.70)).as("no stack is so low").isNull();
  }

  @Test
  void aValveIsSetAndAddedWhereThereIsNone() {
    assertThat(words(TowerCures.valveOnly(SOUTH))).isEqualTo("towers[1].riser.valve of ball");
    assertThat(words(TowerCures.valveSet(terrace(), SOUTH, 3 * L_MIN)))
        .isEqualTo("towers[1].wanted of 3.00 L/min");
    assertThat(words(TowerCures.valveSet(terrace("towers[1].riser.valve="), SOUTH, 3 * L_MIN)))
        .isEqualTo("towers[1].riser.valve of ball with towers[1].wanted of 3.00 L/min");
  }

  /** Followed, every other tower takes that share of what it took, and this one more. */
  @Test
  void theOthersAreHeldBackToAShare() {
    Subject subject = terrace("towers[0].riser.valve=", "towers[1].riser.valve=");
    double south = subject.low(SOUTH).flow();
    double north = subject.low(NORTH).flow();
    Cure cure = TowerCures.othersHeldBack(subject, NORTH, 0.6);
    assertThat(cure.keys()).containsExactly("towers[1].riser.valve", "towers[1].wanted");
    Subject after = new Subject(cure.on(subject.plan()));
    assertThat(after.low(SOUTH).flow()).isCloseTo(0.6 * south, within(0.01 * south));
    assertThat(after.low(NORTH).flow()).isGreaterThan(north);
    Subject alone = new Subject(plan("first-tower.yaml"));
    assertThat(TowerCures.othersHeldBack(alone, 0, 0.6)).as("one tower alone").isNull();
  }

  @Test
  void aTowerThatGetsNothingIsNotHeldBack() {
    Subject dry =
        terrace("towers[0].outlet=2.3 m", "towers[0].riser.valve=", "towers[1].riser.valve=");
    assertThat(dry.low(NORTH).flow()).isZero();
    assertThat(TowerCures.othersHeldBack(dry, SOUTH, 0.6)).isNull();
    assertThat(TowerCures.allHeldBack(dry, 0.6).keys())
        .containsExactly("towers[1].riser.valve", "towers[1].wanted");
  }

  /** Shares of what each takes with the tank full: 0.5 of 5 L/min is 2.5 L/min. */
  @Test
  void allAreHeldBackToAShare() {
    Subject subject = terrace();
    Cure cure = TowerCures.allHeldBack(subject, 0.5);
    assertThat(cure.keys()).containsExactly("towers[0].wanted", "towers[1].wanted");
    Plan after = cure.on(subject.plan());
    for (int t = 0; t < 2; t++) {
      double full = subject.full(t).flow();
      double wanted = after.root().sections("towers").get(t).need("wanted");
      assertThat(wanted).isBetween(0.495 * full, 0.5 * full);
    }
  }

  /** Bores of the hoses that are usual, in m, as the sheet lists them. */
  private static List<Double> hoses() {
    List<Double> bores = new ArrayList<>();
    Sheet.of("hydraulics-bores.csv")
        .where(r -> r.text("family").equals("hose") && r.text("usual").equals("yes"))
        .atLeast(7)
        .forEach(r -> bores.add(r.num("bore_mm")));
    return bores;
  }

  private static List<String> bores(Advice advice) {
    List<String> bores = new ArrayList<>();
    for (Cure cure : advice.cures()) {
      assertThat(cure.keys()).containsExactly("towers[1].riser.bore");
      bores.add(cure.values().get(0));
    }
    return bores;
  }

  /** The three next sizes of the sheet, not under what is needed, the narrowest first. */
  @ParameterizedTest
  @CsvSource({"8.1", "10", "10.01", "13", "19", "20", "25", "31.5", "32"})
  void theNextHosesUp(double needed) {
    Advice advice = Advice.none();
    TowerCures.wider(advice, SOUTH, needed / 1000);
    List<String> expected =
        hoses().stream()
            .filter(b -> b >= needed - 0.05)
            .sorted()
            .limit(3)
            .map(TowerCuresTest::typed)
            .toList();
    assertThat(bores(advice)).isEqualTo(expected);
  }

  /** The three next sizes of the sheet, not over what is borne, the widest first. */
  @ParameterizedTest
  @CsvSource({"7.9", "8", "9", "10", "12.6", "16", "18.9", "24.9", "40"})
  void theNextHosesDown(double borne) {
    Advice advice = Advice.none();
    TowerCures.narrower(advice, SOUTH, borne / 1000);
    List<String> expected =
        hoses().stream()
            .filter(b -> b <= borne)
            .sorted((a, b) -> Double.compare(b, a))
            .limit(3)
            .map(TowerCuresTest::typed)
            .toList();
    assertThat(bores(advice)).isEqualTo(expected);
  }

  private static String typed(double millimetres) {
    return (millimetres == Math.rint(millimetres)
            ? String.valueOf((int) millimetres)
            : String.valueOf(millimetres))
        + " mm";
  }
}

package leat.check.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.check.Finding;
import leat.check.Judged;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Refused;
import leat.plan.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Crops in one tank and the target in their band: sets of crops as solution-crops-sets.csv judges
 * them, bounds by hand (lettuce: 1.2 to 1.8 mS/cm, pH 6 to 7).
 */
class BandsTest {
  private static Plan plan(String file, String... sets) {
    Plan.Draft draft = PlanFile.read(file, new File("examples/" + file), null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  private static List<Judged> salts(Rule rule, String... sets) {
    return Judged.by(rule, plan("weighed-salts.yaml", sets));
  }

  private static List<Judged> hard(Rule rule, String... sets) {
    return Judged.by(rule, plan("hard-water.yaml", sets));
  }

  private static String crops(String names) {
    List<String> entries = new ArrayList<>();
    for (String name : names.split(";")) {
      entries.add("{name: " + name.strip() + "}");
    }
    return "crops=[" + String.join(", ", entries) + "]";
  }

  static Stream<Row> sets() {
    return Sheet.of("solution-crops-sets.csv").where(r -> r.text("crops").contains(";")).atLeast(6);
  }

  @ParameterizedTest
  @MethodSource("sets")
  void oneTankSuitsThemAsTheSheetSays(Row r) {
    List<Judged> found = salts(new CropsShare(), crops(r.text("crops")));
    boolean share = Boolean.parseBoolean(r.text("can_share"));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).verdict())
        .as(r.idAndProvenance())
        .isEqualTo(share ? Verdict.PASS : Verdict.WARN);
    if (!share) {
      String[] clashing = r.text("clashing_pairs").split(";")[0].split("\\+");
      assertThat(found.get(0).advice())
          .startsWith(clashing[0] + " and " + clashing[1] + " clash: ");
    }
  }

  @Test
  void howFarTheyAreApart() {
    assertThat(salts(new CropsShare(), crops("tomato; pepper")).get(0).words())
        .isEqualTo("0.20 mS/cm apart");
    assertThat(salts(new CropsShare(), crops("cucumber; lettuce")).get(0).words())
        .isEqualTo("pH 0.50 apart");
    assertThat(salts(new CropsShare(), crops("cucumber; cabbage")).get(0).words())
        .isEqualTo("0.50 mS/cm apart, pH 1.0 apart");
  }

  @Test
  void theSharedBandIsTold() {
    assertThat(salts(new CropsShare(), crops("lettuce; basil")).get(0).words())
        .as("they meet at one pH")
        .isEqualTo("1.2 to 1.6 mS/cm, pH 6.0");
    assertThat(salts(new CropsShare(), crops("lettuce; spinach")).get(0).words())
        .as("and at one EC")
        .isEqualTo("1.8 mS/cm, pH 6.0 to 7.0");
  }

  @Test
  void oneCropSharesWithNobody() {
    assertThat(salts(new CropsShare(), crops("lettuce"))).isEmpty();
    assertThat(salts(new CropsShare(), crops("lettuce; lettuce"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1.199,WARN", "1.2,PASS", "1.8,PASS", "1.801,WARN"})
  void theEcAimedAtInTheBand(double ec, Verdict verdict) {
    Judged finding =
        salts(
                new TargetInBand(),
                crops("lettuce"),
                "target.ec_low=1 mS/cm",
                "target.ec_high=2 mS/cm",
                "target.ec=" + ec + " mS/cm")
            .get(0);
    assertThat(finding.part()).isEqualTo("EC");
    assertThat(finding.verdict()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({"5.99,WARN", "6,PASS", "7,PASS", "7.01,WARN"})
  void thePhAimedAtInTheBand(double ph, Verdict verdict) {
    Judged finding =
        salts(
                new TargetInBand(),
                crops("lettuce"),
                "target.ph_low=5 ",
                "target.ph_high=8",
                "target.ph=" + ph)
            .get(1);
    assertThat(finding.part()).isEqualTo("pH");
    assertThat(finding.verdict()).isEqualTo(verdict);
  }

  /** Cucumber and lettuce share an EC and no pH, tomato and pepper a pH and no EC. */
  @Test
  void onlyTheQuantityThatHasABandIsJudged() {
    List<Judged> ec = salts(new TargetInBand(), crops("cucumber; lettuce"));
    assertThat(ec).extracting(Judged::part).containsExactly("EC");
    List<Judged> ph = salts(new TargetInBand(), crops("tomato; pepper"));
    assertThat(ph).extracting(Judged::part).containsExactly("pH");
    assertThat(salts(new TargetInBand(), crops("lettuce"), "target.ph="))
        .extracting(Judged::part)
        .containsExactly("EC");
  }

  @Test
  void whereATargetLies() {
    Rule rule = new TargetInBand();
    Subject subject = new Subject(plan("weighed-salts.yaml", crops("lettuce")));
    List<Finding> found = rule.measure(subject);
    assertThat(rule.place(found.get(0))).isEqualTo("target.ec");
    assertThat(rule.place(found.get(1))).isEqualTo("target.ph");
    assertThat(rule.words(subject, found.get(1))).isEqualTo("pH 6.20");
    Finding whole = Finding.unknown(rule);
    assertThat(rule.place(whole)).isEqualTo("target");
    assertThat(rule.part(subject, whole)).isNull();
  }

  @Test
  void whatIsMissingIsNamed() {
    for (Rule rule : new Rule[] {new CropsShare(), new TargetInBand()}) {
      assertThatThrownBy(() -> salts(rule, "crops="))
          .isInstanceOf(Refused.class)
          .hasMessageContaining("crops");
      Judged herbs = salts(rule, crops("lettuce; herbs")).get(0);
      assertThat(herbs.verdict()).isEqualTo(Verdict.UNKNOWN);
      assertThat(herbs.advice())
          .isEqualTo("no band is known for herbs: give crops[1].ec_low, ec_high, ph_low, ph_high");
    }
    Judged ec = Judged.find(plan("weighed-salts.yaml", "target.ec="), "target-in-band", null);
    assertThat(ec.advice()).isEqualTo("needs target.ec");
    Judged none = Judged.find(plan("weighed-salts.yaml", "crops="), "crops-share", null);
    assertThat(none.advice()).isEqualTo("needs crops");
  }

  /** Under nothing for feed it fails; half of a mS/cm is enough. */
  @ParameterizedTest
  @CsvSource({"1.0,PASS", "1.01,WARN", "1.49,WARN", "1.5,FAIL", "1.6,FAIL"})
  void roomForFeedOverTheWater(double water, Verdict verdict) {
    assertThat(
            salts(new TargetAboveWater(), "target.ec=1.5 mS/cm", "water.ec=" + water + " mS/cm")
                .get(0)
                .verdict())
        .isEqualTo(verdict);
  }

  /** Full 44.06 L, 4 L/d drunk: a full tank topped up once is 11.01 d. */
  @Test
  void daysBetweenChangesByDaysAndByLitres() {
    double day = 86400;
    double once = 44.0575723041 / 4;
    String byLitres = "season.change={or_added: 100 %}";
    assertThat(hard(new ChangeInterval(), byLitres).get(0).value() / day)
        .isCloseTo(once, within(1e-6));
    assertThat(
            hard(new ChangeInterval(), "season.change={or_added: 100 %, every: 10 d}")
                    .get(0)
                    .value()
                / day)
        .isCloseTo(10, within(1e-9));
    assertThat(
            hard(new ChangeInterval(), "season.change={or_added: 100 %, every: 12 d}")
                    .get(0)
                    .value()
                / day)
        .isCloseTo(once, within(1e-6));
    assertThat(hard(new ChangeInterval(), byLitres, "drinks=0 L/d"))
        .as("nothing is ever topped up")
        .isEmpty();
    Judged still =
        hard(new ChangeInterval(), "season.change={or_added: 100 %, every: 12 d}", "drinks=0 L/d")
            .get(0);
    assertThat(still.value() / day).isCloseTo(12, within(1e-9));
    assertThat(still.verdict()).isEqualTo(Verdict.PASS);
    assertThat(still.finding().hasLimit()).as("no salts come in").isFalse();
    Judged own =
        hard(new ChangeInterval(), "drinks=0 L/d", "limits={change-interval: 14 d}").get(0);
    assertThat(own.limit() / day).isEqualTo(14);
    assertThat(own.verdict()).isEqualTo(Verdict.WARN);
  }

  /** The sooner of the two counts: 3 meq/L of sodium (22.990 g/mol) or 4 of chloride (35.453). */
  @Test
  void theSoonerOfSodiumAndChloride() {
    double day = 86400;
    double once = 44.0575723041 / 4;
    Judged sodium =
        hard(new ChangeInterval(), "water.sodium=40 mg/L", "water.chloride=80 mg/L").get(0);
    assertThat(sodium.limit() / day).isCloseTo((3 * 22.990 / 40 - 1) * once, within(1e-6));
    Judged chloride =
        hard(new ChangeInterval(), "water.sodium=38 mg/L", "water.chloride=80 mg/L").get(0);
    assertThat(chloride.limit() / day).isCloseTo((4 * 35.453 / 80 - 1) * once, within(1e-6));
    Judged alone = hard(new ChangeInterval(), "water.sodium=", "water.chloride=80 mg/L").get(0);
    assertThat(alone.limit()).isEqualTo(chloride.limit());
  }

  @Test
  void partsOfTheStock() {
    String stock =
        "feed.stock={bottle: 1 L, makes: 200 L, coldest: 3 C, grams: {potassium-sulfate: 100 g, calcium-nitrate-4h2o: 180 g}}";
    Rule rule = new PartsCompatible();
    Subject subject = new Subject(plan("hard-water.yaml", stock));
    List<Finding> found = rule.measure(subject);
    assertThat(found)
        .extracting(f -> rule.part(subject, f))
        .containsExactly("bottle 1", "bottle 2", "tank");
    assertThat(found)
        .extracting(rule::place)
        .containsExactly("feed.stock", "feed.stock", "target.ph");
    assertThat(rule.part(subject, Finding.unknown(rule))).isNull();
    assertThat(rule.words(subject, found.get(0))).isEqualTo("clear");
    assertThat(rule.words(subject, found.get(1))).isEqualTo("crystals");
    String one =
        "feed.stock={bottle: 1 L, makes: 200 L, grams: {potassium-sulfate: 20 g, magnesium-sulfate-7h2o: 30 g}}";
    assertThat(hard(rule, one)).as("all salts in one bottle").hasSize(2);
  }

  /** The warmest night keeps more dissolved: with 20 C for 3 C nothing falls out. */
  @Test
  void theColdestNightCounts() {
    String stock =
        "feed.stock={bottle: 1 L, makes: 200 L, coldest: %s, grams: {potassium-sulfate: 90 g, calcium-nitrate-4h2o: 180 g}}";
    assertThat(hard(new PartsCompatible(), String.format(stock, "0 C")).get(1).verdict())
        .isEqualTo(Verdict.FAIL);
    assertThat(hard(new PartsCompatible(), String.format(stock, "25 C")).get(1).verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void metersCheckedOneByOne() {
    Rule rule = new MetersChecked();
    Subject subject =
        new Subject(plan("first-tower.yaml", "meters={ec: {slope: 0.9, checked: 2027-03-20}}"));
    List<Finding> found = rule.measure(subject);
    assertThat(found).extracting(Finding::verdict).containsExactly(Verdict.PASS, Verdict.WARN);
    assertThat(found).extracting(f -> rule.part(subject, f)).containsExactly("EC", "pH");
    assertThat(found).extracting(rule::place).containsExactly("meters.ec", "meters.ph");
    assertThat(rule.words(subject, found.get(0))).isEqualTo("checked 2027-03-20");
    assertThat(rule.words(subject, found.get(1))).isEqualTo("not checked");
  }
}

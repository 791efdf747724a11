package leat.check.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leat.check.Judged;
import leat.check.Rule;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.Source;
import org.junit.jupiter.api.Test;

/** A plan that passes, one that fails by a hair, and the advice, followed, passes. */
class SolutionRulesTest {
  private static List<Judged> judge(Rule rule, String... sets) throws Exception {
    String text =
        new String(
            Files.readAllBytes(Path.of("examples", "hard-water.yaml")), StandardCharsets.UTF_8);
    Plan.Draft draft = Plan.Draft.of(Source.file("hard-water.yaml", text));
    for (String set : sets) {
      int at = set.indexOf('=');
      draft.set(set.substring(0, at), Source.flag("--set", set.substring(at + 1)));
    }
    return Judged.by(rule, draft.read());
  }

  private static Judged one(Rule rule, String... sets) throws Exception {
    List<Judged> found = judge(rule, sets);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void alkalinityOfAWeeksCans() throws Exception {
    Judged acid = one(new WaterAlkalinity());
    assertThat(acid.verdict()).isEqualTo(Verdict.PASS);
    Judged hard = one(new WaterAlkalinity(), "feed.acid=");
    // 14 dH is 14 x 17.85/50.04 meq/L; 28 L a week into 44.06 L.
    assertThat(hard.value()).isCloseTo(14 * 17.85 / 50.04 * 28 / 44.0575723041, within(1e-6));
    assertThat(hard.verdict()).isEqualTo(Verdict.WARN);
    assertThat(hard.advice())
        .contains("climbs towards pH 8.0")
        .startsWith("feed.acid.name of citric, or water.alkalinity of 1.57 meq/L")
        .endsWith("or more in a week");
    assertThat(one(new WaterAlkalinity(), "feed.acid=", "water.alkalinity=1.57 meq/L").verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(one(new WaterAlkalinity(), "feed.acid=", "water.alkalinity=1.58 meq/L").verdict())
        .isEqualTo(Verdict.WARN);
    assertThat(one(new WaterAlkalinity(), "feed.acid=", "drinks=0 L/d").verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void changesBeforeTheTapSaltsBuildUp() throws Exception {
    assertThat(one(new ChangeInterval()).verdict()).isEqualTo(Verdict.PASS);
    // Chloride 80 mg/L reaches 4 x 35.453 after (141.8/80 - 1) x 44.06/4 = 8.5 days.
    Judged salty = one(new ChangeInterval(), "water.chloride=80 mg/L");
    assertThat(salty.verdict()).isEqualTo(Verdict.WARN);
    assertThat(salty.limit() / 86400)
        .isCloseTo((4 * 35.453 / 80 - 1) * 44.0575723041 / 4, within(1e-6));
    assertThat(salty.advice())
        .isEqualTo("season.change.every of 8 d: chloride is at 142 mg/L then");
    assertThat(
            one(new ChangeInterval(), "water.chloride=80 mg/L", "season.change.every=8 d")
                .verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(
            one(new ChangeInterval(), "water.chloride=80 mg/L", "season.change.every=9 d")
                .verdict())
        .isEqualTo(Verdict.WARN);
    Judged byEc = one(new ChangeInterval(), "water.sodium=", "water.chloride=");
    assertThat(byEc.limit() / 86400).isCloseTo((0.8 / 0.31 - 1) * 44.0575723041 / 4, within(1e-6));
    assertThat(one(new ChangeInterval(), "water.sodium=70 mg/L").advice())
        .startsWith("no interval helps");
    assertThat(one(new ChangeInterval(), "drinks=0 L/d").verdict()).isEqualTo(Verdict.PASS);
    assertThat(one(new ChangeInterval(), "season.change={or_added: 50 %}").value() / 86400)
        .isCloseTo(0.5 * 44.0575723041 / 4, within(1e-6));
  }

  @Test
  void bottlesStayClear() throws Exception {
    assertThat(judge(new PartsCompatible())).isEmpty();
    String salts = "grams: {potassium-sulfate: 100 g, calcium-nitrate-4h2o: 180 g}";
    List<Judged> cold =
        judge(
            new PartsCompatible(),
            "feed.stock={bottle: 1 L, makes: 200 L, coldest: 3 C, " + salts + "}");
    assertThat(cold).hasSize(3);
    assertThat(cold.get(0).verdict()).isEqualTo(Verdict.PASS);
    assertThat(cold.get(1).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(cold.get(1).words()).isEqualTo("crystals");
    assertThat(cold.get(1).part()).isEqualTo("bottle 2");
    assertThat(cold.get(1).advice()).isEqualTo("feed.stock.bottle of 1.600 L for the same grams");
    List<Judged> larger =
        judge(
            new PartsCompatible(),
            "feed.stock={bottle: 1.6 L, makes: 200 L, coldest: 3 C, " + salts + "}");
    assertThat(larger.get(1).verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void phosphateSettlesOutWhenThePhClimbs() throws Exception {
    String stock =
        "feed.stock={bottle: 1 L, makes: 200 L, grams: {calcium-nitrate-4h2o: 180 g, monopotassium-phosphate: 27 g}}";
    List<Judged> high = judge(new PartsCompatible(), stock, "target.ph=7.2", "target.ph_high=7.5");
    Judged tank = high.get(high.size() - 1);
    assertThat(tank.part()).isEqualTo("tank");
    assertThat(tank.verdict()).isNotEqualTo(Verdict.PASS);
    String advice = tank.advice();
    assertThat(advice).startsWith("target.ph of ");
    List<Judged> mended =
        judge(
            new PartsCompatible(),
            stock,
            "target.ph=" + advice.substring("target.ph of ".length()));
    assertThat(mended.get(mended.size() - 1).verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void acidsOfAHome() throws Exception {
    assertThat(judge(new AcidHousehold())).as("a solid").isEmpty();
    assertThat(one(new AcidHousehold(), "feed.acid.name=nitric-40").verdict())
        .isEqualTo(Verdict.PASS);
    Judged strong = one(new AcidHousehold(), "feed.acid.name=nitric-40.1");
    assertThat(strong.verdict()).isEqualTo(Verdict.WARN);
    assertThat(strong.advice()).isEqualTo("feed.acid.name of nitric-40");
  }
}

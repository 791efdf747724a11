package leat.check.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leat.check.Cure;
import leat.check.Judged;
import leat.check.Rule;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.Source;
import org.junit.jupiter.api.Test;

/** Each rule of the season: a plan that passes, one that does not, and the advice, followed. */
class SeasonRulesTest {
  /** A tub of 40 L between floor and full, one crop, a climate table of one mild month. */
  private static final String PLAN =
      "site: {latitude: 48 deg, exposure: open, months: [M, M, M, M, M, M, M, M, M, M, M, M]}\n"
              .replace("M", "{tmin: 12 C, tmax: 24 C, rain: 60 mm, rain_days: 6}")
          + "tank: {shape: box, bottom: 500 mm x 400 mm, height: 300 mm, full: 200 mm, low: 60 mm, intake: 20 mm, rim_overflow: 260 mm, rain_area: 0.02 m2}\n"
          + "water: {ec: 0.3 mS/cm}\ntarget: {ec: 1.6 mS/cm, ec_low: 1.2 mS/cm, ec_high: 2.2 mS/cm}\n"
          + "feed: {parts: [{rate: 5 mL/L}], rate_ec: 1.9 mS/cm}\n"
          + "crops: [{name: lettuce, pots: 12, sow: 2027-05-01, growing: 60 d, water: 0.3 L/d}]\n"
          + "season: {from: 2027-05-01, to: 2027-06-29}\n";

  private static Plan plan(String... sets) {
    Plan.Draft draft = Plan.Draft.of(Source.file("plan.yaml", PLAN));
    for (int i = 0; i < sets.length; i += 2) {
      draft.set(sets[i], Source.flag(sets[i], sets[i + 1]));
    }
    return draft.read();
  }

  private static Judged one(Rule rule, String... sets) {
    List<Judged> found = Judged.by(rule, plan(sets));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static void passes(Rule rule, String... sets) {
    assertThat(one(rule, sets).verdict()).isEqualTo(Verdict.PASS);
  }

  private static Judged breaches(Rule rule, Verdict verdict, String... sets) {
    Judged judged = one(rule, sets);
    assertThat(judged.verdict()).isEqualTo(verdict);
    return judged;
  }

  private static void adviceHolds(Rule rule, Judged judged, String... sets) {
    assertThat(judged.cures()).as(judged.advice()).isNotEmpty();
    for (Cure cure : judged.cures()) {
      assertThat(Judged.by(rule, cure.on(plan(sets))))
          .as(cure.words().render(false))
          .extracting(Judged::verdict)
          .containsOnly(Verdict.PASS);
    }
  }

  @Test
  void silentWithoutASeason() {
    for (Rule rule : SeasonRules.all()) {
      assertThat(Judged.by(rule, plan("season", "{}"))).isEmpty();
      assertThat(Judged.by(rule, plan("site.months", "", "crops", ""))).isEmpty();
    }
  }

  @Test
  void dry() {
    Rule rule = new SeasonDry();
    passes(rule);
    String[] never = {"season.refill", "none"};
    Judged dry = breaches(rule, Verdict.FAIL, never);
    assertThat(dry.value()).isGreaterThan(86400);
    adviceHolds(rule, dry, never);
    String[] low = {"tank.low", "21 mm"};
    adviceHolds(rule, breaches(rule, Verdict.FAIL, low), low);
  }

  @Test
  void strength() {
    Rule high = new SeasonEcHigh();
    String[] weakEaters = {"season.uptake", "0.5 mS/cm"};
    passes(high);
    adviceHolds(high, breaches(high, Verdict.FAIL, weakEaters), weakEaters);
    String advice = breaches(high, Verdict.FAIL, weakEaters).cures().get(1).words().render(true);
    assertThat(advice).startsWith("tank.low of ").endsWith(" in");
    Rule low = new SeasonEcLow();
    String[] hungry = {"season.uptake", "2.6 mS/cm"};
    passes(low);
    adviceHolds(low, breaches(low, Verdict.FAIL, hungry), hungry);
  }

  @Test
  void overflow() {
    Rule rule = new SeasonOverflow();
    passes(rule);
    String[] funnel = {"tank.rain_area", "1 m2", "tank.full", "250 mm", "season.refill", "daily"};
    adviceHolds(rule, breaches(rule, Verdict.WARN, funnel), funnel);
    assertThat(Judged.by(rule, plan("tank.rain_area", "1 m2", "site.exposure", "glass")))
        .extracting(Judged::verdict)
        .containsOnly(Verdict.PASS);
  }

  @Test
  void away() {
    Rule rule = new AwayDry();
    assertThat(Judged.by(rule, plan())).isEmpty();
    passes(rule, "season.away", "[{from: 2027-05-10, to: 2027-05-12}]");
    String[] long1 = {"season.away", "[{from: 2027-06-05, to: 2027-06-16}]"};
    Judged dry = breaches(rule, Verdict.WARN, long1);
    adviceHolds(rule, dry, long1);
    assertThat(dry.advice()).contains("a neighbour").doesNotContain("null");
  }

  /** Means of 18 C by day and night; 24 C and -1 C are the limits. */
  @Test
  void warmthAndFrost() {
    String month = "{tmin: %s C, tmax: %s C}";
    passes(new TankWarm());
    assertThat(one(new TankWarm()).value()).isEqualTo(18);
    passes(new TankWarm(), "site.months", months(String.format(month, "18", "30")));
    breaches(
        new TankWarm(), Verdict.WARN, "site.months", months(String.format(month, "18.1", "30")));
    passes(new FrostPipes(), "site.months", months(String.format(month, "-1", "10")));
    String frost = months(String.format(month, "-1.1", "10"));
    breaches(new FrostPipes(), Verdict.WARN, "site.months", frost);
    assertThat(Judged.by(new FrostPipes(), plan("site.months", frost, "site.exposure", "glass")))
        .isEmpty();
  }

  private static String months(String one) {
    return "[" + String.join(", ", java.util.Collections.nCopies(12, one)) + "]";
  }

  @Test
  void aMissingKeyIsUnknownAndABadWeatherFileToo() {
    assertThat(Judged.find(plan("water.ec", ""), "season-dry", null).verdict())
        .isEqualTo(Verdict.UNKNOWN);
    Judged lost = Judged.find(plan("site.weather", "nowhere.csv"), "season-dry", null);
    assertThat(lost.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(lost.advice()).contains("no such weather file");
  }
}

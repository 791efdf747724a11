package leat.check.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leat.check.Cure;
import leat.check.Judged;
import leat.check.Rule;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Source;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/** Each rule of running: a plan that passes and one that fails by a hair; the advice passes. */
class DutyRulesTest {
  private static final String TOWER =
      "currency: EUR\n"
          + "site: {time_zone: Europe/Vienna}\n"
          + "tank: {shape: box, bottom: 540 mm x 360 mm, height: 330 mm, full: 270 mm, low: 90 mm}\n"
          + "pump: {shutoff_head: 2.4 m, max_flow: 1000 L/h, power: 18 W, supply: {mains: 230 V}}\n"
          + "towers: [{riser: {bore: 13 mm, length: 1.5 m, k: 2.5}, outlet: 1.3 m,\n"
          + "  modules: [{name: leaf, count: 6, height: 160 mm, overlap: 20 mm, diameter: 110 mm, wall: 2.4 mm}]}]\n"
          + "controller: {power: 1 W, relay: {rated: 10 A, cycles: 100000}}\n"
          + "tariff: {price: 0.30 EUR/kWh}\n"
          + "season: {from: 2027-04-10, to: 2027-10-15}\n"
          + "backup: {hours: 6 h, battery: 12.8 V, capacity: 10 Ah}\n"
          + "timing: [{run: 90 s, rest: 12 min}]\n";

  private static Plan plan(String... sets) {
    Plan.Draft draft = Plan.Draft.of(Source.file("plan.yaml", TOWER));
    for (int i = 0; i < sets.length; i += 2) {
      draft.set(sets[i], Source.flag(sets[i], sets[i + 1]));
    }
    return draft.read();
  }

  private static List<Judged> judge(Rule rule, String... sets) {
    return Judged.by(rule, plan(sets));
  }

  private static Judged one(Rule rule, String... sets) {
    List<Judged> found = judge(rule, sets);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static void passes(Rule rule, String... sets) {
    Assertions.assertThat(one(rule, sets).verdict()).isEqualTo(Verdict.PASS);
  }

  private static Judged fails(Rule rule, String... sets) {
    Judged finding = one(rule, sets);
    assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
    return finding;
  }

  /** Each cure that is told makes the rule pass. */
  private static void adviceHolds(Rule rule, Judged finding, String... sets) {
    assertThat(finding.cures()).as(finding.advice()).isNotEmpty();
    for (Cure cure : finding.cures()) {
      assertThat(Judged.by(rule, cure.on(plan(sets))))
          .as(cure.words().render(false))
          .extracting(Judged::verdict)
          .containsOnly(Verdict.PASS);
    }
  }

  @Test
  void runCovers() {
    Rule rule = new RunCovers();
    double least = one(rule).limit();
    assertThat(least).isBetween(22.0, 30.0);
    passes(rule, "timing[0].run", least + 0.001 + " s");
    Judged short1 = fails(rule, "timing[0].run", least - 0.001 + " s");
    adviceHolds(rule, short1, "timing[0].run", "5 s");
    assertThat(judge(rule, "timing[0].rest", "0 s")).isEmpty();
    passes(rule, "limits", "{run-covers: 90 s}");
    fails(rule, "limits", "{run-covers: 91 s}");
    assertThat(fails(rule, "pump.derate", "40 %").words()).isEqualTo("no water");
    assertThat(
            judge(
                rule,
                "timing",
                "[{run: 90 s, rest: 12 min}, {run: 5 s, rest: 9 min, months: [7]}]"))
        .extracting(Judged::verdict)
        .containsExactly(Verdict.PASS, Verdict.FAIL);
  }

  @Test
  void rests() {
    Rule day = new RestDay();
    Rule night = new RestNight();
    passes(day, "timing[0].rest", "30 min");
    adviceHolds(day, fails(day, "timing[0].rest", "30.01 min"), "timing[0].rest", "45 min");
    String late =
        "[{run: 90 s, rest: 12 min}, {run: 90 s, rest: 61 min, from: \"22:00\", to: \"06:00\"}]";
    passes(day, "timing", late);
    Judged slept = fails(night, "timing", late);
    assertThat(slept.part()).isEqualTo("timing[1]");
    adviceHolds(night, slept, "timing", late);
    passes(night, "timing", late, "dry_limit", "{night: 61 min}");
    String longDusk =
        "[{run: 90 s, rest: 12 min}, {run: 90 s, rest: 50 min, from: \"21:00\", to: \"06:00\"}]";
    fails(day, "timing", longDusk);
    passes(night, "timing", longDusk);
    passes(day, "timing[0].rest", "40 min", "limits", "{rest-day: 41 min}");
  }

  @Test
  void startsPerHour() {
    Rule rule = new StartsPerHour();
    passes(rule, "timing[0].rest", "90.01 s");
    Judged often = one(rule, "timing[0].rest", "89.9 s");
    assertThat(often.verdict()).isEqualTo(Verdict.WARN);
    adviceHolds(rule, often, "timing[0].rest", "89.9 s");
    fails(rule, "limits", "{starts-per-hour: 4 /h}");
  }

  /** 188.96 days of 106.67 starts: about 20 160 operations. */
  @Test
  void relayLasts() {
    Rule rule = new RelayLasts();
    passes(rule);
    passes(rule, "controller.relay.cycles", "20160");
    adviceHolds(
        rule, fails(rule, "controller.relay.cycles", "20159"), "controller.relay.cycles", "20159");
    Judged burns = fails(rule, "controller.relay.rated", "0.78 A");
    adviceHolds(rule, burns, "controller.relay.rated", "0.5 A");
    assertThat(judge(rule, "controller.relay", "")).isEmpty();
    assertThat(one(rule, "timing[0].rest", "0 s").words()).isEqualTo("never switches");
    Refused asks = Assertions.catchThrowableOfType(Refused.class, () -> judge(rule, "season", ""));
    assertThat(asks.problems().get(0).code()).isEqualTo("missing-key");
  }

  /** 18 W/9 + 1 W = 3 W: 189 days x 0.072 kWh x 0.30 EUR = 4.0824 EUR. */
  @Test
  void costSeason() {
    Rule rule = new CostSeason();
    assertThat(judge(rule)).isEmpty();
    passes(rule, "limits", "{cost-season: 4.083 EUR}");
    Judged dear = fails(rule, "limits", "{cost-season: 4.082 EUR}");
    assertThat(dear.value()).isCloseTo(4.0824, Assertions.within(1e-9));
    adviceHolds(rule, dear, "limits", "{cost-season: 4.082 EUR}");
    Judged half = fails(rule, "limits", "{cost-season: 2 EUR}");
    adviceHolds(rule, half, "limits", "{cost-season: 2 EUR}");
    assertThat(fails(rule, "limits", "{cost-season: 1 EUR}").advice())
        .isEqualTo("no rest is long enough: the controller alone costs more");
    Refused other =
        Assertions.catchThrowableOfType(
            Refused.class, () -> judge(rule, "limits", "{cost-season: 4 CHF}"));
    assertThat(other.getMessage()).contains("this limit is in CHF, the plan's prices in EUR");
  }

  @Test
  void backupHours() {
    Rule rule = new BackupHours();
    passes(rule);
    Judged small = fails(rule, "backup.capacity", "1 Ah");
    adviceHolds(rule, small, "backup.capacity", "1 Ah");
    assertThat(judge(rule, "backup", "")).isEmpty();
  }

  /** Sheet energy-cable.csv CB01: 0.75 mm2 over 5 m loses 3.363 % (electronic pump, inrush 4). */
  @Test
  void cableDrop() {
    Rule rule = new CableDrop();
    assertThat(judge(rule)).isEmpty();
    String cable = "{dc: 12 V, cable: {length: 5 m, section: 0.75 mm2}}";
    passes(rule, "pump.supply", cable);
    assertThat(one(rule, "pump.supply", cable).value())
        .isCloseTo(0.0336310473, Assertions.within(1e-6));
    passes(rule, "pump.supply", cable, "limits", "{cable-drop: 3.37 %}");
    Judged tight = fails(rule, "pump.supply", cable, "limits", "{cable-drop: 3.36 %}");
    adviceHolds(rule, tight, "pump.supply", cable, "limits", "{cable-drop: 3.36 %}");
    String farther = "{dc: 12 V, cable: {length: 10 m, section: 0.75 mm2}}";
    assertThat(one(rule, "pump.supply", farther).verdict()).isEqualTo(Verdict.WARN);
    fails(rule, "pump.supply", "{dc: 12 V, cable: {length: 15 m, section: 0.75 mm2}}");
  }

  @Test
  void aPlanWithoutTimingIsUnknown() {
    Rule[] rules = {new RunCovers(), new RestDay(), new RestNight(), new StartsPerHour()};
    for (Rule rule : rules) {
      Refused asks =
          Assertions.catchThrowableOfType(Refused.class, () -> judge(rule, "timing", ""));
      assertThat(asks.problems().get(0).key()).isEqualTo("timing");
    }
  }
}

package leat.check.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.util.List;
import leat.check.Finding;
import leat.check.Judged;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Source;
import org.junit.jupiter.api.Test;

/** Which of several timings is judged, and what is silent where there is nothing to judge. */
class TimingsTest {
  private static Plan plan(String file, String... sets) {
    File place = new File("examples/" + file);
    if (!place.exists()) {
      place = new File("src/test/resources/plans/rules/" + file);
    }
    Plan.Draft draft = PlanFile.read(file, place, null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  private static List<Judged> first(Rule rule, String... sets) {
    return Judged.by(rule, plan("first-tower.yaml", sets));
  }

  private static final String SEASON = "season={from: 2027-05-01, to: 2027-08-31}";

  /** In July the second entry runs by day; the longest rest counts, the first of two alike. */
  @Test
  void theLongestRestInForce() {
    String july = "timing=[{run: 90 s, rest: %s}, {run: 90 s, rest: %s, months: [7]}]";
    Judged second = first(new RestDay(), String.format(july, "20 min", "31 min"), SEASON).get(0);
    assertThat(second.part()).isEqualTo("timing[1]");
    assertThat(second.value()).isEqualTo(31 * 60);
    assertThat(second.verdict()).isEqualTo(Verdict.FAIL);
    Judged base = first(new RestDay(), String.format(july, "25 min", "20 min"), SEASON).get(0);
    assertThat(base.part()).isEqualTo("timing[0]");
    Judged alike = first(new RestDay(), String.format(july, "25 min", "25 min"), SEASON).get(0);
    assertThat(alike.part()).isEqualTo("timing[0]");
  }

  /** An entry of a month outside the season is never in force, however long it rests. */
  @Test
  void anEntryThatIsNeverInForceIsNotJudged() {
    String january = "timing=[{run: 90 s, rest: 20 min}, {run: 90 s, rest: 5 h, months: [1]}]";
    Judged day = first(new RestDay(), january, SEASON).get(0);
    assertThat(day.part()).isEqualTo("timing[0]");
    assertThat(day.verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void dayAndNightHaveTheirOwnEntries() {
    String split =
        "timing=[{run: 90 s, rest: 12 min}, {run: 60 s, rest: 50 min, from: \"22:00\", to: \"06:00\"}]";
    assertThat(first(new RestDay(), split).get(0).value()).isEqualTo(720);
    assertThat(first(new RestNight(), split).get(0).value()).isEqualTo(3000);
    assertThat(first(new RestDay(), split).get(0).limit()).isEqualTo(30 * 60);
    assertThat(first(new RestNight(), split).get(0).limit()).isEqualTo(60 * 60);
    assertThat(first(new RestNight(), split, "dry_limit={night: 40 min}").get(0).verdict())
        .isEqualTo(Verdict.FAIL);
  }

  /** 3600/(60 + 120) is 20 starts an hour, 3600/(30 + 120) is 24. */
  @Test
  void theBusiestTimingCounts() {
    String three =
        "timing=[{run: 60 s, rest: 2 min}, {run: 30 s, rest: 2 min, months: [7]}, {run: 90 s, rest: 2 min, months: [8]}]";
    Judged busiest = first(new StartsPerHour(), three).get(0);
    assertThat(busiest.part()).isEqualTo("timing[1]");
    assertThat(busiest.value() * 3600).isCloseTo(24, within(1e-9));
    assertThat(busiest.verdict()).isEqualTo(Verdict.WARN);
    Judged usual = first(new StartsPerHour(), "timing=[{run: 60 s, rest: 2 min}]").get(0);
    assertThat(usual.value() * 3600).isCloseTo(20, within(1e-9));
    assertThat(usual.verdict()).isEqualTo(Verdict.PASS);
    assertThat(usual.part()).as("alone").isNull();
  }

  @Test
  void whereATimingLies() {
    Rule rule = new StartsPerHour();
    Subject subject = new Subject(plan("terrace.yaml"));
    Finding found = rule.measure(subject).get(0);
    assertThat(rule.place(found)).isEqualTo("timing[" + found.part() + "]");
    Finding whole = Finding.unknown(rule);
    assertThat(rule.place(whole)).isEqualTo("timing");
    assertThat(rule.part(subject, whole)).isNull();
  }

  /** A dry tower has no run that wets it: one finding of the whole, with the tower's name. */
  @Test
  void aDryTowerIsNamed() {
    Plan dry =
        plan(
            "terrace.yaml",
            "towers[0].outlet=2.3 m",
            "towers[0].riser.valve=",
            "towers[1].riser.valve=");
    List<Judged> found = Judged.by(new RunCovers(), dry);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).words()).isEqualTo("no water");
    assertThat(Judged.find(dry, "run-covers", null).advice())
        .isEqualTo(Judged.find(dry, "tower-fed", "north").advice())
        .startsWith("towers[1].riser.valve of ball with towers[1].wanted of ");
    Judged high =
        first(new RunCovers(), "towers[0].outlet=2.9 m", "limits={pump-margin: none, reach: none}")
            .get(0);
    assertThat(high.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(high.advice()).startsWith("pump.shutoff_head of ");
  }

  /** On the mains, or without a cable told, there is no drop to judge. */
  @Test
  void aCableIsJudgedWhereThereIsOne() {
    assertThat(first(new CableDrop())).isEmpty();
    assertThat(first(new CableDrop(), "pump.supply={dc: 12 V}")).isEmpty();
    assertThat(
            first(
                new CableDrop(), "pump.supply={dc: 12 V, cable: {length: 5 m, section: 0.75 mm2}}"))
        .hasSize(1);
  }

  @Test
  void aRelayThatNeverSwitchesAndOneThatIsOverloaded() {
    Judged never =
        Judged.by(new RelayLasts(), plan("battery.yaml", "timing=[{run: 90 s, rest: 0 s}]")).get(0);
    assertThat(never.words()).isEqualTo("never switches");
    assertThat(never.verdict()).isEqualTo(Verdict.PASS);
    Judged burns =
        Judged.by(new RelayLasts(), plan("battery.yaml", "controller.relay.rated=0.5 A")).get(0);
    assertThat(burns.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(burns.words()).matches("[0-9.]+ A at the start");
    Judged own =
        Judged.by(new RelayLasts(), plan("battery.yaml", "limits={relay-life: 2000 d}")).get(0);
    assertThat(own.limit()).isEqualTo(2000 * 86400.0);
  }
}

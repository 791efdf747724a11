package leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Source;
import org.junit.jupiter.api.Test;

/** What the rules are told of a plan: its pump as measured, its valves open and set, its wind. */
class SubjectTest {
  private static final double L_MIN = 1 / 60000.0;

  private static Plan plan(String file, String... sets) {
    Plan.Draft draft = PlanFile.read(file, new File("examples/" + file), null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  /**
   * A bucket was filled through the riser of 13 mm. A cure that proposes another riser believes the
   * pump as it was measured then, and does not take the bucket for one filled through the new
   * riser.
   */
  @Test
  void aMeasuredPumpIsBelievedOnTheTowerAsWritten() {
    Subject written = new Subject(plan("first-tower.yaml"));
    assertThat(written.believedSoFar()).as("nobody has asked").isNull();
    double share = written.believed().share();
    assertThat(written.believedSoFar()).isSameAs(written.believed());
    Plan narrow = plan("first-tower.yaml", "towers[0].riser.bore=8 mm");
    assertThat(new Subject(narrow, written.believedSoFar()).believed().share()).isEqualTo(share);
    assertThat(new Subject(narrow).believed().share()).isEqualTo(share);
    Subject design = new Designs(plan("first-tower.yaml"), "towers[0].riser.bore").with(0.008);
    assertThat(design.believed().share()).isCloseTo(share, within(1e-12));
  }

  /** Both valves of the terrace are set to 4 L/min at the refill mark; open they let more by. */
  @Test
  void valvesOpenAndSet() {
    Subject terrace = new Subject(plan("terrace.yaml"));
    assertThat(terrace.low(0).flow()).isCloseTo(4 * L_MIN, within(1e-9));
    assertThat(terrace.low(1).flow()).isCloseTo(4 * L_MIN, within(1e-9));
    double open = terrace.openLow(0).flow() + terrace.openLow(1).flow();
    assertThat(open).isGreaterThan(10 * L_MIN);
    double openFull = terrace.openFull(0).flow() + terrace.openFull(1).flow();
    assertThat(openFull).as("a full tank lifts less").isGreaterThan(open);
    assertThat(openFull).isGreaterThan(terrace.full(0).flow() + terrace.full(1).flow());
  }

  @Test
  void withoutValvesOpenAndSetAreTheSame() {
    Subject first = new Subject(plan("first-tower.yaml"));
    assertThat(first.openLow(0).flow()).isEqualTo(first.low(0).flow());
    assertThat(first.openFull(0).flow()).isEqualTo(first.full(0).flow());
    assertThat(first.full(0).flow()).isGreaterThan(first.low(0).flow());
  }

  /** A gust of 14 m/s as it is: half of 1.2 kg/m3 times 196 m2/s2. */
  @Test
  void pressureOfTheGust() {
    Subject stacked = new Subject(plan("stacked.yaml", "site.air_density=1.2 kg/m3"));
    assertThat(stacked.airDensity()).isEqualTo(1.2);
    assertThat(stacked.windPressure()).isCloseTo(0.5 * 1.2 * 14 * 14, within(1e-9));
  }

  /** Of ten days 16 hours each lie between 06:00 and 22:00, in which the first timing runs. */
  @Test
  void secondsByDayAndAtNight() {
    Subject terrace =
        new Subject(plan("terrace.yaml", "season={from: 2027-05-01, to: 2027-05-10}"));
    double day = 10 * 16 * 3600;
    double night = 10 * 8 * 3600;
    assertThat(terrace.dayAndNight().seconds(0, 0)).isCloseTo(day, within(1e-6));
    assertThat(terrace.dayAndNight().seconds(0, 1)).isZero();
    assertThat(terrace.dayAndNight().seconds(1, 0)).isZero();
    assertThat(terrace.dayAndNight().seconds(1, 1)).isCloseTo(night, within(1e-6));
  }

  /** "none" switches a rule off, a number is its limit, and other rules keep their own. */
  @Test
  void limitsOfThePlan() {
    Subject subject =
        new Subject(plan("first-tower.yaml", "limits={no-siphon: none, reach: 1.7 m}"));
    assertThat(subject.isOff(Rules.find("no-siphon"))).isTrue();
    assertThat(subject.isOff(Rules.find("reach"))).isFalse();
    assertThat(subject.isOff(Rules.find("freeboard"))).isFalse();
    assertThat(subject.ownLimit(Rules.find("reach"))).isEqualTo(1.7);
    assertThat(subject.ownLimit(Rules.find("freeboard"))).isNull();
    Rule strainer = Rules.find("strainer-head");
    assertThat(subject.limitOr(strainer, subject.section("strainer"), "freeboard"))
        .isEqualTo(0.020);
    Subject own = new Subject(plan("first-tower.yaml", "limits={strainer-head: 12 mm}"));
    assertThat(own.limitOr(strainer, own.section("strainer"), "freeboard")).isEqualTo(0.012);
  }
}

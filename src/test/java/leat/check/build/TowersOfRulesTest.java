package leat.check.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.util.List;
import leat.check.Finding;
import leat.check.Judged;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Refused;
import leat.plan.Source;
import org.junit.jupiter.api.Test;

/** Findings tower by tower: whose they are, where they lie, what is lacking, and their values. */
class TowersOfRulesTest {
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

  private static Judged find(String rule, String part, String file, String... sets) {
    return Judged.find(plan(file, sets), rule, part);
  }

  @Test
  void aFindingNamesItsTowerAndItsPlace() {
    Subject subject = new Subject(plan("terrace.yaml", "towers[1].name="));
    Rule rule = Rules.find("reach");
    List<Finding> found = rule.measure(subject);
    assertThat(found).hasSize(2);
    assertThat(rule.place(found.get(1))).isEqualTo("towers[1]");
    assertThat(rule.tower(subject, found.get(0))).isEqualTo("north");
    assertThat(rule.tower(subject, found.get(1))).as("without a name").isEqualTo("tower 2");
    assertThat(rule.part(subject, found.get(1))).isEqualTo("tower 2");
    Finding whole = Finding.unknown(rule);
    assertThat(rule.place(whole)).isEqualTo("towers");
    assertThat(rule.tower(subject, whole)).isNull();
    assertThat(rule.part(subject, whole)).isNull();
  }

  @Test
  void aTowerAloneIsNoPart() {
    Subject subject = new Subject(plan("first-tower.yaml"));
    Rule rule = Rules.find("reach");
    Finding only = rule.measure(subject).get(0);
    assertThat(rule.part(subject, only)).isNull();
    assertThat(rule.tower(subject, only)).isEqualTo("balcony");
  }

  @Test
  void withoutTowersTheKeyIsNamed() {
    assertThatThrownBy(
            () -> Rules.find("reach").measure(new Subject(plan("first-tower.yaml", "towers="))))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("towers");
    assertThat(find("reach", null, "first-tower.yaml", "towers=").advice())
        .isEqualTo("needs towers");
  }

  @Test
  void eachLackingKeyIsNamedAsItIsSet() {
    assertThat(
            find(
                    "outlet-over-top",
                    null,
                    "first-tower.yaml",
                    "towers[0].base=",
                    "towers[0].outlet=")
                .advice())
        .isEqualTo("needs towers[0].outlet and towers[0].base.height");
    assertThat(find("reach", "south", "terrace.yaml", "towers[1].modules=").advice())
        .isEqualTo("needs towers[1].modules");
    assertThat(find("no-siphon", null, "first-tower.yaml", "towers[0].outlet=").advice())
        .isEqualTo("needs towers[0].outlet");
    assertThat(
            find(
                    "reach",
                    null,
                    "first-tower.yaml",
                    "towers[0].base=",
                    "towers[0].modules=[{count: 6}]")
                .advice())
        .isEqualTo("needs towers[0].base.height and towers[0].modules[0].height");
  }

  /** A limit of a rule that may be 0 stands at 0 and is refused below. */
  @Test
  void limitsOfNoughtAreKept() {
    assertThat(find("no-siphon", null, "first-tower.yaml", "limits={no-siphon: 0 m}").verdict())
        .isEqualTo(Verdict.PASS);
    Judged fed = find("tower-fed", "north", "terrace.yaml", "limits={tower-fed: 0 L/min}");
    assertThat(fed.verdict()).isEqualTo(Verdict.PASS);
    Judged less = find("tower-fed", null, "terrace.yaml", "limits={tower-fed: -1 L/min}");
    assertThat(less.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(less.advice()).endsWith("a limit of 0 or more is needed");
    Judged below = find("no-siphon", null, "first-tower.yaml", "limits={no-siphon: -1 mm}");
    assertThat(below.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(below.advice()).endsWith("a limit of 0 or more is needed");
  }

  /** As much as is asked for is not more than it. */
  @Test
  void aTowerFedIsFedMoreThanTheLimit() {
    assertThat(
            find("tower-fed", "north", "terrace.yaml", "limits={tower-fed: 3.99 L/min}").verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(
            find("tower-fed", "north", "terrace.yaml", "limits={tower-fed: 4.01 L/min}").verdict())
        .isEqualTo(Verdict.FAIL);
  }

  /**
   * 50 mm pots on a module of 110 mm: the socket circle's chord between 4 is 110 sin 45 deg = 77.78
   * mm, 27.78 mm between rims; the tightest module counts, wherever it stands.
   */
  @Test
  void theTightestModuleCounts() {
    double chord4 = 0.110 * Math.sin(Math.PI / 4);
    double chord3 = 0.110 * Math.sin(Math.PI / 3);
    assertThat(find("pots-fit", "north", "terrace.yaml").value())
        .isCloseTo(chord3 - 0.075, within(1e-9));
    assertThat(find("pots-fit", "north", "terrace.yaml", "towers[0].modules[0].pots=5").value())
        .isCloseTo(0.110 * Math.sin(Math.PI / 5) - 0.050, within(1e-9));
    assertThat(find("pots-fit", "north", "terrace.yaml", "towers[0].modules[1].pots=0").value())
        .as("a module without pots is passed over")
        .isCloseTo(chord4 - 0.050, within(1e-9));
    assertThat(find("pots-fit", "north", "terrace.yaml", "towers[0].modules[1].pot=").value())
        .isCloseTo(chord4 - 0.050, within(1e-9));
    assertThat(find("pots-fit", "south", "terrace.yaml", "towers[1].modules[0].pots=")).isNull();
  }

  /** Turned by 45 deg under 4 pots, every second module has pots in line: two steps of 140 mm. */
  @Test
  void potsInOneLineAreSoFarApart() {
    assertThat(find("same-column-spacing", null, "stacked.yaml").value())
        .isCloseTo(0.28, within(1e-9));
    assertThat(
            find("same-column-spacing", null, "stacked.yaml", "towers[0].modules[0].turn=0 deg")
                .value())
        .isCloseTo(0.14, within(1e-9));
    String[] lacks = {"towers[0].modules[0].turn=", "towers[0].modules[1].turn="};
    for (String lack : lacks) {
      assertThat(find("same-column-spacing", "north", "terrace.yaml", lack))
          .as(lack + ": nobody knows how they are turned")
          .isNull();
    }
    assertThat(find("same-column-spacing", "north", "terrace.yaml", "towers[0].base=")).isNull();
    assertThat(find("same-column-spacing", "south", "terrace.yaml", "towers[0].base=")).isNotNull();
  }

  /** 6.32 L/min come where 4 are wanted: 58 % more, and nothing is too much where less comes. */
  @Test
  void whatIsMoreThanWanted() {
    Subject subject = new Subject(plan("first-tower.yaml"));
    double flow = subject.low(0).flow();
    assertThat(find("valve-needed", null, "first-tower.yaml").value())
        .isCloseTo(flow * 60000 / 4 - 1, within(1e-9));
    assertThat(find("valve-needed", null, "first-tower.yaml", "towers[0].wanted=9 L/min").value())
        .isZero();
  }

  /** The head at no flow and the very lift as limit: water stands at the outlet, none runs. */
  @Test
  void theVeryTopIsNotReached() {
    Judged reaches = find("reaches-top", null, "first-tower.yaml");
    double lift = 1.30 - 0.09;
    assertThat(reaches.limit()).isCloseTo(lift, within(1e-9));
    assertThat(reaches.verdict()).isEqualTo(Verdict.PASS);
    Judged level =
        find(
            "reaches-top",
            null,
            "first-tower.yaml",
            "pump={shutoff_head: 1.21 m, max_flow: 1000 L/h, derate: 100 %}");
    assertThat(level.value()).isCloseTo(lift, within(1e-9));
    assertThat(level.verdict()).isEqualTo(Verdict.FAIL);
  }

  @Test
  void aGuessedShareOfHeadIsNamedAndAMeasuredOneToo() {
    assertThat(find("pump-measured", null, "first-tower.yaml").words()).isEqualTo("measured");
    Judged over =
        find("pump-measured", null, "first-tower.yaml", "pump.measured=12 L/min @ 250 mm");
    assertThat(over.words()).isEqualTo("over-100");
    Judged beyond =
        find("pump-measured", null, "first-tower.yaml", "pump.measured=30 L/min @ 250 mm");
    assertThat(beyond.words()).isEqualTo("beyond-curve");
  }

  @Test
  void linesToTheTankAreToldFromLinesToTheGround() {
    Judged ground = find("guy-anchor", null, "roof.yaml");
    assertThat(ground.verdict()).isEqualTo(Verdict.PASS);
    assertThat(ground.words()).isEqualTo("to the ground");
    Judged tank = find("guy-anchor", null, "roof.yaml", "towers[0].guys.anchor=tank");
    assertThat(tank.verdict()).isEqualTo(Verdict.WARN);
    assertThat(tank.words()).isEqualTo("to the tank");
    assertThat(find("guy-anchor", null, "stacked.yaml")).as("without lines").isNull();
  }

  /** In still air nothing is judged; a tower held by its lid or by lines does not leave it. */
  @Test
  void windRulesAskForAWind() {
    for (String rule : new String[] {"wind-tip", "wind-slide", "wind-lid", "wind-joint"}) {
      assertThat(find(rule, null, "stacked.yaml")).as(rule).isNotNull();
      assertThat(find(rule, null, "stacked.yaml", "site.wind=")).as(rule).isNull();
    }
    assertThat(find("wind-lid", null, "stacked.yaml", "towers[0].fastened=true")).isNull();
    assertThat(find("wind-lid", null, "stacked.yaml", "tank.full=250 mm", "tank.low=90 mm"))
        .isNotNull();
    String lines = "towers[0].guys={lines: 3, ring: 84 cm, run: 123 cm, anchor: tank}";
    assertThat(find("wind-lid", null, "stacked.yaml", lines)).isNull();
  }

  /** Heavy plants hold the tower down until they are young again; wide light ones catch wind. */
  @Test
  void theLidIsJudgedInTheWorseState() {
    double young = find("wind-lid", null, "stacked.yaml").value();
    assertThat(
            find("wind-lid", null, "stacked.yaml", "towers[0].grown={mass: 900 g, width: 150 mm}")
                .value())
        .isEqualTo(young);
    assertThat(
            find("wind-lid", null, "stacked.yaml", "towers[0].grown={mass: 1 g, width: 900 mm}")
                .value())
        .isLessThan(0.5 * young);
  }

  /** What the running towers keep comes back when the pump stops, and a downpour on the lid too. */
  @Test
  void whatComesBackNeedsRoom() {
    double dry = find("freeboard", null, "terrace.yaml", "tank.rain_area=0 m2").value();
    double rain = find("freeboard", null, "terrace.yaml").value();
    // 50 mm of rain on 0.03 m2 are 1.5 L; the tub is 612 mm x 432 mm at 345 mm, less its corners
    double area = 0.612 * 0.432;
    assertThat(dry - rain).isCloseTo(0.050 * 0.03 / area, within(0.0003));
    double valve = find("freeboard", null, "terrace.yaml", "pump.check_valve=true").value();
    assertThat(valve).as("the risers stay full").isGreaterThan(rain);
  }

  /** What the running towers hold is missing over the intake. */
  @Test
  void theRunningTowersDrawTheLevelDown() {
    double covered = find("intake-covered", null, "terrace.yaml").value();
    assertThat(covered).isLessThan(0.110 - 0.045 - 0.008).isGreaterThan(0.110 - 0.045 - 0.020);
  }

  /** A base may sink as far as the full tank's water, 270 mm, and never under its floor. */
  @Test
  void aLowerBaseStaysOutOfTheWater() {
    Subject subject = new Subject(plan("first-tower.yaml"));
    assertThat(Reach.lowerBase(subject, 0, 0.5, 0.2).words().render(false))
        .isEqualTo("towers[0].base.height of 0.300 m");
    assertThat(Reach.lowerBase(subject, 0, 0.540, 0.270).words().render(false))
        .isEqualTo("towers[0].base.height of 0.270 m");
    assertThat(Reach.lowerBase(subject, 0, 0.5, 0.231)).isNull();
    Subject dry = new Subject(plan("first-tower.yaml", "tank.full="));
    assertThat(Reach.lowerBase(dry, 0, 0.5, 0.4).words().render(false))
        .isEqualTo("towers[0].base.height of 0.100 m");
    assertThat(Reach.lowerBase(dry, 0, 0.5, 0.5)).isNull();
    assertThat(Reach.lowerBase(dry, 0, 0.5, 0.6)).isNull();
  }
}

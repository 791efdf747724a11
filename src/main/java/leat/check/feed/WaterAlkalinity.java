package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.numeric.Impossible;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.acid.Acid;
import leat.solution.acid.AcidNeed;
import leat.solution.acid.AcidPour;
import leat.solution.acid.Carbonate;
import leat.system.AcidOf;
import leat.system.DrinksOf;

/**
 * The alkalinity that a week of topping up brings into the tank, less what the plan's acid takes
 * away.
 */
final class WaterAlkalinity extends DeclaredRule {
  private static final double DAYS = 7;

  WaterAlkalinity() {
    super(
        "water-alkalinity",
        AT_MOST,
        Show.MEQ_L,
        1.0,
        PRACTICE,
        "water.alkalinity water.ph drinks crops tank.full target.ph feed.acid.name",
        "Alkalinity that a week of topping up leaves in each litre of the tank. It lifts the pH with every can, until iron and phosphate are locked away. An acid in the plan is counted.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    try {
      return judged(subject);
    } catch (Impossible e) {
      return List.of(
          Finding.unknown(this, Phrase.of("water." + e.quantity() + ": " + e.getMessage())));
    }
  }

  private List<Finding> judged(Subject subject) {
    Section water = subject.section("water");
    double alkalinity = water.need("alkalinity");
    Section tank = subject.section("tank");
    double full = Units.L.fromBase(subject.tank().volume(tank.need("full")));
    double added = DAYS * Units.L_D.fromBase(DrinksOf.perSecond(subject.plan()));
    Section acid = subject.section("feed").section("acid");
    double celsius = water.getOr("temperature", Carbonate.USUAL_CELSIUS, "water 20 C");
    double poured =
        acid.has("name") ? left(subject, alkalinity, celsius, AcidOf.of(acid)) : alkalinity;
    double value = AcidPour.alkalinityAfterTopups(full, 0, added, poured);
    double limit = limit(subject);
    Phrase advice =
        Phrase.of("left alone it climbs towards pH ")
            .number(Carbonate.at(celsius).openPh(value, Carbonate.STUFFY_AIR_PPM), 2)
            .add(" or more in a week; ");
    if (added > 0
        && !acid.has("name")
        && citricHelps(subject, alkalinity, celsius, limit * full / added)) {
      advice.add("feed.acid of {name: citric}; or ");
    }
    double most =
        poured <= 0 || added <= 0 ? alkalinity : limit * full / added * (alkalinity / poured);
    advice.add("rain in the can, down to water.alkalinity ");
    advice.number(Math.floor(10 * most) / 10, 3).add(" meq/L");
    return List.of(atMost(value, limit, Verdict.WARN, advice));
  }

  /** Alkalinity that the acid leaves in the water poured, at the pH aimed at, meq/L. */
  private static double left(Subject subject, double alkalinity, double celsius, Acid acid) {
    double ph = subject.section("water").need("ph");
    double to = subject.section("target").need("ph");
    return Math.max(0, AcidNeed.of(1, alkalinity, ph, to, celsius, acid).leftMeqL());
  }

  private static boolean citricHelps(
      Subject subject, double alkalinity, double celsius, double mostMeqL) {
    return subject.section("water").has("ph")
        && subject.section("target").has("ph")
        && left(subject, alkalinity, celsius, Acid.solid(Acid.Kind.CITRIC)) <= mostMeqL;
  }
}

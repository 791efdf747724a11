package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
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
  private static final double LIMIT = 1.0;
  private static final String KEY = "water.alkalinity";

  WaterAlkalinity() {
    super(
        "water-alkalinity",
        AT_MOST,
        Show.MEQ_L,
        LIMIT,
        PRACTICE,
        "water.alkalinity water.ph water.temperature target.ph feed.acid.name tank.full"
            + ReadKeys.DRINKS
            + ReadKeys.TANK,
        "Alkalinity that a week of topping up leaves in each litre of the tank. It lifts the pH with every can, until iron and phosphate are locked away. An acid in the plan is counted.");
  }

  private static double full(Subject subject) {
    return Units.L.fromBase(subject.tank().volume(subject.section("tank").need("full")));
  }

  private static double added(Subject subject) {
    return DAYS * Units.L_D.fromBase(DrinksOf.perSecond(subject.plan()));
  }

  private static double celsius(Subject subject) {
    return subject
        .section("water")
        .getOr("temperature", Carbonate.USUAL_CELSIUS, "water 20 C", subject.taken());
  }

  /** Alkalinity in the water as it is poured, meq/L. */
  private static double poured(Subject subject) {
    double alkalinity = subject.section("water").need("alkalinity");
    Section acid = subject.section("feed").section("acid");
    return acid.has("name") ? left(subject, alkalinity, AcidOf.of(acid)) : alkalinity;
  }

  /** Alkalinity that an acid leaves in the water poured, at the pH aimed at, meq/L. */
  private static double left(Subject subject, double alkalinity, Acid acid) {
    double ph = subject.section("water").need("ph");
    double to = subject.section("target").need("ph");
    return Math.max(0, AcidNeed.of(1, alkalinity, ph, to, celsius(subject), acid).leftMeqL());
  }

  @Override
  public List<Finding> measure(Subject subject) {
    double poured = poured(subject);
    double value = AcidPour.alkalinityAfterTopups(full(subject), 0, added(subject), poured);
    return List.of(atMost(value, limit(subject), Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double alkalinity = subject.section("water").need("alkalinity");
    double climbs =
        Carbonate.at(celsius(subject)).openPh(finding.value(), Carbonate.STUFFY_AIR_PPM);
    double most = alkalinity * finding.limit() / finding.value();
    Advice advice =
        Advice.none()
            .also("rain in the can")
            .note(
                Phrase.of("left alone it climbs towards pH ")
                    .number(climbs, 2)
                    .add(" or more in a week"));
    if (!subject.section("feed").section("acid").has("name")) {
      advice.cure(Cure.typed("feed.acid.name", Acid.Kind.CITRIC.word));
    }
    return advice.cure(Cure.atMost(KEY, most, Show.MEQ_L.digits(3)));
  }
}

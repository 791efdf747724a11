package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.solution.Oxygen;

/** The tank's warmest water can hold enough oxygen. */
public final class OxygenFits extends DeclaredRule {
  /** A tank seldom holds more than half of what fits in. */
  private static final double USUAL = 2 * Oxygen.ROOTS_LOW_MG_L;

  public OxygenFits() {
    super(
        "oxygen",
        AT_LEAST,
        Show.MG_L,
        USUAL,
        "twice the 4 mg/L that roots want: common practice; saturation: Benson and Krause 1984",
        "tank.warmest site.altitude",
        "Oxygen that fits into the tank's warmest water at the place's altitude. Warm water holds less while roots and microbes use more: root rot begins there.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    double warmest = subject.section("tank").need("warmest");
    double altitude = subject.section("site").getOr("altitude", 0, "at sea level");
    double kpa = Oxygen.pressureKpa(altitude);
    double limit = limit(subject);
    Phrase advice = Phrase.of("shade, a white wall, a deeper tub: ");
    Mends.atMost(advice, "tank.warmest", Oxygen.celsiusHolding(limit, kpa), Show.C);
    return List.of(atLeast(Oxygen.saturationMgL(warmest, kpa), limit, Verdict.WARN, advice));
  }
}

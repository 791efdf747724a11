package leat.check.feed;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.solution.Oxygen;

/** The tank's warmest water can hold enough oxygen. */
final class OxygenFits extends DeclaredRule {
  OxygenFits() {
    super(
        "oxygen",
        AT_LEAST,
        Show.MG_L,
        null,
        "what roots need, 4 mg/L up to 20 C, doubled for each 10 K above: common practice; saturation: Benson and Krause 1984",
        "tank.warmest site.altitude",
        "Oxygen that fits into the tank's warmest water at the place's altitude. Warm water holds less while roots and microbes use more: root rot begins there.");
  }

  private static double pressureKpa(Subject subject) {
    return Oxygen.pressureKpa(
        subject.section("site").getOr("altitude", 0, "at sea level", subject.taken()));
  }

  @Override
  public List<Finding> measure(Subject subject) {
    double warmest = subject.section("tank").need("warmest");
    double holds = Oxygen.saturationMgL(warmest, pressureKpa(subject));
    return List.of(atLeast(holds, limitOr(subject, Oxygen.rootsNeedMgL(warmest)), Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double kpa = pressureKpa(subject);
    double celsius =
        subject.ownLimit(this) != null
            ? Oxygen.celsiusHolding(finding.limit(), kpa)
            : Oxygen.celsiusEnough(kpa);
    return Advice.none()
        .also("shade, a white wall, a deeper tub")
        .cure(Cure.atMost("tank.warmest", celsius, Show.C));
  }
}

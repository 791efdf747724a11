package leat.check.build;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.stability.Equilibrium;
import leat.stability.Situation;
import leat.system.StandingOf;

/** Tank and towers do not slide in the site's wind. */
final class WindSlide extends DeclaredRule {
  WindSlide() {
    super(
        "wind-slide",
        AT_LEAST,
        WindTip.BARE,
        Equilibrium.LEAST_SAFETY,
        "EN 1990 table A1.2(A): 1.5 on wind, 0.9 on weight",
        StandingRule.READS,
        "What keeps the foot in its place, over the force of the site's gust, in the worse state and from the worse side: friction, and lines to the ground. Lines high up hold the tower upright; the foot must hold by friction what they leave.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("site").section("wind").isGiven()) {
      return List.of();
    }
    StandingOf standing = subject.standing();
    Double safety = standing.slideSafety(subject.windPressure());
    if (safety == null) {
      return List.of();
    }
    return List.of(atLeast(safety, limit(subject), Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    StandingOf standing = subject.standing();
    double pressure = subject.windPressure();
    double friction = standing.frictionNotToSlide(pressure);
    Advice advice =
        Advice.of(
            standing.heldByLines()
                ? "a foot that grips, or a stop on the ground against it"
                : "more mass, or a foot that grips");
    if (friction <= GRIPS) {
      advice.cure(Cure.typed("tank.ground", "anti-slip-mat"));
    }
    if (standing.heldByLines()) {
      return advice; // more weight leaves less to the lines, so it hardly helps
    }
    Situation lightest = standing.slidesFirst(pressure);
    double more = standing.assembly().massNotToSlide(lightest, pressure);
    return advice.cure(
        Cure.atLeast("tank.mass", subject.section("tank").need("mass") + more, Show.KG));
  }

  private static final double GRIPS = leat.stability.Ground.friction("anti-slip-mat");
}

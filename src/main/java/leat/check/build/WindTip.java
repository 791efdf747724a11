package leat.check.build;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.quantity.Units;
import leat.stability.Assembly;
import leat.stability.Equilibrium;
import leat.stability.Situation;
import leat.system.StandingOf;

/** Tank and towers do not tip in the site's wind. */
final class WindTip extends DeclaredRule {
  static final Show BARE = Show.of(Units.NUMBER_UNIT, 3);

  WindTip() {
    super(
        "wind-tip",
        AT_LEAST,
        BARE,
        Equilibrium.LEAST_SAFETY,
        "EN 1990 table A1.2(A): 1.5 on wind, 0.9 on weight",
        StandingRule.READS,
        "Righting moment of the weight over the overturning moment of the site's gust, with the tank at its refill mark and grown plants, or full with young ones, whichever is worse. Lines to the ground hold it whatever the number is; lines to the tank do not.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("site").section("wind").isGiven()) {
      return List.of();
    }
    StandingOf standing = subject.standing();
    double pressure = subject.windPressure();
    Double safety = standing.assembly().worst(standing.worst(pressure)).safety(pressure);
    if (safety == null) {
      return List.of();
    }
    return List.of(
        standing.heldByLines()
            ? Finding.valueOnly(this, Verdict.PASS, safety)
            : atLeast(safety, limit(subject), Verdict.FAIL));
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return finding.hasLimit() ? super.words(subject, finding) : "held by its lines";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    StandingOf standing = subject.standing();
    Assembly whole = standing.assembly();
    double pressure = subject.windPressure();
    Situation worst = standing.worst(pressure);
    Advice advice = Advice.of("a heavier or wider foot, or fewer modules");
    for (int t = 0; t < standing.towers(); t++) {
      if (standing.lines(t) == null) {
        advice.cure(Cure.measures(RuleOfTowers.key(t, "guys"), standing.threeLines(t)));
        break;
      }
      advice.cure(Cure.typed(RuleOfTowers.key(t, "guys.anchor"), "ground"));
    }
    Double keep = standing.volumeToKeep(worst, pressure);
    if (keep != null) {
      advice.cure(Cure.atLeast("tank.low", standing.tank().level(keep), Show.MM));
    }
    double mass = subject.section("tank").need("mass") + whole.massInFoot(worst, pressure);
    advice.cure(Cure.atLeast("tank.mass", mass, Show.KG).remark(" (ballast in its foot)"));
    Integer modules = whole.modulesToPass(standing.column(0), worst, pressure);
    // so many pass by the usual limit
    return modules == null || subject.ownLimit(this) != null
        ? advice
        : advice.also(Phrase.of("at most ").count(modules).add(" modules"));
  }
}

package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** The highest pots can be reached from the ground. */
final class Reach extends TowerRule {
  Reach() {
    super(
        At.LOW,
        "reach",
        AT_MOST,
        Show.M,
        1.60,
        PRACTICE,
        "towers[].base.height towers[].modules",
        "Height of the middle of the top module over the tank's floor: higher pots want a step, and standing on things beside a tub is how people get hurt.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (tower.highestPot().isEmpty()) {
      return Finding.unknown(
          this, Phrase.of("needs " + key(tower, "base.height") + " and " + key(tower, "modules")));
    }
    double pot = tower.highestPot().getAsDouble();
    double limit = limit(subject);
    Phrase advice =
        tower.baseFor(limit) > 0
            ? Mends.atMost(Phrase.of(), key(tower, "base.height"), tower.baseFor(limit), Show.M)
                .add(", or one module less")
            : Phrase.of("fewer modules");
    Verdict breach = subject.hasOwnLimit(this) ? Verdict.FAIL : Verdict.WARN;
    return atMost(pot, limit, breach, advice);
  }
}

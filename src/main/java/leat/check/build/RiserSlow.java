package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.HeadLoss;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** Water in the riser carries air and grit along. */
final class RiserSlow extends TowerRule {
  RiserSlow() {
    super(
        At.LOW,
        "riser-slow",
        AT_LEAST,
        Show.M_S,
        HeadLoss.OfSection.SLOW,
        PRACTICE,
        "towers[].riser.bore pump tank.low",
        "Speed in the riser at the refill mark. Under 0.3 m/s air and grit stay in the tube.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (!tower.reaches()) {
      return null;
    }
    double limit = limit(subject);
    Phrase advice =
        Mends.atMost(Phrase.of(), key(tower, "riser.bore"), tower.boreForVelocity(limit), Show.MM)
            .add(", or open the valve");
    return atLeast(tower.throttledVelocity(), limit, Verdict.WARN, advice);
  }
}

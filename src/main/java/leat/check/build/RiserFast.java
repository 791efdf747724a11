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

/** Water in the riser is not too fast. */
final class RiserFast extends TowerRule {
  RiserFast() {
    super(
        At.FULL,
        "riser-fast",
        AT_MOST,
        Show.M_S,
        HeadLoss.OfSection.FAST,
        PRACTICE,
        "towers[].riser.bore pump tank.full",
        "Speed in the riser with the tank full. Over 1.5 m/s it is noisy and friction eats the head.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (!tower.reaches()) {
      return null;
    }
    double limit = limit(subject);
    Phrase advice =
        Mends.atMost(
                Phrase.of("close the valve: "),
                key(tower, "wanted"),
                limit * tower.flow() / tower.velocity(),
                Show.L_MIN)
            .add(", or the next bore up");
    return atMost(tower.throttledVelocity(), limit, Verdict.WARN, advice);
  }
}

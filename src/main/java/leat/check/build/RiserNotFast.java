package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.HeadLoss;
import leat.system.TowerAt;

/** Water in the riser is not too fast. */
final class RiserNotFast extends TowerRule {
  RiserNotFast() {
    super(
        At.FULL,
        "riser-not-fast",
        AT_MOST,
        Show.M_S,
        HeadLoss.OfSection.FAST,
        PRACTICE,
        ReadKeys.WATER_WAY,
        "Speed in the riser with the tank full. Over 1.5 m/s it is noisy and friction eats the head.");
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    return tower.reaches() ? atMost(tower.velocity(), limit(subject), Verdict.WARN) : null;
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    Advice advice = FilmNotFlooding.heldBack(subject, tower, finding.limit() / finding.value());
    TowerCures.wider(advice, tower.number(), tower.boreForVelocity(finding.limit()));
    return advice.say("close the valve, or the next bore up");
  }
}

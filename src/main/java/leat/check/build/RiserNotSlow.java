package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.HeadLoss;
import leat.system.TowerAt;

/** Water in the riser carries air and grit along. */
final class RiserNotSlow extends TowerRule {
  RiserNotSlow() {
    super(
        At.LOW,
        "riser-not-slow",
        AT_LEAST,
        Show.M_S,
        HeadLoss.OfSection.SLOW,
        PRACTICE,
        ReadKeys.WATER_WAY,
        "Speed in the riser at the refill mark. Under 0.3 m/s air and grit stay in the tube.");
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    return tower.reaches() ? atLeast(tower.velocity(), limit(subject), Verdict.WARN) : null;
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    int t = tower.number();
    double more = finding.limit() / finding.value();
    boolean throttled = subject.valves().holdsBack(subject.waterway().riserOf(t));
    Advice advice = Advice.of(throttled ? "open the valve" : "a narrower riser");
    TowerCures.narrower(advice, t, tower.boreForVelocity(finding.limit()));
    return throttled
        ? advice.cure(Cure.atLeast(key(t, "wanted"), more * tower.flow(), Show.L_MIN))
        : advice;
  }
}

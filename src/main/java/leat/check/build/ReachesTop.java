package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.OperatingPoint;
import leat.system.TowerAt;

/** The pump lifts water over the outlet with the tank at its refill mark. */
final class ReachesTop extends TowerRule {
  ReachesTop() {
    super(
        At.LOW,
        "reaches-top",
        MORE_THAN,
        Show.M,
        null,
        "hydrostatics",
        ReadKeys.HEAD + " tank.low",
        "Head of the pump at no flow, as derated or measured, against the height of the outlet over the refill mark: below it nothing arrives.");
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    double head = subject.flowsLow().shutoffHead();
    double limit = limitOr(subject, tower.riser().lift());
    boolean over = tower.margin() > 0 && !reaches(limit, head);
    return Finding.of(this, over ? Verdict.PASS : Verdict.FAIL, head, limit);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    return PumpMargin.higher(subject, tower.number(), finding.limit(), OperatingPoint.USUAL_MARGIN);
  }
}

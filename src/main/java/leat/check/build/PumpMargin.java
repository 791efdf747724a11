package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Mend;
import leat.hydraulics.OperatingPoint;
import leat.system.TowerAt;

/** The pump's head at no flow stands well over the outlet, with the tank at its refill mark. */
final class PumpMargin extends TowerRule {
  PumpMargin() {
    super(
        At.LOW,
        "pump-margin",
        AT_LEAST,
        Show.PERCENT,
        OperatingPoint.USUAL_MARGIN,
        PRACTICE,
        ReadKeys.HEAD + " tank.low",
        "Head at no flow that is left, less the lift at the refill mark, over the lift. A thin margin is eaten by wear and slime.");
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    return tower.marginShare().isEmpty()
        ? null
        : atLeast(tower.marginShare().getAsDouble(), limit(subject), Verdict.FAIL);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    return higher(subject, tower.number(), tower.riser().lift(), finding.limit());
  }

  /** A pump or a tower with so much margin over the lift. */
  static Advice higher(Subject subject, int t, double lift, double margin) {
    double head = Mend.shutoffHeadForMargin(lift, margin, subject.waterway().derate());
    double least = Mend.liftForMargin(subject.waterway().curve(), margin);
    return Advice.of("a stronger pump or a lower tower")
        .cure(TowerCures.strongerPump(subject, head))
        .cure(TowerCures.lowered(subject, t, subject.waterway().low() + least));
  }
}

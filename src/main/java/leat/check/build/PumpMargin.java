package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
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
        "pump.curve pump.derate pump.measured tank.low towers[].outlet",
        "Head at no flow that is left, less the lift at the refill mark, over the lift. A thin margin is eaten by wear and slime.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (tower.marginShare().isEmpty()) {
      return null;
    }
    double limit = limit(subject);
    double lift = tower.riser().lift();
    Phrase advice =
        Mends.atMost(
            Mends.of(
                    Phrase.of(),
                    "pump.shutoff_head",
                    Mend.shutoffHeadForMargin(lift, limit, subject.waterway().derate()),
                    Show.M)
                .add(", or "),
            key(tower, "outlet"),
            subject.waterway().low() + Mend.liftForMargin(subject.waterway().curve(), limit),
            Show.M);
    return atLeast(tower.marginShare().getAsDouble(), limit, Verdict.FAIL, advice);
  }
}

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

/** The pump lifts water over the outlet with the tank at its refill mark. */
final class ReachesTop extends TowerRule {
  ReachesTop() {
    super(
        At.LOW,
        "reaches-top",
        AT_LEAST,
        Show.M,
        null,
        "hydrostatics",
        "pump.curve pump.derate pump.measured tank.low towers[].outlet towers[].riser",
        "Head of the pump at no flow, as derated or measured, against the height of the outlet over the refill mark: below it nothing arrives.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    double lift = tower.riser().lift();

    Phrase advice =
        Mends.atMost(
            Mends.of(
                    Phrase.of(),
                    "pump.shutoff_head",
                    Mend.shutoffHeadForMargin(
                        lift, OperatingPoint.USUAL_MARGIN, subject.waterway().derate()),
                    Show.M)
                .add(", or "),
            key(tower, "outlet"),
            subject.waterway().low()
                + Mend.liftForMargin(subject.waterway().curve(), OperatingPoint.USUAL_MARGIN),
            Show.M);
    return tower.margin() > 0
        ? atLeast(flows.shutoffHead(), lift, Verdict.FAIL, advice)
        : Finding.of(this, Verdict.FAIL, flows.shutoffHead(), lift, advice);
  }
}

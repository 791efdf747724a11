package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.Mend;
import leat.hydraulics.PumpCurve;
import leat.system.TowerAt;
import leat.system.Waterway;

/** Each tower gets the flow it is wanted to get, with the tank at its refill mark. */
final class FlowWanted extends TowerRule {
  private static final double[] SHARES = {0.8, 0.6};

  FlowWanted() {
    super(
        At.LOW,
        "flow-wanted",
        AT_LEAST,
        Show.L_MIN,
        null,
        "the plan",
        ReadKeys.WATER_WAY,
        "Flow of the tower at the refill mark against the flow it is wanted to get.");
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    OptionalDouble wanted = subject.waterway().wanted(tower.number());
    if (wanted.isEmpty() || !tower.reaches()) {
      return null;
    }
    return atLeast(tower.flow(), limitOr(subject, wanted.getAsDouble()), Verdict.WARN);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    int t = tower.number();
    int riser = subject.waterway().riserOf(t);
    boolean alone = subject.waterway().towers() == 1;
    Advice advice = Advice.of(alone ? "want less" : "throttle the other towers, or want less");
    OptionalDouble bore =
        Mend.boreForFlow(
            subject.waterway().curve(),
            subject.flowsLow().manifold(),
            riser,
            tower.riser().line().size() - 1,
            finding.limit());
    if (bore.isPresent()) {
      TowerCures.wider(advice, t, bore.getAsDouble());
    }
    for (int i = 0; i < SHARES.length; i++) {
      advice.cure(TowerCures.othersHeldBack(subject, t, SHARES[i]));
    }
    strongerPump(advice, subject, riser, finding.limit());
    return advice.cure(Cure.atMost(key(t, "wanted"), tower.flow(), Show.L_MIN));
  }

  /** A pump under which a riser gets a flow, all others taking what they then take. */
  static Advice strongerPump(Advice advice, Subject subject, int riser, double flow) {
    Waterway way = subject.waterway();
    PumpCurve printed = way.printed();
    ManifoldFlow flows = subject.flowsLow();
    OptionalDouble share = flows.manifold().derateFor(printed, riser, flow);
    if (share.isPresent()) {
      double head = printed.shutoffHead() * share.getAsDouble() / way.derate();
      advice.cure(TowerCures.strongerPump(subject, head));
    }
    return advice;
  }
}

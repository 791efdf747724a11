package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Mend;
import leat.quantity.Units;
import leat.system.TowerAt;

/** No tower is left dry by the others. */
final class TowerFed extends TowerRule {
  /** Shares to which the other towers are closed, one after the other, until this one runs. */
  private static final double[] SHARES = {0.8, 0.6, 0.4, 0.25};

  TowerFed() {
    super(
        At.LOW,
        "tower-fed",
        MORE_THAN,
        Show.L_MIN,
        0.0,
        "hydraulics of a manifold",
        ReadKeys.WATER_WAY,
        "Flow of a tower at the refill mark that the pump alone would reach: it gets none when the others take the head. Throttle the low ones, or widen what they share.");
  }

  @Override
  protected boolean allows(double limit) {
    return limit >= 0;
  }

  @Override
  protected String allowed() {
    return "of 0 or more";
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    if (!tower.reaches() && !tower.starved()) {
      return null;
    }
    double limit = limit(subject);
    boolean fed = tower.reaches() && tower.flow() > limit;
    return Finding.of(this, fed ? Verdict.PASS : Verdict.FAIL, tower.flow(), limit);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    int t = tower.number();
    int riser = subject.waterway().riserOf(t);
    double flow = Math.max(finding.limit(), Units.L_MIN.toBase(1));
    Advice advice = Advice.of("close the valves of the lower towers until this one runs");
    for (int i = 0; i < SHARES.length; i++) {
      advice.cure(TowerCures.othersHeldBack(subject, t, SHARES[i]));
    }
    OptionalDouble lift =
        Mend.liftForFlow(subject.waterway().curve(), subject.flowsLow().manifold(), riser, flow);
    if (lift.isPresent()) {
      advice.cure(TowerCures.lowered(subject, t, subject.waterway().low() + lift.getAsDouble()));
    }
    return FlowWanted.strongerPump(advice, subject, riser, flow);
  }
}

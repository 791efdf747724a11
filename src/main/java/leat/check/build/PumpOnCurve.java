package leat.check.build;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.OperatingPoint;

/** The pump works on its printed curve, not past the end. */
final class PumpOnCurve extends DeclaredRule {
  private static final double[] SHARES = {0.9, 0.75, 0.5};

  PumpOnCurve() {
    super(
        "pump-on-curve",
        AT_MOST,
        Show.L_MIN,
        null,
        "the printed curve",
        ReadKeys.WATER_WAY,
        "Flow of all towers with the tank full against the end of the pump's printed curve. Past it nobody measured.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    ManifoldFlow flows = subject.flowsFull();
    double end = limitOr(subject, subject.waterway().curve().maxFlow());
    boolean past =
        flows.status() == OperatingPoint.Status.RUN_OUT || !reaches(end, flows.totalFlow());
    return List.of(Finding.of(this, past ? Verdict.WARN : Verdict.PASS, flows.totalFlow(), end));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Advice advice = Advice.of("close the valves");
    double most = Math.min(1, finding.limit() / finding.value());
    for (int i = 0; i < SHARES.length; i++) {
      advice.cure(TowerCures.allHeldBack(subject, SHARES[i] * most));
    }
    return advice;
  }
}

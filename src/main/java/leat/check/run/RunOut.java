package leat.check.run;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;

/** The pump works on its printed curve, not past the end. */
public final class RunOut extends DeclaredRule {
  public RunOut() {
    super(
        "run-out",
        AT_MOST,
        Show.L_MIN,
        null,
        "the printed curve",
        "pump.curve pump.max_flow towers tank.full",
        "Flow of all towers with the tank full against the end of the pump's printed curve. Past it nobody measured.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    ManifoldFlow flows = subject.flowsFull();
    double end = subject.waterway().curve().maxFlow();
    boolean past = flows.status() == leat.hydraulics.OperatingPoint.Status.RUN_OUT;
    Phrase advice = Phrase.of("close the valves: pump --throttle-to tells how far");
    return List.of(
        Finding.of(
            this,
            past ? Verdict.WARN : Verdict.PASS,
            flows.totalFlow(),
            end,
            past ? advice : Phrase.of()));
  }
}

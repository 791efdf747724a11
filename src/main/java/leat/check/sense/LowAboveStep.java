package leat.check.sense;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Motion;

/** The refill mark lies above the lowest step. */
final class LowAboveStep extends DeclaredRule {
  LowAboveStep() {
    super(
        "low-above-step",
        AT_LEAST,
        Show.MM,
        null,
        "the sender itself: the end of its lowest band",
        "tank.low sender.edge_error" + ReadKeys.SENDER,
        "The refill mark lies above the lowest step of the sender; below that step the sender reads the same down to empty, and low cannot be told from dry.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    subject.tank();
    double low = subject.section("tank").need("low");
    double edge = subject.sender().staircase().levelHigh(0, Motion.UNKNOWN);
    return List.of(atLeast(low, limitOr(subject, edge), Verdict.FAIL));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of("a lower first step").cure(Cure.atLeast("tank.low", finding.limit(), Show.MM));
  }
}

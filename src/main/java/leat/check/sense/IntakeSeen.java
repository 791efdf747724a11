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
import leat.level.Staircase;

/** The lowest step is read before the pump draws air. */
final class IntakeSeen extends DeclaredRule {
  IntakeSeen() {
    super(
        "intake-seen",
        AT_LEAST,
        Show.MM,
        null,
        "a pump must not run dry; the intake is the limit",
        "tank.intake sender.hysteresis sender.edge_error" + ReadKeys.SENDER,
        "The sender falls to its lowest reading before the level reaches the pump's intake, so that a controller can stop the pump before it draws air.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    subject.tank();
    double intake = subject.section("tank").need("intake");
    Staircase stairs = subject.sender().staircase();
    double seen = Math.min(stairs.levelHigh(0, Motion.FALLING), stairs.levelLow(1, Motion.FALLING));
    return List.of(atLeast(seen, limitOr(subject, intake), Verdict.FAIL));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of("the sender's first step higher")
        .cure(Cure.atMost("tank.intake", finding.value(), Show.MM));
  }
}

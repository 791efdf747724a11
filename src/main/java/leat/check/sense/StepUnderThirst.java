package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.quantity.Units;
import leat.system.DrinksOf;

/** A step holds no more than a day's thirst. */
final class StepUnderThirst extends DeclaredRule {
  private static final double DAY = 86_400;

  StepUnderThirst() {
    super(
        "step-under-thirst",
        AT_MOST,
        Show.L,
        null,
        PRACTICE,
        "sender.hysteresis sender.edge_error tank.holds tank.corner tank.between"
            + ReadKeys.SENDER
            + ReadKeys.DRINKS,
        "Widest step of the sender between its lowest and its top one, against a day's thirst: a step that outlasts a day hides what the plants drink.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    double widest = subject.sender().staircase().widestMiddleBand();
    Double own = subject.ownLimit(this);
    double day = own == null ? DrinksOf.perSecond(subject.plan()) * DAY : own;
    return List.of(atMost(widest, day, Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    if (!(finding.limit() > 0)) {
      return Advice.of("more steps");
    }
    return Advice.none()
        .also(
            Phrase.of("more steps, or wait ")
                .add(finding.value() / finding.limit() * DAY, Show.of(Units.D, 2))
                .add(" for two changes before believing a use"));
  }
}

package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.quantity.Units;
import leat.system.DrinksOf;

/** A step holds no more than a day's thirst. */
final class StepAgainstThirst extends Rule {
  private static final double DAY = 86_400;

  @Override
  public String id() {
    return "step-against-thirst";
  }

  @Override
  public String meaning() {
    return "Widest step of the sender between its lowest and its top one, against a day's thirst: a step that outlasts a day hides what the plants drink.";
  }

  @Override
  public String need() {
    return AT_MOST;
  }

  @Override
  public Show show() {
    return Show.L;
  }

  @Override
  public Double usualLimit() {
    return null;
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  public String reads() {
    return "sender.steps sender.edges sender.ladder drinks crops thirst";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    double widest = subject.sender().staircase().widestMiddleBand();
    Double own = subject.ownLimit(this);
    double day = own == null ? DrinksOf.perSecond(subject.plan()) * DAY : own;
    return List.of(
        atMost(
            widest,
            day,
            Verdict.WARN,
            Phrase.of("more steps, or wait ")
                .add(widest / day * DAY, Show.of(Units.D, 2))
                .add(" for two changes before believing a use")));
  }
}

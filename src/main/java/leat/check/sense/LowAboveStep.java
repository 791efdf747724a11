package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Motion;

/** The refill mark lies above the lowest step. */
final class LowAboveStep extends Rule {
  @Override
  public String id() {
    return "low-above-step";
  }

  @Override
  public String meaning() {
    return "The refill mark lies above the lowest step of the sender; below that step the sender reads the same down to empty, and low cannot be told from dry.";
  }

  @Override
  public String need() {
    return AT_LEAST;
  }

  @Override
  public Show show() {
    return Show.MM;
  }

  @Override
  public Double usualLimit() {
    return null;
  }

  @Override
  public String source() {
    return "the sender itself: the end of its lowest band";
  }

  @Override
  public String reads() {
    return "tank.low sender.steps sender.edges sender.ladder sender.hysteresis";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    subject.tank();
    double low = subject.section("tank").need("low");
    double edge = subject.sender().staircase().levelHigh(0, Motion.UNKNOWN);
    return List.of(
        atLeast(
            low,
            edge,
            Verdict.FAIL,
            Phrase.of("tank.low at ").add(edge, Show.MM).add(", or a lower first step")));
  }
}

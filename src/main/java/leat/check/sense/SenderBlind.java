package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Motion;
import leat.level.Sender;
import leat.level.Staircase;

/** The sender sees up to the full mark. */
final class SenderBlind extends Rule {
  @Override
  public String id() {
    return "sender-blind";
  }

  @Override
  public String meaning() {
    return "Litres at which the top step of the sender begins; above it the sender reads the same up to the rim, so overfilling is not seen.";
  }

  @Override
  public String need() {
    return AT_LEAST;
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
    return "the plan's own full mark";
  }

  @Override
  public String reads() {
    return "tank.full tank.holds sender.steps sender.edges sender.ladder";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    Sender sender = subject.sender();
    Staircase stairs = sender.staircase();
    double top = stairs.volumeLow(stairs.size() - 1, Motion.RISING);
    Double own = subject.ownLimit(this);
    double full = own == null ? sender.fullVolume() : own;
    Phrase advice = Phrase.of("full lies ").add(full - top, Show.L).add(" above the last step");
    if (stairs.hasLevels()) {
      advice
          .add("; tank.full at ")
          .add(stairs.levelLow(stairs.size() - 1, Motion.RISING), Show.MM)
          .add(", or a higher last step");
    }
    return List.of(atLeast(top, full, Verdict.WARN, advice));
  }
}

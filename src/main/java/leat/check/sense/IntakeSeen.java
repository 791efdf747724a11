package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Motion;
import leat.level.Staircase;

/** The lowest step is read before the pump draws air. */
final class IntakeSeen extends Rule {
  @Override
  public String id() {
    return "intake-seen";
  }

  @Override
  public String meaning() {
    return "The sender falls to its lowest reading before the level reaches the pump's intake, so that a controller can stop the pump before it draws air.";
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
    return "a pump must not run dry; the intake is the limit";
  }

  @Override
  public String reads() {
    return "tank.intake sender.steps sender.edges sender.ladder sender.hysteresis";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    subject.tank();
    double intake = subject.section("tank").need("intake");
    Staircase stairs = subject.sender().staircase();
    double seen = Math.min(stairs.levelHigh(0, Motion.FALLING), stairs.levelLow(1, Motion.FALLING));
    return List.of(
        atLeast(
            seen,
            intake,
            Verdict.FAIL,
            Phrase.of("tank.intake at ")
                .add(seen, Show.MM)
                .add(" or lower, or the sender's first step higher")));
  }
}

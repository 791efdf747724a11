package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Tank;

/** The dip while the towers run changes the reading, or a cap sensor is there. */
final class DipSeen extends Rule {
  @Override
  public String id() {
    return "dip-seen";
  }

  @Override
  public String meaning() {
    return "How far the level dips while the towers run, against the sender's highest step: a smaller dip may fall within one step and proves nothing. A sensor at the cap proves it.";
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
    return "the sender itself: its highest step with hysteresis";
  }

  @Override
  public String reads() {
    return "hold_up cap_sensor tank.full sender.steps sender.edges sender.ladder";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    if (subject.section("cap_sensor").isGiven()) {
      return List.of(Finding.words(this, Verdict.PASS, "cap sensor", Phrase.of()));
    }
    Tank tank = subject.tank();
    double full = subject.section("tank").need("full");
    double holdUp = subject.plan().root().need("hold_up");
    double dip = full - tank.level(Math.max(tank.lowestVolume(), tank.volume(full) - holdUp));
    return List.of(
        atLeast(
            dip,
            subject.sender().staircase().highestMiddleStep(),
            Verdict.WARN,
            Phrase.of(
                "the sender cannot prove that water flows: a cap sensor can, cap_sensor: {wet: ..., dry: ...}")));
  }
}

package leat.check.sense;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Tank;

/** The dip while the towers run changes the reading, or a cap sensor is there. */
final class DipSeen extends DeclaredRule {
  DipSeen() {
    super(
        "dip-seen",
        AT_LEAST,
        Show.MM,
        null,
        "the sender itself: its highest step with hysteresis",
        "hold_up cap_sensor sender.hysteresis sender.edge_error tank.corner tank.between"
            + ReadKeys.SENDER,
        "How far the level dips while the towers run, against the sender's highest step: a smaller dip may fall within one step and proves nothing. A sensor at the cap proves it.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    if (subject.section("cap_sensor").isGiven()) {
      return List.of(Finding.words(this, Verdict.PASS, 0));
    }
    Tank tank = subject.tank();
    double full = subject.section("tank").need("full");
    double holdUp = subject.plan().root().need("hold_up");
    double dip = full - tank.level(Math.max(tank.lowestVolume(), tank.volume(full) - holdUp));
    double step = subject.sender().staircase().highestMiddleStep();
    return List.of(atLeast(dip, limitOr(subject, step), Verdict.WARN));
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return "cap sensor";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of(
        "the sender cannot prove that water flows: a cap sensor can, cap_sensor: {wet: ..., dry: ...}");
  }
}

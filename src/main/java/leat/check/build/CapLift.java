package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Cap;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** The jet does not lift the cap. */
final class CapLift extends TowerRule {
  CapLift() {
    super(
        At.FULL,
        "cap-lift",
        AT_LEAST,
        Show.N,
        null,
        PRACTICE,
        "towers[].cap.mass towers[].cap.grip towers[].riser.bore pump tank.full",
        "Weight and grip of the cap against twice the push of the jet, with the tank full. A light cap rises, rattles and sprays.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (!tower.reaches()) {
      return null;
    }
    Cap cap = tower.cap();
    if (cap == null) {
      return Finding.unknown(this, Phrase.of("needs " + key(tower, "cap.mass")));
    }
    Phrase advice =
        Mends.of(Phrase.of(), key(tower, "cap.grip"), cap.gripToBeSafe(), Show.N)
            .add(", or fasten it");
    return atLeast(
        cap.holdDown(),
        Cap.SAFE * cap.jetForce(),
        cap.liftsAgainstGrip() ? Verdict.FAIL : Verdict.WARN,
        advice);
  }
}

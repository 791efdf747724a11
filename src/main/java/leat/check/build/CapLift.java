package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Cap;
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
        "towers[].cap.mass towers[].cap.grip towers[].cap.clearance " + ReadKeys.WATER_WAY,
        "Weight and grip of the cap against twice the push of the jet, with the tank full. A light cap rises, rattles and sprays.");
  }

  @Override
  String[] needs() {
    return new String[] {"cap.mass"};
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    if (!tower.reaches()) {
      return null;
    }
    Cap cap = tower.cap();
    return cap == null
        ? Finding.unknown(this)
        : atLeast(
            cap.holdDown(),
            limitOr(subject, Cap.SAFE * cap.jetForce()),
            cap.liftsAgainstGrip() ? Verdict.FAIL : Verdict.WARN);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    double grip = subject.waterway().tower(tower.number()).top().grip().orTaken();
    double more = finding.limit() - finding.value();
    return Advice.none()
        .also("fasten it")
        .cure(Cure.atLeast(key(tower.number(), "cap.grip"), grip + more, Show.N));
  }
}

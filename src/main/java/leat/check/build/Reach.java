package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.parts.Tower;
import leat.plan.Section;

/** The highest pots can be reached from the ground. */
final class Reach extends ShapeRule {
  Reach() {
    super(
        "reach",
        AT_MOST,
        Show.M,
        Tower.REACH,
        PRACTICE,
        "tank.stand towers[].base.height" + ReadKeys.STACK,
        "Height of the middle of the top module over what the tank's stand stands on: higher pots want a step, and standing on things beside a tub is how people get hurt.");
  }

  @Override
  String[] needs() {
    return new String[] {"base.height", "modules", "modules.height"};
  }

  @Override
  Finding measure(Subject subject, Section tower) {
    double pot = highestPot(tower);
    if (Double.isNaN(pot)) {
      return Finding.unknown(this);
    }
    double stand = subject.section("tank").value("stand").orElse(0);
    return atMost(stand + pot, limit(subject), Verdict.FAIL);
  }

  @Override
  Advice advice(Subject subject, Section tower, Finding finding) {
    double lower = finding.value() - finding.limit();
    Double base = tower.section("base").maybe("height");
    return Advice.of("a lower tower")
        .cure(lowerBase(subject, finding.part(), base, lower))
        .cure(TowerCures.fewerModules(subject, finding.part(), lower));
  }

  /** A base lower by so many m; null when it would stand in the water. */
  static Cure lowerBase(Subject subject, int t, Double base, double lower) {
    Double full = subject.section("tank").maybe("full");
    double now = base - lower;
    return now > 0 && (full == null || now >= full)
        ? Cure.atMost(key(t, "base.height"), now, Show.M)
        : null;
  }
}

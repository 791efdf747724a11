package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.system.TowerAt;

/** A tower that gets more than is wanted has a valve. */
final class ValveNeeded extends TowerRule {
  /** Flow over what is wanted that needs no valve, a share. */
  private static final double USUAL = 0.10;

  ValveNeeded() {
    super(
        At.LOW,
        "valve-needed",
        AT_MOST,
        Show.PERCENT,
        USUAL,
        PRACTICE,
        ReadKeys.WATER_WAY,
        "Flow at the refill mark over what is wanted, in a tower without riser.valve. Without a valve the pump decides what each tower gets.");
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    OptionalDouble wanted = subject.waterway().wanted(tower.number());
    if (wanted.isEmpty() || !tower.reaches() || subject.waterway().tower(tower.number()).valved()) {
      return null;
    }
    double over = Math.max(0, tower.flow() / wanted.getAsDouble() - 1);
    return atMost(over, limit(subject), Verdict.WARN);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    return Advice.none().cure(TowerCures.valveOnly(tower.number()));
  }
}

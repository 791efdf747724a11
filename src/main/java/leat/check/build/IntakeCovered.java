package leat.check.build;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Tank;
import leat.plan.Section;
import leat.system.HeldWater;

/** The pump's intake stays covered at the refill mark while the towers run. */
final class IntakeCovered extends DeclaredRule {
  IntakeCovered() {
    super(
        "intake-covered",
        AT_LEAST,
        Show.MM,
        0.020,
        PRACTICE,
        "tank.low tank.intake hold_up towers pump",
        "Water over the pump's intake at the refill mark, once risers and towers have taken theirs. Dry running kills a small pump.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section section = subject.section("tank");
    double intake = section.need("intake");
    double low = section.need("low");
    Tank tank = subject.tank();
    HeldWater held = HeldWater.of(subject.waterway(), subject.flowsLow());
    double limit = limit(subject);
    double level = HeldWater.levelWithout(tank, low, held.held());
    Phrase advice =
        Mends.of(
            Phrase.of(),
            "tank.low",
            HeldWater.levelBefore(tank, intake + limit, held.held()),
            Show.MM);
    return List.of(atLeast(level - intake, limit, Verdict.FAIL, advice));
  }
}

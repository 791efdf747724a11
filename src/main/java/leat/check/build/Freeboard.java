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

/** The tank takes what comes back when the pump stops, and a downpour on its lid. */
final class Freeboard extends DeclaredRule {
  Freeboard() {
    super(
        "freeboard",
        AT_LEAST,
        Show.MM,
        0.010,
        PRACTICE,
        "tank.full tank.rim_overflow tank.rain_area hold_up towers pump",
        "Room left under the overflow when the pump stops with the tank full and running: what stands in risers and film comes back, and 50 mm of rain on tank.rain_area.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section section = subject.section("tank");
    Tank tank = subject.tank();
    Double overflow = section.maybe("rim_overflow");
    double brim = overflow == null ? tank.height() : overflow;
    Double area = section.maybe("rain_area");
    HeldWater held = HeldWater.of(subject.waterway(), subject.flowsFull());
    double more = held.back() + (area == null ? 0 : area * HeldWater.DOWNPOUR);
    double full = section.need("full");
    double limit = limit(subject);
    Phrase advice =
        Mends.atMost(Phrase.of(), "tank.full", HeldWater.levelFor(tank, brim, limit, more), Show.MM)
            .add("; ")
            .add(more, Show.L)
            .add(" come in");
    return List.of(atLeast(HeldWater.room(tank, full, brim, more), limit, Verdict.FAIL, advice));
  }
}

package leat.check.build;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Tank;
import leat.system.HeldWater;

/** The tank takes what comes back when the pump stops, and a downpour on its lid. */
final class Freeboard extends DeclaredRule {
  private static final double LIMIT = 0.010;

  Freeboard() {
    super(
        "freeboard",
        AT_LEAST,
        Show.MM,
        LIMIT,
        PRACTICE,
        "tank.rim_overflow tank.rain_area pump.check_valve "
            + ReadKeys.WATER_WAY
            + ReadKeys.HELD
            + ReadKeys.TANK,
        "Room left under the overflow when the pump stops with the tank full and running: what stands in risers and film comes back, and 50 mm of rain on tank.rain_area.");
  }

  private static double brim(Subject subject) {
    Double overflow = subject.section("tank").maybe("rim_overflow");
    return overflow == null ? subject.tank().height() : overflow;
  }

  /** What comes in at a stop, m3. */
  private static double comesIn(Subject subject) {
    Double area = subject.section("tank").maybe("rain_area");
    HeldWater held = HeldWater.of(subject.waterway(), subject.flowsFull());
    return held.back() + (area == null ? 0 : HeldWater.downpour(area));
  }

  @Override
  public List<Finding> measure(Subject subject) {
    double full = subject.section("tank").need("full");
    double room = HeldWater.room(subject.tank(), full, brim(subject), comesIn(subject));
    return List.of(atLeast(room, limit(subject), Verdict.FAIL));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Tank tank = subject.tank();
    double more = comesIn(subject);
    double full = HeldWater.levelFor(tank, brim(subject), finding.limit(), more);
    return Advice.none()
        .note(Phrase.of().add(more, Show.L).add(" come in"))
        .cure(Cure.atMost("tank.full", full, Show.MM))
        .cure(Cure.typed("pump.check_valve", "true"));
  }
}

package leat.check.run;

import java.util.List;
import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Cable;
import leat.energy.Copper;
import leat.plan.Section;
import leat.system.CableOf;
import leat.system.DrawOf;

/** The cable to a low-voltage pump loses little. */
final class CableDrop extends DeclaredRule {
  /** Shares outside this range are no limit for a size of cable. */
  private static final double LEAST = 1e-6;

  CableDrop() {
    super(
        "cable-drop",
        AT_MOST,
        Show.PERCENT,
        Cable.GOOD_DROP,
        "IEC 60228 resistances of flexible cords; 5 % good, 10 % at most: common practice, no source",
        "pump.power pump.supply",
        "Voltage lost on the way to a low-voltage pump, out and back, over the supply's; over 5 % warns, over 10 % fails.");
  }

  private static Section cable(Subject subject) {
    return subject.section("pump").section("supply").section("cable");
  }

  @Override
  public String place(Finding finding) {
    return "pump.supply";
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!DrawOf.isDirect(subject.plan()) || !cable(subject).isGiven()) {
      return List.of();
    }
    CableOf way = new CableOf(subject.plan(), subject.taken());
    double section = cable(subject).need("section");
    Cable with = way.with(section, Copper.Strands.FLEXIBLE, CableOf.USUAL_CELSIUS, 0);
    double limit = limit(subject);
    if (!with.feeds()) {
      return List.of(Finding.words(this, Verdict.FAIL, 0));
    }
    boolean fails = subject.ownLimit(this) != null || with.worstDropShare() > Cable.MOST_DROP;
    return List.of(atMost(with.worstDropShare(), limit, fails ? Verdict.FAIL : Verdict.WARN));
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return "cannot feed it";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double limit = Math.max(LEAST, Math.min(1, limit(subject)));
    OptionalDouble size =
        new CableOf(subject.plan(), subject.taken())
            .leastSize(Copper.Strands.FLEXIBLE, CableOf.USUAL_CELSIUS, 0, limit);
    Advice advice = Advice.of("a higher voltage, or the supply nearer to the pump");
    return size.isPresent()
        ? advice.cure(Cure.atLeast("pump.supply.cable.section", size.getAsDouble(), Show.MM2))
        : advice;
  }
}

package leat.check.run;

import java.util.List;
import java.util.OptionalDouble;
import leat.answer.Phrase;
import leat.answer.Show;
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
  CableDrop() {
    super(
        "cable-drop",
        AT_MOST,
        Show.PERCENT,
        Cable.GOOD_DROP,
        "IEC 60228 resistances of flexible cords; 5 % good, 10 % at most: common practice, no source",
        "pump.supply.dc pump.supply.cable pump.power",
        "Voltage lost on the way to a low-voltage pump, out and back, over the supply's; over 5 % warns, over 10 % fails.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section cable = subject.section("pump").section("supply").section("cable");
    if (!DrawOf.isDirect(subject.plan()) || !cable.isGiven()) {
      return List.of();
    }
    CableOf way = new CableOf(subject.plan());
    Cable with = way.with(cable.need("section"), Copper.Strands.FLEXIBLE, CableOf.USUAL_CELSIUS, 0);
    double limit = limit(subject);
    OptionalDouble size =
        way.leastSize(
            Copper.Strands.FLEXIBLE, CableOf.USUAL_CELSIUS, 0, Math.max(1e-6, Math.min(1, limit)));
    Phrase advice =
        size.isPresent()
            ? Phrase.of("pump.supply.cable.section of ").add(size.getAsDouble(), Show.MM2)
            : Phrase.of("a higher voltage, or the supply nearer to the pump");
    if (!with.feeds()) {
      return List.of(Finding.words(this, Verdict.FAIL, "cannot feed it", advice));
    }
    boolean fails = subject.ownLimit(this) != null || with.worstDropShare() > Cable.MOST_DROP;
    return List.of(
        atMost(with.worstDropShare(), limit, fails ? Verdict.FAIL : Verdict.WARN, advice));
  }
}

package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
import leat.plan.Section;
import leat.system.StrainerOf;
import leat.system.TowerAt;

/** The strainer lets the water back into the tank, clean and clogged. */
final class StrainerHead extends TowerRule {
  StrainerHead() {
    super(
        At.FULL,
        "strainer-head",
        AT_MOST,
        Show.MM,
        null,
        "Blevins, Applied Fluid Dynamics Handbook, 1984, for the loss; the clogged share is common practice, no source",
        "strainer towers pump tank.full",
        "Head that the strainer takes when it is as clogged as the plan allows, against the height of water it may hold back (strainer.freeboard).");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (!tower.reaches()) {
      return null;
    }
    Section strainer = subject.section("strainer");
    double limit = subject.limitOr(this, strainer, "freeboard");
    double clogged = strainer.get("clogged");
    double head = StrainerOf.of(strainer, subject.waterway().water(), tower.flow(), clogged).head();
    OptionalDouble diameter =
        StrainerOf.diameterFor(strainer, subject.waterway().water(), tower.flow(), clogged, limit);
    Phrase advice =
        (diameter.isPresent()
                ? Mends.of(Phrase.of(), "strainer.diameter", diameter.getAsDouble(), Show.MM)
                : Phrase.of("a coarser mesh"))
            .add(", or clean it sooner");
    return atMost(head, limit, Verdict.FAIL, advice);
  }
}

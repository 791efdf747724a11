package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
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
        "strainer " + ReadKeys.WATER_WAY,
        "Head that the strainer takes when it is as clogged as the plan allows, against the height of water it may hold back (strainer.freeboard). Silent without a strainer.");
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    if (!tower.reaches()) {
      return null;
    }
    Section strainer = subject.section("strainer");
    if (!strainer.isGiven() && subject.ownLimit(this) == null) {
      return null;
    }
    double limit = subject.limitOr(this, strainer, "freeboard");
    double clogged = strainer.get("clogged", subject.taken());
    double head = StrainerOf.of(strainer, subject.waterway().water(), tower.flow(), clogged).head();
    return atMost(head, limit, Verdict.FAIL);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    Section strainer = subject.section("strainer");
    OptionalDouble diameter =
        StrainerOf.diameterFor(
            strainer,
            subject.waterway().water(),
            tower.flow(),
            strainer.get("clogged", subject.taken()),
            finding.limit());
    Advice advice = Advice.none().also("clean it sooner");
    if (diameter.isPresent()) {
      advice.cure(Cure.atLeast("strainer.diameter", diameter.getAsDouble(), Show.MM));
    }
    return advice;
  }
}

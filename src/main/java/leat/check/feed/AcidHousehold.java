package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.acid.Acid;
import leat.system.AcidOf;

/** The acid of the plan is one that a home should keep. */
final class AcidHousehold extends DeclaredRule {
  AcidHousehold() {
    super(
        "acid-household",
        AT_MOST,
        Show.PERCENT,
        Units.PERCENT.toBase(Acid.HOUSEHOLD_PCT),
        PRACTICE,
        "feed.acid.name",
        "Strength of a liquid acid. Over 40 % it fumes and burns at once, and in some countries it is not sold to everybody; weaker does the same with more mL.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section section = subject.section("feed").section("acid");
    if (!section.has("name")) {
      return List.of();
    }
    Acid acid = AcidOf.of(section);
    if (acid.isSolid()) {
      return List.of();
    }
    double limit = limit(subject);
    Phrase advice =
        Phrase.of("feed.acid.name of " + acid.kind().word + "-")
            .number(Math.floor(Units.PERCENT.fromBase(limit)), 2)
            .add(" or less, or citric");
    return List.of(atMost(Units.PERCENT.toBase(acid.percent()), limit, Verdict.WARN, advice));
  }
}

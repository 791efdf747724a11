package leat.check.feed;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.quantity.NumberText;
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
  public List<Finding> measure(Subject subject) {
    Section section = subject.section("feed").section("acid");
    if (!section.has("name")) {
      return List.of();
    }
    Acid acid = AcidOf.of(section);
    if (acid.isSolid()) {
      return List.of();
    }
    double percent = Units.PERCENT.toBase(acid.percent());
    return List.of(atMost(percent, limit(subject), Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Acid acid = AcidOf.of(subject.section("feed").section("acid"));
    double most = Math.floor(Units.PERCENT.fromBase(finding.limit()));
    String weaker = acid.kind().word + "-" + NumberText.significant(most, 2);
    return Advice.none()
        .cure(Cure.typed("feed.acid.name", weaker))
        .cure(Cure.typed("feed.acid.name", "citric"));
  }
}

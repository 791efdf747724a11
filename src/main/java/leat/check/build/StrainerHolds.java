package leat.check.build;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Strainer;
import leat.plan.Section;

/** A dry mesh does not hold the water back by surface tension. */
final class StrainerHolds extends DeclaredRule {
  StrainerHolds() {
    super(
        "strainer-holds",
        AT_MOST,
        Show.MM,
        null,
        "4 sigma/(rho g w), an upper bound",
        "strainer.aperture strainer.freeboard",
        "Height of water that surface tension holds on a mesh hanging in air when it first wets, against the height it may hold back. Silent without a strainer.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Section strainer = subject.section("strainer");
    if (!strainer.isGiven() && subject.ownLimit(this) == null) {
      return List.of();
    }
    double limit = subject.limitOr(this, strainer, "freeboard");
    double hold = Strainer.capillaryHold(strainer.need("aperture"));
    return List.of(atMost(hold, limit, Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double aperture = Strainer.apertureForHold(finding.limit());
    return Advice.none()
        .also("let the mesh dip into the water")
        .cure(Cure.atLeast("strainer.aperture", aperture, Show.MM));
  }
}

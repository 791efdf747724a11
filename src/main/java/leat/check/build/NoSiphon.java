package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;

/** No water siphons back or runs on when the pump stops. */
final class NoSiphon extends ShapeRule {
  NoSiphon() {
    super(
        "no-siphon",
        AT_LEAST,
        Show.M,
        0.0,
        "hydrostatics",
        "towers[].outlet tank.full",
        "Height of the outlet over a full tank. An outlet under the tank's level runs on by itself when the pump stops, and siphons; a check valve does not hold it.");
  }

  @Override
  protected boolean allows(double limit) {
    return limit >= 0;
  }

  @Override
  protected String allowed() {
    return "of 0 or more";
  }

  @Override
  String[] needs() {
    return new String[] {"outlet"};
  }

  @Override
  Finding measure(Subject subject, Section tower) {
    double full = subject.section("tank").need("full");
    Double outlet = tower.maybe("outlet");
    return outlet == null
        ? Finding.unknown(this)
        : atLeast(outlet - full, limit(subject), Verdict.FAIL);
  }

  @Override
  Advice advice(Subject subject, Section tower, Finding finding) {
    double outlet = tower.need("outlet");
    double full = subject.section("tank").need("full");
    return Advice.of("an outlet above the water, open to the air")
        .cure(Cure.atLeast(key(finding.part(), "outlet"), full + finding.limit(), Show.M))
        .cure(Cure.atMost("tank.full", outlet - finding.limit(), Show.MM));
  }
}

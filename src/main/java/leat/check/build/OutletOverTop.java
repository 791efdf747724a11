package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;

/** The riser ends above the tower's top. */
final class OutletOverTop extends ShapeRule {
  OutletOverTop() {
    super(
        "outlet-over-top",
        AT_LEAST,
        Show.M,
        null,
        "geometry",
        "towers[].outlet towers[].base.height" + ReadKeys.STACK,
        "Height of the riser's outlet over the tank's floor against the top of the stacked modules: water must leave above the highest pot.");
  }

  @Override
  String[] needs() {
    return new String[] {"outlet", "base.height", "modules", "modules.height"};
  }

  @Override
  Finding measure(Subject subject, Section tower) {
    double top = top(tower);
    Double outlet = tower.maybe("outlet");
    return outlet == null || Double.isNaN(top)
        ? Finding.unknown(this)
        : atLeast(outlet, limitOr(subject, top), Verdict.FAIL);
  }

  @Override
  Advice advice(Subject subject, Section tower, Finding finding) {
    int t = finding.part();
    double outlet = finding.value();
    double lower = finding.limit() - outlet;
    Double base = tower.section("base").maybe("height");
    return Advice.of("a longer riser")
        .cure(Cure.atLeast(key(t, "outlet"), finding.limit(), Show.M))
        .cure(TowerCures.fewerModules(subject, t, lower))
        .cure(Reach.lowerBase(subject, t, base, lower));
  }
}

package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** The riser ends above the tower's top. */
final class OutletOverTop extends TowerRule {
  OutletOverTop() {
    super(
        At.LOW,
        "outlet-over-top",
        AT_LEAST,
        Show.M,
        null,
        "geometry",
        "towers[].outlet towers[].base.height towers[].modules",
        "Height of the riser's outlet over the tank's floor against the top of the stacked modules: water must leave above the highest pot.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (tower.top().isEmpty()) {
      return Finding.unknown(
          this, Phrase.of("needs " + key(tower, "base.height") + " and " + key(tower, "modules")));
    }
    double top = tower.top().getAsDouble();
    double outlet = tower.riser().lift() + subject.waterway().low();
    return atLeast(
        outlet, top, Verdict.FAIL, Mends.of(Phrase.of(), key(tower, "outlet"), top, Show.M));
  }
}

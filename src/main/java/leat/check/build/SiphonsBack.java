package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.SiphonBack;
import leat.system.TowerAt;

/** No water siphons back or runs on when the pump stops. */
final class SiphonsBack extends TowerRule {
  SiphonsBack() {
    super(
        At.FULL,
        "siphon-back",
        AT_LEAST,
        Show.M,
        0.0,
        "hydrostatics",
        "towers[].outlet tank.full pump.check_valve",
        "Height of the outlet over a full tank. An outlet under the tank's level runs on by itself when the pump stops, and siphons.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    double lift = tower.riser().lift();
    SiphonBack siphon = SiphonBack.of(lift, lift, 0, subject.section("pump").yes("check_valve"));
    Phrase advice =
        Mends.of(Phrase.of(), key(tower, "outlet"), subject.waterway().full(), Show.M)
            .add(", and open to the air");
    return siphon.runsOn()
        ? Finding.of(this, Verdict.FAIL, lift, 0, advice)
        : atLeast(lift, limit(subject), Verdict.FAIL, advice);
  }
}

package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.Mend;
import leat.quantity.Units;
import leat.system.TowerAt;

/** No tower is left dry by the others. */
final class TowerStarved extends TowerRule {
  TowerStarved() {
    super(
        At.LOW,
        "tower-starved",
        "more than",
        Show.L_MIN,
        null,
        "hydraulics of a manifold",
        "pump towers pipe tank.low",
        "A tower that the pump alone would reach gets nothing because the others take the head: throttle the low ones, or widen what they share.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (!tower.starved()) {
      return tower.reaches() ? Finding.of(this, Verdict.PASS, tower.flow(), 0, Phrase.of()) : null;
    }
    Phrase advice = Phrase.of("close the valves of the lower towers until this one runs, or ");
    OptionalDouble lift =
        Mend.liftForFlow(
            subject.waterway().curve(),
            flows.manifold(),
            subject.waterway().riserOf(tower.number()),
            Units.L_MIN.toBase(1));
    if (lift.isPresent()) {
      Mends.atMost(
          advice, key(tower, "outlet"), subject.waterway().low() + lift.getAsDouble(), Show.M);
    } else {
      advice.add("a stronger pump");
    }
    return Finding.of(this, Verdict.FAIL, 0, 0, advice);
  }
}

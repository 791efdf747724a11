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
import leat.system.TowerAt;

/** Each tower gets the flow it is wanted to get, with the tank at its refill mark. */
final class FlowWanted extends TowerRule {
  FlowWanted() {
    super(
        At.LOW,
        "flow-wanted",
        AT_LEAST,
        Show.L_MIN,
        null,
        "the plan",
        "towers[].wanted pump towers pipe tank.low",
        "Flow of the tower at the refill mark against the flow it is wanted to get.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    OptionalDouble wanted = subject.waterway().wanted(tower.number());
    if (wanted.isEmpty() || !tower.reaches()) {
      return null;
    }
    OptionalDouble bore =
        Mend.boreForFlow(
            subject.waterway().curve(),
            flows.manifold(),
            subject.waterway().riserOf(tower.number()),
            tower.riser().line().size() - 1,
            wanted.getAsDouble());
    Phrase advice = Phrase.of();
    if (bore.isPresent()) {
      Mends.of(advice, key(tower, "riser.bore"), bore.getAsDouble(), Show.MM).add(", or ");
    }
    advice.add("throttle the other towers, or want less");
    return atLeast(tower.flow(), wanted.getAsDouble(), Verdict.WARN, advice);
  }
}

package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Gap;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** The spreader's gap carries the flow. */
final class GapCarries extends TowerRule {
  GapCarries() {
    super(
        At.FULL,
        "gap-carries",
        AT_MOST,
        Show.MM,
        0.010,
        PRACTICE,
        "towers[].cap.gap towers[].cap.spreader pump tank.full",
        "Depth of water that stands on the spreader so that the slot carries the flow, with the tank full. Deeper runs over or back down the riser.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    if (!tower.reaches()) {
      return null;
    }
    Gap gap = tower.gap();
    if (gap == null) {
      return Finding.unknown(
          this, Phrase.of("needs " + key(tower, "cap.gap") + " and " + key(tower, "cap.spreader")));
    }
    double limit = limit(subject);
    OptionalDouble width = tower.slotForDepth(limit);
    Phrase advice =
        width.isPresent()
            ? Mends.of(Phrase.of(), key(tower, "cap.gap"), width.getAsDouble(), Show.MM)
            : Phrase.of("close the valve: no gap lets that much through");
    return atMost(gap.standingDepth(), limit, Verdict.WARN, advice);
  }
}

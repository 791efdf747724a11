package leat.check.build;

import java.util.OptionalDouble;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Gap;
import leat.system.TowerAt;

/** The spreader's gap carries the flow. */
final class GapCarries extends TowerRule {
  private static final double LIMIT = 0.010;

  GapCarries() {
    super(
        At.FULL,
        "gap-carries",
        AT_MOST,
        Show.MM,
        LIMIT,
        PRACTICE,
        "towers[].cap.gap towers[].cap.spreader towers[].cap.plate " + ReadKeys.WATER_WAY,
        "Depth of water that stands on the spreader so that the slot carries the flow, with the tank full. Deeper runs over or back down the riser.");
  }

  @Override
  String[] needs() {
    return new String[] {"cap.gap", "cap.spreader"};
  }

  @Override
  Finding measure(Subject subject, TowerAt tower) {
    if (!tower.reaches()) {
      return null;
    }
    Gap gap = tower.gap();
    return gap == null
        ? Finding.unknown(this)
        : atMost(gap.standingDepth(), limit(subject), Verdict.WARN);
  }

  @Override
  Advice advice(Subject subject, TowerAt tower, Finding finding) {
    OptionalDouble width = tower.slotForDepth(finding.limit());
    Advice advice = Advice.of("close the valve");
    if (width.isPresent()) {
      advice.cure(Cure.atLeast(key(tower.number(), "cap.gap"), width.getAsDouble(), Show.MM));
    }
    return advice;
  }
}

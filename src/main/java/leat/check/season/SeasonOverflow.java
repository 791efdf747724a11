package leat.check.season;

import leat.check.Verdict;
import leat.quantity.Units;
import leat.season.Goal;
import leat.season.Totals;

/** Rain does not run over. */
final class SeasonOverflow extends SeasonRule {
  SeasonOverflow() {
    super(
        "season-overflow",
        DAYS,
        0,
        Goal.NO_OVERFLOW,
        Verdict.WARN,
        PRACTICE,
        "Days on which rain lifts the tank over its rim: feed runs away, onto a floor that may not like it.");
  }

  @Override
  double value(Totals shown) {
    return Units.D.toBase(shown.counts().overflowDays());
  }
}

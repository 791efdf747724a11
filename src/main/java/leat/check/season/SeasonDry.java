package leat.check.season;

import leat.check.Verdict;
import leat.quantity.Units;
import leat.season.Goal;
import leat.season.Totals;

/** The tank never runs dry while somebody is there. */
final class SeasonDry extends SeasonRule {
  SeasonDry() {
    super(
        "season-dry",
        DAYS,
        0,
        Goal.NEVER_DRY,
        Verdict.FAIL,
        PRACTICE,
        "Days on which the plants' thirst finds no water over the pump's intake, although somebody is there. Roots in a dry tower die within hours of a hot day.");
  }

  @Override
  double value(Totals shown) {
    return Units.D.toBase(shown.counts().dryOutsideAway());
  }
}

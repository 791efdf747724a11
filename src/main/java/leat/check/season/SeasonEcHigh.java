package leat.check.season;

import leat.check.Verdict;
import leat.quantity.Units;
import leat.season.Goal;
import leat.season.Totals;

/** The solution is never long stronger than the target's band. */
final class SeasonEcHigh extends SeasonRule {
  SeasonEcHigh() {
    super(
        "season-ec-high",
        DAYS,
        Units.D.toBase(Goal.EVENINGS_OUTSIDE),
        Goal.EC_NOT_HIGH,
        Verdict.FAIL,
        PRACTICE,
        "Longest run of evenings with an EC over target.ec_high. EC climbs where plants take less salt with a litre than the solution holds; leaves burn at their edges.");
  }

  @Override
  double value(Totals shown) {
    return Units.D.toBase(shown.evenings().above().days());
  }
}

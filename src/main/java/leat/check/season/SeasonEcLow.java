package leat.check.season;

import leat.check.Verdict;
import leat.quantity.Units;
import leat.season.Goal;
import leat.season.Totals;

/** The solution is never long weaker than the target's band. */
final class SeasonEcLow extends SeasonRule {
  SeasonEcLow() {
    super(
        "season-ec-low",
        DAYS,
        Units.D.toBase(Goal.EVENINGS_OUTSIDE),
        Goal.EC_NOT_LOW,
        Verdict.FAIL,
        PRACTICE,
        "Longest run of evenings with an EC under target.ec_low. EC falls where rain gets in, or plants take more salt with a litre than the solution holds.");
  }

  @Override
  double value(Totals shown) {
    return Units.D.toBase(shown.evenings().below().days());
  }
}

package leat.system;

import leat.level.Motion;
import leat.level.Staircase;
import leat.plan.Plan;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.season.Season;
import leat.season.TankPlan;
import leat.season.Totals;
import leat.season.YearRuns;

/**
 * The season of somebody who fills by the sender alone: up to where its top step begins, because
 * above it the sender reads the same.
 *
 * @param litres where the top step begins, L
 * @param totals sums of the shown year, filled so far only
 */
public record SeenFull(double litres, Totals totals) {
  /** What the sender of a plan sees; null without a sender, or when it sees to the full mark. */
  public static SeenFull of(Plan plan, YearRuns runs, Taken taken) {
    if (!SenderOf.isKnown(plan.section("sender"))) {
      return null;
    }
    Staircase stairs = SenderOf.staircase(plan, taken);
    double top = Units.L.fromBase(stairs.volumeLow(stairs.size() - 1, Motion.RISING));
    TankPlan tank = runs.plan();
    if (top >= tank.marks().fullL() || top <= tank.marks().lowL()) {
      return null;
    }
    return new SeenFull(top, Season.totals(tank.full(top), runs.days(), runs.thirst().middle()));
  }
}

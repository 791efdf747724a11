package leat.season;

/**
 * The smallest move of one lever that brings a season to a goal, found by running the season at one
 * handy value after the other: seasons do not answer steadily to their levers, so the first value
 * that does is taken, and it has been run.
 *
 * <p>Source: reruns.
 */
public final class Cure {
  private Cure() {}

  /**
   * The first value that meets the goal.
   *
   * @param plan the tank as it is
   * @param days the days
   * @param thirst factor on all thirst, -
   * @param lever what is moved
   * @param values what to try, nearest first, in the lever's unit
   * @param goal what is wanted
   * @return the value, or null when none meets it
   */
  public static Double first(
      TankPlan plan, SeasonDays days, double thirst, Lever lever, double[] values, Goal goal) {
    for (double value : values) {
      if (goal.met(Season.totals(lever.set(plan, value), days, thirst))) {
        return value;
      }
    }
    return null;
  }

  /**
   * How many plants of one crop may stay.
   *
   * @param plan the tank
   * @param days the days, with all plants
   * @param thirst factor on all thirst, -
   * @param partL that crop's part of the plants' thirst, L a day
   * @param plants how many plants of it there are
   * @param goal what is wanted
   * @return the most plants that meet the goal, fewer than now; null when even none would not
   */
  public static Integer plants(
      TankPlan plan, SeasonDays days, double thirst, double[] partL, int plants, Goal goal) {
    for (int kept = plants - 1; kept >= 0; kept--) {
      SeasonDays fewer = days.withShareOf(partL, (double) kept / plants);
      if (goal.met(Season.totals(plan, fewer, thirst))) {
        return kept;
      }
    }
    return null;
  }
}

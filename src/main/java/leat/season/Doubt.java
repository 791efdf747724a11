package leat.season;

import java.util.ArrayList;
import java.util.List;

/**
 * What a plan of the tank makes doubtful; it is computed all the same.
 *
 * <p>Source: common practice; the reserve follows from the balance (season-balance.csv, SB08 and
 * SB11).
 */
public enum Doubt {
  /** Heel, intake, low, full and rim do not rise in this order. */
  MARKS_OUT_OF_ORDER,
  /** The pump draws air at the low mark or above it: topped up at low, it never would be. */
  LOW_UNDER_INTAKE,
  /** The hottest day drinks more than lies between low mark and intake: it may run dry. */
  RESERVE_UNDER_HOTTEST_DAY,
  /** Filled up while the towers run, it runs over when the pump stops. */
  RUNS_OVER_AT_A_STOP,
  /** The days between changes are longer than the season, with those since the last change. */
  CHANGE_LONGER_THAN_SEASON,
  /** The water alone is stronger than the target. */
  WATER_OVER_TARGET;

  /**
   * The doubts of a season, in the order above.
   *
   * @param plan the tank
   * @param days the days
   * @param thirst factor on all thirst, 1 as it is
   * @return those that hold
   */
  public static List<Doubt> of(TankPlan plan, SeasonDays days, double thirst) {
    List<Doubt> found = new ArrayList<>();
    Marks m = plan.marks();
    if (m.heelL() > m.intakeL()
        || m.intakeL() >= m.lowL()
        || m.lowL() >= m.fullL()
        || m.fullL() > m.rimL()) {
      found.add(MARKS_OUT_OF_ORDER);
    }
    boolean atLow = plan.upkeep().refill().kind() == Refill.Kind.AT_LOW;
    if (atLow && m.lowL() <= m.airL()) {
      found.add(LOW_UNDER_INTAKE);
    } else if (atLow && reserveL(m) < thirst * days.mostThirstL()) {
      found.add(RESERVE_UNDER_HOTTEST_DAY);
    }
    if (m.fullL() <= m.rimL() && overL(m) > 0) {
      found.add(RUNS_OVER_AT_A_STOP);
    }
    if (plan.upkeep().changeDays() >= days.length() - plan.since().changedDay()) {
      found.add(CHANGE_LONGER_THAN_SEASON);
    }
    if (plan.feeding().waterEcMsCm() > plan.feeding().targetMsCm()) {
      found.add(WATER_OVER_TARGET);
    }
    return found;
  }

  /** What runs over at a stop when the tank was filled up with the towers running, L. */
  public static double overL(Marks marks) {
    return Math.max(0, marks.fullL() + marks.heldL() - marks.rimL());
  }

  /** What can be drunk between the low mark and the pump drawing air, L. */
  public static double reserveL(Marks marks) {
    return Math.max(0, marks.lowL() - marks.airL());
  }
}

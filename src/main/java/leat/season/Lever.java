package leat.season;

/** What of a tank's plan can be moved to mend a season. */
public enum Lever {
  /** The full mark, L; rim and lower marks stay. */
  FULL,
  /** The tank: its full mark, L, the rim moving with it. */
  TANK,
  /** The low mark, L. */
  LOW,
  /** The target EC, mS/cm. */
  TARGET,
  /** The EC above which a top-up drains first, mS/cm. */
  DILUTE_ABOVE,
  /** The EC under which concentrate alone is poured, mS/cm. */
  DOSE_BELOW,
  /** Whole days between changes. */
  CHANGE_DAYS,
  /** Whole days between top-ups, whatever the volume. */
  REFILL_DAYS;

  /**
   * The plan with this moved.
   *
   * @param plan the plan
   * @param value the new value, in the lever's unit
   */
  public TankPlan set(TankPlan plan, double value) {
    switch (this) {
      case FULL:
        return plan.full(value);
      case TANK:
        return plan.tank(value);
      case LOW:
        return plan.low(value);
      case TARGET:
        return plan.target(value);
      case DILUTE_ABOVE:
        return plan.upkeep(plan.upkeep().diluteAbove(value));
      case DOSE_BELOW:
        return plan.upkeep(plan.upkeep().doseBelow(value));
      case CHANGE_DAYS:
        return plan.upkeep(plan.upkeep().changeDays((int) value));
      default:
        return plan.upkeep(plan.upkeep().refill(Refill.every((int) value)));
    }
  }
}

package leat.season;

/**
 * One day of the tank: rain, what runs over, thirst, then the evening's service.
 *
 * <p>Source: mass balance of water and salt; EC adds by volume, good to a few per cent at 0.5 to 3
 * mS/cm (common practice). Check values: season-balance-daily.csv, season-rain.csv.
 */
public final class TankDay {
  private TankDay() {}

  /**
   * A day and the state after it.
   *
   * @param row what happened
   * @param state what the next day starts from
   */
  public record Step(DayRow row, TankState state) {}

  /** The day that follows {@code state}. */
  public static Step next(TankPlan plan, TankState state, DayInput input) {
    Machine machine = new Machine(plan, state);
    machine.day(input.plantsL(), input.openL(), input.rainMm(), input.attendance());
    return new Step(machine.row(), machine.state());
  }
}

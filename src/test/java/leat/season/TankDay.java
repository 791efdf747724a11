package leat.season;

/** One day of the {@link Machine} as a function of records, so that a day can be told alone. */
final class TankDay {
  private TankDay() {}

  /**
   * A day and the state after it.
   *
   * @param row what happened
   * @param state what the next day starts from
   */
  record Step(DayRow row, TankState state) {}

  /** The day that follows {@code state}. */
  static Step next(TankPlan plan, TankState state, DayInput input) {
    Machine machine = new Machine(plan, state);
    machine.day(input.plantsL(), input.openL(), input.rainMm(), input.attendance());
    return new Step(machine.row(), machine.state());
  }
}

package leat.season;

/**
 * What a day brings.
 *
 * @param plantsL what the plants would drink, L
 * @param openL what open water would lose, L
 * @param rainMm rain as a gauge shows it, mm
 * @param attendance who looks after the tank in the evening
 */
record DayInput(double plantsL, double openL, double rainMm, Attendance attendance) {
  /** Day {@code t} of a season. */
  static DayInput of(SeasonDays days, int t) {
    return new DayInput(days.plantsL(t), days.openL(t), days.rainMm(t), days.attendance(t));
  }
}

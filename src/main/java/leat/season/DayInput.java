package leat.season;

/**
 * What a day brings.
 *
 * @param plantsL what the plants would drink, L
 * @param openL what open water would lose, L
 * @param rainMm rain as a gauge shows it, mm
 * @param attendance who looks after the tank in the evening
 */
public record DayInput(double plantsL, double openL, double rainMm, Attendance attendance) {
  /**
   * @throws leat.numeric.Impossible if a number is negative or absurd
   */
  public DayInput {
    Accepted.litres("plants", plantsL);
    Accepted.litres("open", openL);
    Accepted.rain(rainMm);
  }
}

package leat.season;

import leat.numeric.Impossible;

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
   * @throws Impossible if a number is negative or not finite
   */
  public DayInput {
    Impossible.ifNegative("plants", plantsL);
    Impossible.ifNegative("open", openL);
    Impossible.ifNegative("rain", rainMm);
  }
}

package leat.log;

/**
 * What happens to a tank and its sensors.
 *
 * <p>Source: sheet log.md section 3.
 */
public enum EventKind {
  /** Poured in. */
  REFILL("refill"),
  /** Emptied by the keeper and filled anew. */
  SOLUTION_CHANGE("solution_change"),
  /** Rain caught. */
  RAIN("rain"),
  /** Water lost quicker than plants drink. */
  LEAK("leak"),
  /** No water at the cap. */
  PUMP_FAILURE("pump_failure"),
  /** The float does not follow. */
  STUCK_FLOAT("stuck_float"),
  /** Broken wire. */
  SENSOR_OPEN("sensor_open"),
  /** Shorted wire. */
  SENSOR_SHORT("sensor_short"),
  /** No rows. */
  GAP("gap");

  private final String word;

  EventKind(String word) {
    this.word = word;
  }

  /** As it is printed. */
  public String word() {
    return word;
  }
}

package leat.log;

/**
 * Something that is wrong now and wants somebody.
 *
 * <p>Source: sheet log.md sections 3 and 5.
 *
 * @param kind what
 * @param opened when it became certain, ms of Unix time
 * @param since when it began, ms of Unix time
 * @param cause why, empty when there is nothing to say
 */
public record LogAlarm(Kind kind, long opened, long since, String cause) {
  /** Alarms. */
  public enum Kind {
    /** The cap is dry for longer than the plan allows. */
    NO_WATER_AT_CAP("no-water-at-cap"),
    /** The tank loses water. */
    LEAK("leak"),
    /** The sender's wire is broken. */
    SENSOR_OPEN("sensor-open"),
    /** The sender's wire is shorted. */
    SENSOR_SHORT("sensor-short"),
    /** The float does not follow. */
    STUCK_FLOAT("stuck-float"),
    /** Below the refill mark. */
    BELOW_LOW("below-low"),
    /** Fewer days left than asked for. */
    DAYS_LEFT("days-left"),
    /** EC out of its band. */
    EC_OUT_OF_BAND("ec-out-of-band"),
    /** No new rows. */
    LOG_SILENT("log-silent");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** As it is printed. */
    public String word() {
      return word;
    }
  }
}

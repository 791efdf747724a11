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
  /**
   * An alarm is told when it opened after the last look, or so little before it that its row may
   * not have been judged then: a step at rest waits for the hour that follows. ms.
   */
  private static final long OVERLAP_MS = 3_600_000;

  /**
   * The moment from which so few days were left is reckoned backwards, and a day's use moves it: so
   * much more is allowed, ms. Common practice, no source.
   */
  private static final long RECKONED_MS = 86_400_000;

  /** Cause of a silent log whose rows go on without a reading of the sender. */
  static final String NO_READING = "rows without a reading";

  /**
   * Whether it may be new to somebody who looked last at a moment.
   *
   * @param since the last look, ms of Unix time
   */
  public boolean isNewSince(long since) {
    return opened > since - (kind == Kind.DAYS_LEFT ? RECKONED_MS : OVERLAP_MS);
  }

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
    /** No new rows, or rows without a reading. */
    LOG_SILENT("log-silent");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** As it is printed. */
    public String word() {
      return word;
    }

    /** Whether nobody knows the level while it is open. */
    public boolean hidesLevel() {
      return this == SENSOR_OPEN
          || this == SENSOR_SHORT
          || this == STUCK_FLOAT
          || this == LOG_SILENT;
    }
  }
}

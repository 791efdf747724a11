package leat.log;

/** What was counted on the way. */
final class LogCounts {
  long rows;
  long late;
  long tooLate;
  long duplicates;
  long clockNotSet;
  long badReadings;

  /** Readings of the sender that are there at all. */
  long readings;

  /** Of these, such as would belong to a step if they were kilo-ohm. */
  long kiloOhm;

  /** The last of them, as it was read. */
  double lastKiloOhm = Double.NaN;

  long first = Long.MIN_VALUE;
  long last = Long.MIN_VALUE;
}

package leat.log;

/** What was counted on the way. */
final class LogCounts {
  long rows;
  long late;
  long tooLate;
  long duplicates;
  long clockNotSet;
  long badReadings;
  long first = Long.MIN_VALUE;
  long last = Long.MIN_VALUE;
}

package leat.log;

/** A rise of the level by hand, as the raw rows show it. */
final class Pour {
  /** Last row before the rise, ms. */
  long start;

  /** The row at the top, ms. */
  long end;

  int fromStep;
  int toStep;

  /** Volume after it as it was told first, m3. */
  double after;

  /** Begin of the emptying before it, ms; {@link Long#MIN_VALUE} for a plain refill. */
  long emptiedFrom = Long.MIN_VALUE;

  boolean acrossGap;

  /** Its event; null when it was none. */
  LogEvent event;
}

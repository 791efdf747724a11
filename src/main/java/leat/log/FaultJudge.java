package leat.log;

/**
 * A broken or shorted wire: two rows or more within a time, never a single one.
 *
 * <p>Source: sheet log.md; the count is our own, no source.
 */
final class FaultJudge {
  /** Good rows between two faulty ones: with more, both were single rows. Common practice. */
  private static final int MOST_BETWEEN = 4;

  private final EventKind kind;
  private final int word;
  private final EventBook events;
  private final Interval interval;
  private final LogLimits limits;
  private long last = Long.MIN_VALUE;
  private int between;
  private LogEvent event;

  FaultJudge(EventKind kind, int word, EventBook events, Interval interval, LogLimits limits) {
    this.kind = kind;
    this.word = word;
    this.events = events;
    this.interval = interval;
    this.limits = limits;
  }

  void row(LogRow row) {
    if (row.step == word) {
      fault(row.time);
    } else if (row.step >= 0) {
      between++;
      if (event != null) {
        event.open = false;
      }
    }
  }

  private void fault(long time) {
    double window = Math.max(limits.faultS() * 1000, limits.gapIntervals() * interval.millis());
    if (last != Long.MIN_VALUE && time - last <= window && between <= MOST_BETWEEN) {
      if (event == null) {
        event = events.add(kind, last, time);
      }
      event.end = time;
      event.open = true;
      events.doubt(event);
    } else {
      event = null;
    }
    last = time;
    between = 0;
  }

  void gap() {
    if (event != null) {
      event.open = false;
      event = null;
    }
    last = Long.MIN_VALUE;
  }
}

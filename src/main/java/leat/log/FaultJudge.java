package leat.log;

/** A broken or shorted wire: two rows or more within a time, never a single one. */
final class FaultJudge {
  private final EventKind kind;
  private final int word;
  private final EventBook events;
  private final Interval interval;
  private final LogLimits limits;
  private long last = Long.MIN_VALUE;
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
    } else if (event != null && row.step >= 0) {
      event.open = false;
    }
  }

  private void fault(long time) {
    double window = Math.max(limits.faultS() * 1000, limits.gapIntervals() * interval.millis());
    if (last != Long.MIN_VALUE && time - last <= window) {
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
  }

  void gap() {
    if (event != null) {
      event.open = false;
      event = null;
    }
    last = Long.MIN_VALUE;
  }
}

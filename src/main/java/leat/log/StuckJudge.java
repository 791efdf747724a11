package leat.log;

/**
 * A float that does not follow while thirst should have moved it.
 *
 * <p>Source: sheet log.md; the time is our own, no source.
 */
final class StuckJudge {
  /** A float is looked at so often, ms: thirst is slow. */
  private static final long LOOK = 30 * 60_000;

  private final LogLimits limits;
  private final StepVolumes volumes;
  private final EventBook events;
  private final UseBook book;
  private int run = StepReader.BLANK;
  private long since;
  private long last;
  private long looked;
  private double rain;
  private LogEvent event;
  private long released = Long.MIN_VALUE;

  StuckJudge(LogLimits limits, StepVolumes volumes, EventBook events, UseBook book) {
    this.limits = limits;
    this.volumes = volumes;
    this.events = events;
    this.book = book;
  }

  void row(LogRow row, double rained) {
    rain += rained;
    if (row.step < 0) {
      return;
    }
    if (row.step == run) {
      still(row);
    } else {
      moved(row);
    }
    last = row.time;
  }

  private void still(LogRow row) {
    if (event == null && run > 0 && row.time - looked >= LOOK) {
      looked = row.time;
      if (missed(row.time) > limits.stuckSteps()) {
        event = events.add(EventKind.STUCK_FLOAT, since, row.time);
      }
    }
    if (event != null) {
      event.end = row.time;
      event.open = true;
      events.doubt(event);
    }
  }

  private void moved(LogRow row) {
    boolean jump = run - row.step >= limits.stuckJump();
    if (event == null && run > 0 && jump && missed(last) > limits.stuckJumpSteps()) {
      event = events.add(EventKind.STUCK_FLOAT, since, last);
      event.told = row.time;
      events.doubt(event);
    }
    if (event != null) {
      event.open = false;
      released = last;
      event = null;
    }
    run = row.step;
    since = row.time;
    rain = 0;
  }

  /** Mean steps that thirst should have taken since the float stopped. */
  private double missed(long now) {
    double expected = book.expected(since, now) - rain;
    if (run == volumes.top()) {
      double end = volumes.topIsOverfull() ? volumes.rim() : volumes.full();
      expected -= Math.max(0, end - volumes.rising(run));
    }
    return expected / volumes.meanStep();
  }

  /** Whether a float came free at or after a moment. */
  boolean releasedSince(long time) {
    return released != Long.MIN_VALUE && released >= time;
  }

  void gap() {
    if (event != null) {
      event.open = false;
      event = null;
    }
    run = StepReader.BLANK;
  }
}

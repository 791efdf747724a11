package leat.log;

/**
 * Rain of a log without a rain column: the step at rest rises slower than a refill, and the EC
 * falls. A can too small for the threshold of a refill thins the solution, too: it comes by two
 * steps at once, or where no rain can fall.
 *
 * <p>Source: sheet log.md; the wait and the can are our own, no source.
 */
final class RiseJudge {
  /** Steps of a rise that no rain brings within {@link #CAN}. Common practice, no source. */
  private static final int CAN_STEPS = 2;

  /** Time in which a can is poured, ms. Common practice, no source. */
  private static final long CAN = 20 * 60_000;

  /** The watch looks at the EC every ten minutes: twice that, ms. */
  private static final long LEAST_WAIT = 20 * 60_000;

  private final LogLimits limits;
  private final StepVolumes volumes;
  private final EventBook events;
  private final Interval interval;
  private final boolean roofed;
  private boolean hasColumn;
  private long start = Long.MIN_VALUE;
  private long end;
  private int fromStep;
  private int toStep;
  private double ecBefore;
  private LogEvent event;

  RiseJudge(
      LogLimits limits,
      LogSystem system,
      StepVolumes volumes,
      EventBook events,
      Interval interval) {
    this.limits = limits;
    this.roofed = system.isRoofed();
    this.volumes = volumes;
    this.events = events;
    this.interval = interval;
  }

  /** A step at rest rose, by no pouring. */
  void rise(long before, long now, int from, int to, double ec) {
    if (start != Long.MIN_VALUE && now - end > limits.rainJoinS() * 1000) {
      drop();
    }
    if (start == Long.MIN_VALUE) {
      start = before;
      fromStep = from;
      ecBefore = ec;
    }
    end = now;
    toStep = to;
  }

  /** Each row: decides once the rows after the rise say the EC. */
  void row(LogRow row, double ec) {
    hasColumn |= row.rain == row.rain;
    long wait = Math.max(LEAST_WAIT, (limits.ecRows() + 1) * interval.millis());
    if (start == Long.MIN_VALUE || row.time - end < wait) {
      return;
    }
    if (!hasColumn && ecBefore - ec >= limits.rainEcFall()) {
      tell(row.time);
    }
    drop();
  }

  private void tell(long now) {
    double more = volumes.rising(toStep) - volumes.rising(fromStep);
    EventKind kind = isCan() ? EventKind.REFILL : EventKind.RAIN;
    if (event == null || event.kind() != kind || start - event.end > limits.rainJoinS() * 1000) {
      event = events.add(kind, start, end);
      event.told = now;
      event.volume = 0;
    }
    event.end = end;
    event.volume += more;
    event.volumeLow = Math.max(0, event.volume - volumes.meanStep());
    event.volumeHigh = event.volume + volumes.meanStep();
    events.cameIn(kind, start, more);
  }

  private boolean isCan() {
    return roofed || toStep - fromStep >= CAN_STEPS && end - start <= CAN;
  }

  /** A pouring, a fault or a gap explains the rise. */
  void drop() {
    start = Long.MIN_VALUE;
  }
}

package leat.log;

/** Falls in succession, each quicker than thirst explains. */
final class LeakJudge {
  private static final int FALLS = 2;

  private final LogLimits limits;
  private final double meanStep;
  private final EventBook events;
  private final UseBook book;
  private int falls;
  private double excess;
  private long start;
  private long end = Long.MIN_VALUE;
  private LogEvent event;

  LeakJudge(LogLimits limits, StepVolumes volumes, EventBook events, UseBook book) {
    this.limits = limits;
    this.meanStep = volumes.meanStep();
    this.events = events;
    this.book = book;
  }

  /**
   * One fall, from edge to edge.
   *
   * @return whether it was quicker than thirst explains
   */
  boolean fall(long from, long to, double lost, int steps) {
    double expected = book.expectedAtMost(from, to);
    boolean quick = lost > limits.leakFactor() * expected;
    if (!quick) {
      close();
      return false;
    }
    if (falls == 0 || from - end > limits.leakJoinS() * 1000) {
      close();
      start = from;
    }
    falls += steps;
    excess += lost - expected;
    end = to;
    if (falls >= FALLS && excess >= limits.leakSteps() * meanStep) {
      tell();
    }
    return true;
  }

  private void tell() {
    if (event == null) {
      event = events.add(EventKind.LEAK, start, end);
    }
    event.end = end;
    event.open = true;
    event.volume = excess;
    event.volumeLow = Math.max(0, excess - meanStep);
    event.volumeHigh = excess + meanStep;
    events.doubt(event);
  }

  /** Whether falls in succession are being counted. */
  boolean isCounting() {
    return falls > 0;
  }

  /** The falls have ended, or what follows is no fall of its own. */
  void close() {
    if (event != null) {
      event.open = false;
    }
    event = null;
    falls = 0;
    excess = 0;
  }

  /** A change of solution takes a leak back that was only its emptying. */
  void change(long from) {
    if (event != null && event.start() >= from - 3_600_000) {
      events.remove(event);
      event = null;
    }
    close();
  }

  /** At the end of the log a leak is open while the fall under way may still be a quick one. */
  void finish(long now) {
    if (event != null && limits.leakFactor() * book.expected(end, now) > meanStep) {
      event.open = false;
    }
  }
}

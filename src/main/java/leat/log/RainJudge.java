package leat.log;

/** Rain of the log's own column: parts close together are one. */
final class RainJudge {
  private static final double M_IN_MM = 1000;

  private final LogLimits limits;
  private final double area;
  private final double least;
  private final EventBook events;
  private long start = Long.MIN_VALUE;
  private long last = Long.MIN_VALUE;
  private double mm;
  private LogEvent event;

  RainJudge(LogLimits limits, LogSystem system, StepVolumes volumes, EventBook events) {
    this.limits = limits;
    this.area = system.rainArea() > 0 ? system.rainArea() : 0;
    this.least = limits.rainLeastSteps() * volumes.meanStep();
    this.events = events;
  }

  /** Volume that a row's rain brought, m3. */
  double row(LogRow row, long before) {
    if (!(row.rain > 0)) {
      return 0;
    }
    if (last == Long.MIN_VALUE || row.time - last > limits.rainJoinS() * 1000) {
      start = before;
      mm = 0;
      event = null;
    }
    last = row.time;
    mm += row.rain;
    double volume = mm / M_IN_MM * area;
    if (event == null && volume >= least) {
      event = events.add(EventKind.RAIN, start, row.time);
    }
    if (event != null) {
      event.end = row.time;
      event.mm = mm;
      event.volume = volume;
      event.volumeLow = volume;
      event.volumeHigh = volume;
    }
    return row.rain / M_IN_MM * area;
  }

  /** Whether it rained a short time ago, so that a rise is no pouring. */
  boolean isRecent(long time) {
    return last != Long.MIN_VALUE && time - last <= limits.rainJoinS() * 1000;
  }
}

package leat.log;

import leat.level.CapSensor;

/**
 * No water at the cap: dry for longer than the plan allows.
 *
 * <p>Source: sheet log.md; the times are our own, no source.
 */
final class CapJudge {
  private static final double LEAST_DRYNESS = -0.25;
  private static final double MOST_DRYNESS = 1.25;

  /** Dips seen while the cap is dry that tell of a dry sensor rather than a dead pump. */
  private static final int DIPS = 2;

  /** The cap is still dry for a while after a change of solution, ms. Common practice. */
  private static final long AFTER_CHANGE = 90 * 60_000;

  private final LogLimits limits;
  private final LogSystem system;
  private final EventBook events;
  private final Interval interval;
  private final int intakeStep;
  private long lastWet = Long.MIN_VALUE;
  private LogEvent event;
  private int dips;
  private boolean low;
  private long changeFrom = Long.MAX_VALUE;
  private long changeTo = Long.MIN_VALUE;

  /** Lowest and highest counts seen wet while the pump runs, and in a failure. */
  private double wetCounts = Double.NaN;

  private double dryCounts = Double.NaN;

  CapJudge(
      LogLimits limits,
      LogSystem system,
      StepVolumes volumes,
      EventBook events,
      Interval interval) {
    this.limits = limits;
    this.system = system;
    this.events = events;
    this.interval = interval;
    this.intakeStep = system.intake() > 0 ? volumes.stepOf(system.intake()) : 0;
  }

  private double dryness(double counts) {
    return dryness(counts, system);
  }

  private static double dryness(double counts, LogSystem system) {
    double d = system.cap() == null ? Double.NaN : system.cap().dryness(counts);
    return d >= LEAST_DRYNESS && d <= MOST_DRYNESS ? d : Double.NaN;
  }

  /** Whether counts can come from the cap's sensor; without its ends in the plan any can. */
  static boolean isCounts(double counts, LogSystem system) {
    double d = system.cap() == null ? counts : dryness(counts, system);
    return d - d == 0;
  }

  /** A change of solution, or an emptying that may become one: dry meanwhile is no failure. */
  void change(long from, long to) {
    changeFrom = from;
    changeTo = to;
  }

  void row(LogRow row) {
    double d = dryness(row.cap);
    if (d != d) {
      return;
    }
    if (d <= limits.dryShare()) {
      wet(row, d);
      return;
    }
    if (lastWet == Long.MIN_VALUE) {
      lastWet = row.time;
    }
    double longest = system.dryLimitS() * 1000 + limits.dryIntervals() * interval.millis();
    if (event == null && row.time - lastWet > longest && !excused(row.time)) {
      event = events.add(EventKind.PUMP_FAILURE, lastWet, row.time);
    }
    if (event != null) {
      dry(row);
    }
  }

  private boolean excused(long time) {
    return lastWet >= changeFrom - AFTER_CHANGE && time <= changeTo + AFTER_CHANGE;
  }

  private void wet(LogRow row, double dryness) {
    if (row.pumpOn() && dryness < CapSensor.WET_UNDER) {
      wetCounts = wetCounts == wetCounts ? wetCounts + (row.cap - wetCounts) / 32 : row.cap;
    }
    lastWet = row.time;
    if (event != null) {
      event.end = row.time;
      close();
    }
  }

  private void dry(LogRow row) {
    event.end = row.time;
    event.open = true;
    dryCounts = dryCounts == dryCounts ? dryCounts + (row.cap - dryCounts) / 32 : row.cap;
    dips += row.pumpOn() && row.step >= 0 && row.step < row.rest ? 1 : 0;
    low |= row.step >= 0 && row.step <= intakeStep;
    name();
    if (event.end - event.start() > limits.wiltS() * 1000) {
      events.doubt(event);
    }
  }

  private void name() {
    if (low) {
      event.cause = LogEvent.PUMP_DREW_AIR;
    } else if (dips >= DIPS) {
      event.cause = LogEvent.CAP_SENSOR_DRY;
    } else {
      event.cause = LogEvent.PUMP_DEAD;
    }
  }

  private void close() {
    event.open = false;
    event = null;
    dips = 0;
    low = false;
  }

  /** Whether no water comes to the cap now, whatever the cause. */
  boolean isFailing() {
    return event != null;
  }

  /** Whether the pump lifts nothing now. */
  boolean isDead() {
    return event != null && event.cause.equals(LogEvent.PUMP_DEAD);
  }

  double wetCounts() {
    return wetCounts;
  }

  double dryCounts() {
    return dryCounts;
  }

  void gap() {
    if (event != null) {
      close();
    }
    lastWet = Long.MIN_VALUE;
  }
}

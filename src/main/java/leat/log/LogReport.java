package leat.log;

import java.util.ArrayList;
import java.util.List;

/**
 * What a log says: counts, the volume now, use, days left, events, days, alarms, and what it
 * teaches the plan.
 *
 * <p>Source: sheet log.md.
 */
public final class LogReport {
  private static final double DAY_MS = 86_400_000.0;

  /**
   * Share of readings off all steps that is more than poor contacts. Common practice, no source.
   */
  private static final double MOST_ODD = 0.2;

  /** Fewer readings say nothing of their unit. Common practice, no source. */
  private static final int LEAST_KILO_OHM = 3;

  private final LogSystem system;
  private final LogLimits limits;
  private final LogCounts counts;
  private final long interval;
  private final StepVolumes volumes;
  private final Judge judge;
  private final List<LogEvent> events;
  private final UseMean use;

  LogReport(
      LogSystem system,
      LogLimits limits,
      LogCounts counts,
      long interval,
      StepVolumes volumes,
      Judge judge) {
    this.system = system;
    this.limits = limits;
    this.counts = counts;
    this.interval = interval;
    this.volumes = volumes;
    this.judge = judge;
    this.events = judge.events.sorted();
    if (isKiloOhm()) {
      nameShorts();
    }
    double[] uses = judge.days.lastUses();
    this.use = uses.length >= limits.useLeastDays() ? UseMean.of(uses) : null;
  }

  /** Rows taken in. */
  public long rows() {
    return counts.rows;
  }

  /** Rows that came after a newer one. */
  public long lateRows() {
    return counts.late;
  }

  /** Of these, rows too late to be put in order: dropped. */
  public long tooLateRows() {
    return counts.tooLate;
  }

  /** Rows dropped because another one had their instant. */
  public long duplicates() {
    return counts.duplicates;
  }

  /** Rows of a clock that was not set. */
  public long clockNotSet() {
    return counts.clockNotSet;
  }

  /** Readings of the sender that belong to no step. */
  public long badReadings() {
    return counts.badReadings;
  }

  /** Whether any row was left to judge. */
  public boolean isEmpty() {
    return counts.last == Long.MIN_VALUE;
  }

  /** Oldest row, ms of Unix time. */
  public long first() {
    return counts.first;
  }

  /** Newest row, ms of Unix time. */
  public long last() {
    return counts.last;
  }

  /** Median time between rows, ms; 0 with a single row. */
  public long interval() {
    return interval;
  }

  /** Events in the order of their starts. */
  public List<LogEvent> events() {
    return events;
  }

  /** Number of events of a kind. */
  public int count(EventKind kind) {
    int n = 0;
    for (int i = 0; i < events.size(); i++) {
      n += events.get(i).kind() == kind ? 1 : 0;
    }
    return n;
  }

  /** Local dates of the log. */
  public List<LogDay> days() {
    return judge.days.days();
  }

  /** Whether a step was ever read, so that there is a volume. */
  public boolean hasVolume() {
    return judge.rest() >= 0;
  }

  /** Volume now by the edges, m3. */
  public double volume() {
    return judge.book.volumeAt(last(), judge.rest());
  }

  /** Low end of the band it lies in, m3. */
  public double volumeLow() {
    return Math.min(judge.book.bandLow(last(), judge.rest()), volume());
  }

  /** High end of it, m3. */
  public double volumeHigh() {
    return judge.book.bandHigh(last(), judge.rest());
  }

  /** Mean volume of a step of the sender, m3. */
  public double meanStep() {
    return volumes.meanStep();
  }

  /** Median EC of the last rows, mS/cm; NaN when unknown. */
  public double ec() {
    return judge.watch.ec();
  }

  /** Use of the last sure days; null when too few. */
  public UseMean use() {
    return use;
  }

  /** Days until the refill mark; null without a volume, a mark or enough days. */
  public DaysLeft daysLeft() {
    if (use == null || !hasVolume() || !(system.low() >= 0) || !(use.mean() > 0)) {
      return null;
    }
    double band = volumeHigh() - volumeLow();
    return DaysLeft.of(volume(), band, system.low(), use.mean(), use.sd(), use.n());
  }

  /**
   * Local date of the next can, days since 1970: the low end of the days left, or the day before
   * when that comes before the keeper's hour; never before today.
   *
   * @throws leat.numeric.Impossible if {@link #daysLeft} is null
   */
  public long topupBy() {
    DaysLeft left = daysLeft();
    if (left == null) {
      throw new leat.numeric.Impossible("days_left", "the log is too short to say");
    }
    return TopupDay.of(last(), left.low(), system);
  }

  /** Local date so many days after the newest row, days since 1970. */
  public long dateAfter(double days) {
    return new LocalClock(system.zone()).day(last() + Math.round(days * DAY_MS));
  }

  /** Local date of a moment, days since 1970. */
  public long dateOf(long millis) {
    return new LocalClock(system.zone()).day(millis);
  }

  /** Moment so many days before the newest row, ms of Unix time. */
  public long daysBefore(int days) {
    return last() - days * Math.round(DAY_MS);
  }

  /**
   * Fall of the level by the dip, from where the tank stands now, m; NaN without a dip.
   *
   * @param tank the tank
   */
  public double dipLevel(leat.level.Tank tank) {
    double dip = lessons().dip();
    if (dip != dip || !hasVolume() || dip > volume()) {
      return Double.NaN;
    }
    return tank.level(volume()) - tank.level(volume() - dip);
  }

  /**
   * Hysteresis of a sender whose plan has none, from the litres that a run keeps up and the part of
   * their dip that is not seen, m; NaN where the plan does not say what a run keeps up.
   *
   * @param tank the tank
   */
  public double hysteresisLevel(leat.level.Tank tank) {
    double unseen = lessons().hysteresis();
    if (!(unseen > 0) || !hasVolume() || unseen > volume()) {
      return Double.NaN;
    }
    return tank.level(volume()) - tank.level(volume() - unseen);
  }

  /** Whether the top step is read, above which the sender is blind. */
  public boolean isBlind() {
    return hasVolume() && judge.rest() == volumes.top();
  }

  /** Whether so many readings belong to no step that they are hardly those of the plan's sender. */
  public boolean isOtherSender() {
    return counts.badReadings > MOST_ODD * counts.rows;
  }

  /** Whether nearly all readings belong to a step of the sender once they are taken as kilo-ohm. */
  public boolean isKiloOhm() {
    return counts.kiloOhm >= LEAST_KILO_OHM && counts.kiloOhm >= (1 - MOST_ODD) * counts.readings;
  }

  /** The last reading that is a step in kilo-ohm, as it was read; NaN without one. */
  public double kiloOhm() {
    return counts.lastKiloOhm;
  }

  /** The same reading taken as kilo-ohm, ohm. */
  public double kiloOhmInOhm() {
    return StepReader.OHM_IN_KILO_OHM * counts.lastKiloOhm;
  }

  private void nameShorts() {
    for (int i = 0; i < events.size(); i++) {
      LogEvent e = events.get(i);
      e.cause = e.kind() == EventKind.SENSOR_SHORT ? LogEvent.KILO_OHM : e.cause;
    }
  }

  /** Mean use of each weekday, Monday first; null where there is no sure day. */
  public UseMean[] weekdays() {
    return Weekdays.means(days());
  }

  /**
   * Whether a weekday's use differs from that of all sure days.
   *
   * @param weekday 0 Monday to 6 Sunday
   */
  public boolean differs(int weekday) {
    return Weekdays.differs(days(), weekday, limits.weekdayDays());
  }

  /** What it teaches the plan. */
  public LogLessons lessons() {
    return LogLessons.of(judge, volumes, system, events);
  }

  /**
   * Alarms open now.
   *
   * @param now the clock, ms of Unix time
   * @param daysAsked alarm when fewer days are left, d; NaN for none
   */
  public List<LogAlarm> alarms(long now, double daysAsked) {
    return new Alarms(this, judge, limits).open(now, daysAsked);
  }

  /** Moment at which so many days were left, ms, by the mean use; not before the last pouring. */
  long whenLeft(double daysAsked, double left) {
    long at = last() - (long) ((daysAsked - left) * DAY_MS);
    long poured = first();
    for (int i = 0; i < events.size(); i++) {
      LogEvent e = events.get(i);
      boolean pour = e.kind() == EventKind.REFILL || e.kind() == EventKind.SOLUTION_CHANGE;
      poured = pour ? e.end() : poured;
    }
    return Math.max(at, poured);
  }

  /** An empty list to fill. */
  static List<LogAlarm> none() {
    return new ArrayList<>();
  }
}

package leat.log;

/**
 * One pass over a log: rows in, in the order of the files, then the report. Memory grows with days
 * and events only.
 *
 * <pre>
 * LogPass pass = new LogPass(system, LogLimits.DEFAULT);
 * pass.accept(row) ...          (the row is copied, use it again)
 * LogReport report = pass.finish();</pre>
 *
 * <p>Source: sheet log.md.
 */
public final class LogPass {
  private final LogSystem system;
  private final LogLimits limits;
  private final LogCounts counts = new LogCounts();
  private final Interval interval = new Interval();
  private final StepVolumes volumes;
  private final Judge judge;
  private final RestStage rest;
  private final RowOrder order;

  /**
   * A pass without a view of single rows.
   *
   * @throws leat.numeric.Impossible if two steps cannot be told apart within the tolerance
   */
  public LogPass(LogSystem system, LogLimits limits) {
    this(system, limits, null);
  }

  /**
   * A pass.
   *
   * @param system what the log is read against
   * @param limits thresholds
   * @param sink gets every row in order, or null
   * @throws leat.numeric.Impossible if two steps cannot be told apart within the tolerance
   */
  public LogPass(LogSystem system, LogLimits limits, RowSink sink) {
    this.system = system;
    this.limits = limits;
    StepReader reader = new StepReader(system.sender(), system.divider());
    volumes = new StepVolumes(system);
    PourFinder pours = new PourFinder(limits, system, volumes);
    judge = new Judge(system, limits, volumes, pours, interval, counts, sink);
    rest = new RestStage(limits, reader, pours, judge, counts, interval);
    order = new RowOrder(limits, rest, counts);
  }

  /** Takes a row in. Times before 2000 are dropped and counted. */
  public void accept(LogRow row) {
    counts.rows++;
    if (row.time < LogTimes.YEAR_2000 * 1000) {
      counts.clockNotSet++;
      return;
    }
    order.take(row);
  }

  /** The end of the log. Call it once. */
  public LogReport finish() {
    order.finish();
    rest.finish();
    judge.finish();
    return new LogReport(system, limits, counts, interval.millis(), volumes, judge);
  }
}

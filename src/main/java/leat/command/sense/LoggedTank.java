package leat.command.sense;

import java.time.LocalDate;
import java.util.Arrays;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.log.EventKind;
import leat.log.LogAlarm;
import leat.log.LogEvent;
import leat.log.LogReport;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.season.Calibration;
import leat.system.SeasonOf;

/** What a log says is in the tank now, for commands that go on from there. */
public final class LoggedTank {
  /** Files of the log, in order. */
  public static final Flag LOG =
      Flag.of(
              "--log",
              "FILE",
              Kind.TEXT,
              "readings.csv",
              "goes on from what a logger's rows say, as leat log reads them; several in order")
          .repeatable();

  /** The clock: without it a log that fell silent is not seen. */
  public static final Flag NOW = LogStory.now().belongsTo("--log");

  private static final Column READ_AT = Column.plain("read_at", "newest reading");
  private static final Column EC = Column.of("ec_mS_cm", "EC", Show.MS_CM);
  private static final Column READ_ON = Column.plain("read_on", "read on");

  private final LogReport report;
  private final LogDates dates;
  private final boolean ecTyped;

  private LoggedTank(LogReport report, LogDates dates, boolean ecTyped) {
    this.report = report;
    this.dates = dates;
    this.ecTyped = ecTyped;
  }

  /** Whether a call names a log. */
  public static boolean isNamed(Call call) {
    return call.has("--log");
  }

  /**
   * The newest sure reading of the log that a call names.
   *
   * @param ecTyped whether the call tells the EC itself
   * @throws Refused when the sender is broken, stuck or silent now, or never read a level
   */
  public static LoggedTank of(Call call, boolean ecTyped) {
    if (!call.hasPlan() && !call.has("--set")) {
      throw new Refused(CommandErrors.neededPlan(call.command));
    }
    LogInput input = new LogInput(call, null);
    LogReport report = input.read(call.texts("--log"), null);
    LogDates dates = new LogDates(input.system().zone());
    String file = call.texts("--log").get(call.texts("--log").size() - 1);
    if (!report.hasVolume()) {
      throw new Refused(LogErrors.noLevel(file));
    }
    Long now = LogStory.moment(call, "--now", input.system().zone());
    for (LogAlarm alarm : report.alarms(now == null ? report.last() : now, Double.NaN)) {
      if (alarm.kind().hidesLevel()) {
        throw new Refused(
            LogErrors.notSure(file, alarm.kind().word(), dates.moment(alarm.since())));
      }
    }
    return new LoggedTank(report, dates, ecTyped);
  }

  /** Low end of what is in the tank, m3. */
  public double low() {
    return report.volumeLow();
  }

  /** What is in the tank by the edges, m3. */
  public double volume() {
    return report.volume();
  }

  /** High end of it, m3. */
  public double high() {
    return report.volumeHigh();
  }

  /** EC of the last rows, mS/cm; null when the log has none. */
  public Double ec() {
    return LogSummary.known(report.ec());
  }

  /** Local date of the first day whose thirst is still to come: from noon on the next one. */
  public LocalDate nextDay() {
    return LocalDate.ofEpochDay(report.dateAfter(0.5));
  }

  /** Moment of the newest row, with its offset. */
  public String readAt() {
    return dates.iso(report.last());
  }

  /** Moment of the newest row, in words. */
  public String readOn() {
    return dates.moment(report.last());
  }

  /** Local date of the last change of solution; the log's first date when it holds none. */
  public LocalDate changed() {
    LogEvent change = last(EventKind.SOLUTION_CHANGE);
    return LocalDate.ofEpochDay(
        change == null ? report.days().get(0).date() : report.dateOf(change.end()));
  }

  /** Whether the log holds a change of solution. */
  public boolean holdsChange() {
    return last(EventKind.SOLUTION_CHANGE) != null;
  }

  /** Local date of the last filling; null when the log holds none. */
  public LocalDate filled() {
    LogEvent fill = last(EventKind.REFILL);
    return fill == null ? null : LocalDate.ofEpochDay(report.dateOf(fill.end()));
  }

  /** Filled in since the last change, m3. */
  public double added() {
    LogEvent change = last(EventKind.SOLUTION_CHANGE);
    double sum = 0;
    for (LogEvent event : report.events()) {
      boolean later = change == null || event.start() >= change.end();
      boolean fill = event.kind() == EventKind.REFILL && event.volume() > 0;
      sum += fill && later ? event.volume() : 0;
    }
    return sum;
  }

  private LogEvent last(EventKind kind) {
    LogEvent last = null;
    for (LogEvent event : report.events()) {
      last = event.kind() == kind ? event : last;
    }
    return last;
  }

  /** The log's thirst against the season's own forecast of the same days. */
  public Calibration thirst(SeasonOf season) {
    return LogThirst.bySeason(season, report);
  }

  /** Columns with those of the reading behind them. */
  public static Column[] with(Column[] columns, LoggedTank tank) {
    if (tank == null) {
      return columns;
    }
    Column[] all = Arrays.copyOf(columns, columns.length + 2);
    all[columns.length] = READ_AT;
    all[columns.length + 1] = EC;
    return all;
  }

  /**
   * The reading in a row of those columns, and in words.
   *
   * @param ec EC that is gone on from, mS/cm
   */
  public void tell(Answer answer, Row row, double ec) {
    row.set(READ_AT, dates.iso(report.last())).set(EC, ec);
    Row words = row.with(Row.aside(READ_ON).set(READ_ON, dates.moment(report.last())));
    answer.figure(
        "newest reading",
        words,
        "{read_on}",
        ecTyped ? "EC {ec_mS_cm}, as you typed it" : "EC {ec_mS_cm}, by the log");
  }

  /** What to mind about the reading. */
  public void minds(Answer answer) {
    if (report.isBlind()) {
      answer.mind(
          "blind",
          "the top step is read: above it the sender sees nothing, so the tank may be fuller. Look before you pour.");
    }
    answer.mind(
        "since-then",
        "what is drunk or poured after the newest reading is not in it: pour soon, to the mark.");
  }
}

package leat.command.sense;

import java.util.Arrays;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.log.LogAlarm;
import leat.log.LogReport;
import leat.plan.Kind;
import leat.plan.Refused;

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
  public static final Flag NOW = LogStory.NOW;

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

package leat.command.sense;

import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.level.Tank;
import leat.log.DaysLeft;
import leat.log.EventKind;
import leat.log.LogAlarm;
import leat.log.LogLessons;
import leat.log.LogReport;
import leat.log.UseMean;

/** The figures of a log: counts, what is in the tank, what is drunk, how long it lasts. */
final class LogSummary {
  static final Column ROWS = Column.plain("rows", "rows");
  static final Column BAD = Column.plain("bad_cells", "bad cells");
  static final Column DUPLICATES = Column.plain("duplicates", "duplicates");
  static final Column LATE = Column.plain("late_rows", "late rows");
  static final Column GAPS = Column.plain("gaps", "gaps");
  static final Column FIRST = Column.plain("first", "first");
  static final Column LAST = Column.plain("last", "last");
  static final Column STATUS = Column.plain("status", "status");
  static final Column VOLUME = Column.of("volume_L", "by the edges", Show.L);
  static final Column LOW = Column.of("volume_low_L", "at least", Show.L);
  static final Column HIGH = Column.of("volume_high_L", "at most", Show.L);
  static final Column USE = Column.of("use_L_day", "drunk per day", Show.L);
  static final Column USE_LOW = Column.of("use_low_L_day", "at least", Show.L);
  static final Column USE_HIGH = Column.of("use_high_L_day", "at most", Show.L);
  static final Column DAYS = Column.number("days_left", "days left", 2);
  static final Column DAYS_LOW = Column.number("days_left_low", "at least", 2);
  static final Column DAYS_HIGH = Column.number("days_left_high", "at most", 2);
  static final Column TOPUP = Column.plain("topup_by", "next can");
  static final Column THIRST = Column.of("thirst_pct", "thirst", Show.PERCENT.digits(3));
  static final Column THIRST_BY = Column.plain("thirst_by", "held against");
  static final Column DIP = Column.of("dip_mm", "dip of a run", Show.MM.digits(2));
  static final Column USE_DAYS = Column.plain("use_days", "days of it");
  static final Column PLANNED = Column.of("plan_L_d", "plan says", Show.L_D);
  static final Column EC = Column.of("ec_mS_cm", "EC", Show.MS_CM);
  static final Column HOLD_UP = Column.of("hold_up_L", "hold up", Show.L.digits(2));
  static final Column HOLD_UP_LOW = Column.of("hold_up_low_L", "at least", Show.L.digits(2));
  static final Column HOLD_UP_HIGH = Column.of("hold_up_high_L", "at most", Show.L.digits(2));
  static final Column HYSTERESIS = Column.of("hysteresis_mm", "hysteresis", Show.MM.digits(2));
  static final Column WET = Column.number("cap_wet_counts", "cap, running water", 3);
  static final Column DRY = Column.number("cap_dry_counts", "cap, dry", 3);
  static final Column POURED_EC = Column.of("poured_ec_mS_cm", "EC after pourings", Show.MS_CM);
  static final Column DRIFT =
      Column.of("ec_drift_mS_cm", "its drift in 30 days", Show.MS_CM.digits(2));
  static final Column ODD = Column.plain("odd_readings", "readings off all steps");
  static final Column NOT_SET = Column.plain("clock_not_set", "rows of an unset clock");
  static final Column HEADERS = Column.plain("headers_again", "headers met again");

  static final Column[] ALL = {
    ROWS, BAD, DUPLICATES, LATE, GAPS, FIRST, LAST, STATUS, VOLUME,
    LOW, HIGH, USE, USE_LOW, USE_HIGH, DAYS, DAYS_LOW, DAYS_HIGH, TOPUP,
    THIRST, DIP, USE_DAYS, PLANNED, THIRST_BY, EC, HOLD_UP, HOLD_UP_LOW, HOLD_UP_HIGH,
    HYSTERESIS, WET, DRY, POURED_EC, DRIFT, ODD, NOT_SET, HEADERS
  };

  private LogSummary() {}

  static void fill(Row row, LogStory story) {
    LogReport report = story.report;
    counts(row, story);
    row.set(STATUS, status(story));
    if (report.hasVolume()) {
      row.set(VOLUME, report.volume());
      row.set(LOW, report.volumeLow());
      row.set(HIGH, report.volumeHigh());
    }
    use(row, story);
    DaysLeft left = report.daysLeft();
    if (left != null) {
      row.set(DAYS, left.days());
      row.set(DAYS_LOW, left.low());
      row.set(DAYS_HIGH, known(left.high()));
      row.set(TOPUP, LogDates.date(report.topupBy()));
    }
    row.set(EC, known(report.ec()));
    lessons(row, story);
  }

  private static void counts(Row row, LogStory story) {
    LogReport report = story.report;
    row.set(ROWS, (int) story.input.rows);
    row.set(BAD, (int) story.input.badCells);
    row.set(DUPLICATES, (int) report.duplicates());
    row.set(LATE, (int) report.lateRows());
    row.set(GAPS, report.count(EventKind.GAP));
    row.set(FIRST, story.dates.iso(report.first()));
    row.set(LAST, story.dates.iso(report.last()));
    row.set(ODD, (int) report.badReadings());
    row.set(NOT_SET, (int) (story.input.clockNotSet + report.clockNotSet()));
    row.set(HEADERS, (int) story.input.headersAgain);
  }

  private static void use(Row row, LogStory story) {
    UseMean use = story.report.use();
    row.set(PLANNED, story.thirst().planned());
    row.set(THIRST, story.thirst().factor());
    row.set(THIRST_BY, story.thirst().isBySeason() ? "season" : null);
    if (use == null) {
      return;
    }
    row.set(USE, use.mean());
    row.set(USE_LOW, use.low());
    row.set(USE_HIGH, use.high());
    row.set(USE_DAYS, use.n());
  }

  private static void lessons(Row row, LogStory story) {
    LogLessons learned = story.report.lessons();
    Tank tank = story.tank();
    if (tank != null) {
      row.set(DIP, known(story.report.dipLevel(tank)));
      row.set(HYSTERESIS, known(story.report.hysteresisLevel(tank)));
    }
    row.set(HOLD_UP, known(learned.dip()));
    row.set(HOLD_UP_LOW, known(learned.dipLow()));
    row.set(HOLD_UP_HIGH, known(learned.dipHigh()));
    row.set(WET, known(learned.capWet()));
    row.set(DRY, known(learned.capDry()));
    row.set(POURED_EC, known(learned.pouredEc()));
    row.set(DRIFT, known(learned.ecDrift()));
  }

  /** The first open alarm, else what keeps the log from saying more, else ok. */
  private static String status(LogStory story) {
    for (LogAlarm alarm : story.alarms) {
      return alarm.kind().word();
    }
    if (!story.report.hasVolume()) {
      return "no-level";
    }
    return story.report.use() == null ? "too-short" : "ok";
  }

  /** A number, or null for none. */
  static Double known(double value) {
    return value - value == 0 ? Double.valueOf(value) : null;
  }
}

package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.log.LogAlarm;
import leat.log.LogDay;
import leat.log.LogEvent;

/** Events, days and alarms of a log as rows. */
final class LogRowsTold {
  static final Column KIND = Column.plain("kind", "kind");
  static final Column START = Column.plain("start", "from");
  static final Column END = Column.plain("end", "to");
  static final Column LITRES = Column.of("litres", "volume", Show.L);
  static final Column LITRES_LOW = Column.of("litres_low", "at least", Show.L);
  static final Column LITRES_HIGH = Column.of("litres_high", "at most", Show.L);
  static final Column CAUSE = Column.plain("cause", "why");
  static final Column MM = Column.number("mm", "rain gauge", 3);
  static final Column OPEN = Column.plain("open", "goes on");
  static final Column[] EVENTS = {
    KIND, START, END, LITRES, LITRES_LOW, LITRES_HIGH, CAUSE, MM, OPEN
  };

  /** Columns of events in csv. */
  static final int EVENTS_CSV = 7;

  static final Column DATE = Column.plain("date", "day");
  static final Column USED = Column.of("use_L", "drunk", Show.L);
  static final Column REFILL = Column.of("refill_L", "poured", Show.L);
  static final Column RAIN = Column.of("rain_L", "rain", Show.L);
  static final Column EC_START = Column.of("ec_start_mS_cm", "EC first", Show.MS_CM);
  static final Column EC_END = Column.of("ec_end_mS_cm", "EC last", Show.MS_CM);
  static final Column BY_CONCENTRATION = Column.number("by_concentration", "by thirst", 2);
  static final Column BY_DILUTION = Column.number("by_dilution", "by rain", 2);
  static final Column BY_SALT = Column.number("by_salt", "by salt taken", 2);
  static final Column SURE = Column.plain("sure", "sure");
  static final Column[] DAYS = {
    DATE, USED, REFILL, RAIN, EC_START, EC_END, BY_CONCENTRATION, BY_DILUTION, BY_SALT, SURE
  };

  static final Column ALARM = Column.plain("alarm", "alarm");
  static final Column OPENED = Column.plain("opened", "certain from");
  static final Column SINCE = Column.plain("since", "since");
  static final Column[] ALARMS = {ALARM, OPENED, SINCE, CAUSE};

  private LogRowsTold() {}

  static Answer events(LogStory story) {
    Answer answer = new Answer(EVENTS).csvColumns(EVENTS_CSV).asList();
    for (LogEvent e : story.report.events()) {
      event(answer.row(), e, story.dates);
    }
    return answer;
  }

  static Row event(Row row, LogEvent e, LogDates dates) {
    row.set(KIND, e.kind().word());
    row.set(START, dates.iso(e.start()));
    row.set(END, dates.iso(e.end()));
    row.set(LITRES, LogSummary.known(e.volume()));
    row.set(LITRES_LOW, LogSummary.known(e.volumeLow()));
    row.set(LITRES_HIGH, LogSummary.known(e.volumeHigh()));
    row.set(CAUSE, e.cause().isEmpty() ? null : e.cause());
    row.set(MM, LogSummary.known(e.mm()));
    return row.set(OPEN, e.isOpen());
  }

  static Answer days(LogStory story) {
    Answer answer = new Answer(DAYS).asList();
    for (LogDay day : story.report.days()) {
      Row row = answer.row();
      row.set(DATE, LogDates.date(day.date()));
      row.set(USED, day.used());
      row.set(REFILL, day.refill());
      row.set(RAIN, day.rain());
      row.set(EC_START, LogSummary.known(day.ecStart()));
      row.set(EC_END, LogSummary.known(day.ecEnd()));
      row.set(BY_CONCENTRATION, LogSummary.known(day.byConcentration()));
      row.set(BY_DILUTION, LogSummary.known(day.byDilution()));
      row.set(BY_SALT, LogSummary.known(day.bySalt()));
      row.set(SURE, day.isSure());
    }
    return answer;
  }

  static Answer alarms(LogStory story) {
    Answer answer = new Answer(ALARMS).asList();
    for (LogAlarm alarm : story.alarms) {
      Row row = answer.row();
      row.set(ALARM, alarm.kind().word());
      row.set(OPENED, story.dates.iso(alarm.opened()));
      row.set(SINCE, story.dates.iso(alarm.since()));
      row.set(CAUSE, alarm.cause().isEmpty() ? null : alarm.cause());
    }
    return answer;
  }
}

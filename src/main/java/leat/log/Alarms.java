package leat.log;

import java.util.List;

/** Which alarms are open now. */
final class Alarms {
  private final LogReport report;
  private final Judge judge;
  private final LogLimits limits;

  Alarms(LogReport report, Judge judge, LogLimits limits) {
    this.report = report;
    this.judge = judge;
    this.limits = limits;
  }

  List<LogAlarm> open(long now, double daysAsked) {
    List<LogAlarm> all = LogReport.none();
    if (report.isEmpty()) {
      return all;
    }
    for (int i = 0; i < report.events().size(); i++) {
      LogEvent e = report.events().get(i);
      LogAlarm.Kind kind = e.isOpen() ? kind(e.kind()) : null;
      if (kind != null) {
        all.add(new LogAlarm(kind, e.told(), e.start(), e.cause()));
      }
    }
    marks(all, daysAsked);
    long silent = report.last() + (long) (limits.silentIntervals() * report.interval());
    if (now > silent) {
      all.add(new LogAlarm(LogAlarm.Kind.LOG_SILENT, silent, report.last(), ""));
    } else if (judge.unreadSince() != Long.MIN_VALUE) {
      long since = judge.unreadSince();
      long told = since + (long) (limits.restS() * 1000);
      all.add(new LogAlarm(LogAlarm.Kind.LOG_SILENT, told, since, LogAlarm.NO_READING));
    }
    return all;
  }

  private void marks(List<LogAlarm> all, double daysAsked) {
    long below = judge.watch.belowSince();
    if (below != Long.MIN_VALUE) {
      all.add(new LogAlarm(LogAlarm.Kind.BELOW_LOW, below, below, ""));
    }
    DaysLeft left = report.daysLeft();
    if (left != null && left.days() < daysAsked) {
      long at = report.whenLeft(daysAsked, left.days());
      all.add(new LogAlarm(LogAlarm.Kind.DAYS_LEFT, at, at, ""));
    }
    long out = judge.watch.outSince();
    if (out != Long.MIN_VALUE) {
      all.add(new LogAlarm(LogAlarm.Kind.EC_OUT_OF_BAND, out, out, ""));
    }
  }

  private static LogAlarm.Kind kind(EventKind kind) {
    switch (kind) {
      case PUMP_FAILURE:
        return LogAlarm.Kind.NO_WATER_AT_CAP;
      case LEAK:
        return LogAlarm.Kind.LEAK;
      case SENSOR_OPEN:
        return LogAlarm.Kind.SENSOR_OPEN;
      case SENSOR_SHORT:
        return LogAlarm.Kind.SENSOR_SHORT;
      case STUCK_FLOAT:
        return LogAlarm.Kind.STUCK_FLOAT;
      default:
        return null;
    }
  }
}

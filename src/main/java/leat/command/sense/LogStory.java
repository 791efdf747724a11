package leat.command.sense;

import java.util.ArrayList;
import java.util.List;
import leat.cli.Call;
import leat.level.Tank;
import leat.log.LogAlarm;
import leat.log.LogLimits;
import leat.log.LogReport;
import leat.log.LogTimes;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.system.LogOf;
import leat.system.TankOf;

/** What one call learned from its log, for all ways of telling it. */
final class LogStory {
  static final leat.cli.Flag NOW = now();
  static final leat.cli.Flag SINCE =
      leat.cli.Flag.of(
          "--since",
          "TIME",
          Kind.TEXT,
          "2027-06-23T07:00:00+02:00",
          "tells only alarms that opened after it");
  static final leat.cli.Flag DAYS_LEFT =
      leat.cli.Flag.of(
          "--days-left", "DAYS", Kind.DAYS, "2", "alarm when the refill mark is fewer days away");

  /** The clock, as a flag of its own for each command. */
  static leat.cli.Flag now() {
    return leat.cli.Flag.of(
        "--now",
        "TIME",
        Kind.TEXT,
        "2027-06-24T07:00:00+02:00",
        "what the clock says; without it, the time of the newest row");
  }

  final Call call;
  final LogInput input;
  final LogReport report;
  final LogDates dates;
  final Plan plan;

  private LogThirst thirst;

  final List<LogAlarm> alarms = new ArrayList<>();

  LogStory(Call call, LogInput input, LogReport report) {
    this.call = call;
    this.input = input;
    this.report = report;
    this.plan = call.plan();
    this.dates = new LogDates(input.system().zone());
    Long now = moment("--now");
    Long since = moment("--since");
    Double asked = call.from0("--days-left");
    List<LogAlarm> open =
        report.alarms(
            now == null ? report.last() : now, asked == null ? Double.NaN : asked.doubleValue());
    for (LogAlarm alarm : open) {
      if (since == null || alarm.isNewSince(since)) {
        alarms.add(alarm);
      }
    }
  }

  private Long moment(String flag) {
    return moment(call, flag, input.system().zone());
  }

  /** A moment of a flag, ms of Unix time; null when it is not given. */
  static Long moment(Call call, String flag, java.time.ZoneId zone) {
    String typed = call.text(flag);
    if (typed == null) {
      return null;
    }
    LogTimes times = new LogTimes(zone, "");
    if (!times.read(typed).isTime()) {
      throw new Refused(LogErrors.notAMoment(flag, typed));
    }
    return times.millis();
  }

  /** What the plan says of thirst; a season is worked out for it, so only when it is asked for. */
  LogThirst thirst() {
    if (thirst == null) {
      thirst = LogThirst.of(plan, report, call.taken());
    }
    return thirst;
  }

  LogLimits limits() {
    return LogOf.limits(plan);
  }

  /** The plan's tank, or null when its shape is unknown. */
  Tank tank() {
    Section tank = plan.section("tank");
    return TankOf.isKnown(tank) ? TankOf.of(tank, call.taken()) : null;
  }
}

package leat.command.run;

import java.time.LocalDate;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.command.sense.LogErrors;
import leat.command.sense.LoggedTank;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.DateWords;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.season.Calibration;
import leat.system.SeasonOf;
import leat.weather.SeasonFile;

/** The season from here on: volume, EC, last change and thirst by the log, laid over the plan. */
final class LoggedSeason {
  static final Column READ_AT = Column.plain("read_at", "newest reading");
  static final Column THIRST = Column.of("thirst_pct", "thirst", Show.PERCENT.digits(3));
  static final Column THIRST_DAYS = Column.plain("thirst_days", "days compared");
  private static final Column READ_ON = Column.plain("read_on", "read on");
  private static final Column CHANGED = Column.plain("changed", "changed");
  private static final Column LEAST = Column.plain("least_days", "days needed");

  private final Call call;
  private final LoggedTank tank;
  private final Calibration thirst;
  private final Plan plan;

  private LoggedSeason(Call call) {
    this.call = call;
    Plan before = call.plan();
    before.section("season").needRaw("from");
    this.tank = LoggedTank.of(call, false);
    SeasonOf whole = SeasonFile.of(before, call.taken());
    LocalDate next = tank.nextDay();
    if (next.isBefore(whole.from()) || next.isAfter(whole.to())) {
      throw new Refused(
          LogErrors.outsideSeason(
              call.texts("--log").get(0),
              next.toString(),
              whole.from().toString(),
              whole.to().toString()));
    }
    this.thirst = tank.thirst(whole);
    Plan laid = before.with("season.from", next.toString()).with("season.start", start(next));
    this.plan = thirst.isEnough() ? laid.with("thirst", percent()) : laid;
  }

  /** The season of a call from its log on; null when it names none. */
  static LoggedSeason of(Call call) {
    return LoggedTank.isNamed(call) ? new LoggedSeason(call) : null;
  }

  /** The plan with what the log says laid over it. */
  Plan plan() {
    return plan;
  }

  private String percent() {
    return NumberText.shortest(Units.PERCENT.fromBase(thirst.factor())).concat(" %");
  }

  private String start(LocalDate next) {
    StringBuilder start = new StringBuilder("{volume: ").append(litres(tank.volume()));
    if (tank.ec() != null) {
      start.append(", ec: ").append(NumberText.shortest(tank.ec())).append(" mS/cm");
    }
    if (tank.changed().isBefore(next)) {
      start.append(", changed: ").append(tank.changed());
      start.append(", added: ").append(litres(tank.added()));
      if (tank.filled() != null && tank.filled().isBefore(next)) {
        start.append(", filled: ").append(tank.filled());
      }
    }
    return start.append('}').toString();
  }

  private static String litres(double m3) {
    return NumberText.shortest(Units.L.fromBase(m3)).concat(" L");
  }

  void fill(Row row) {
    row.set(READ_AT, tank.readAt());
    if (thirst.isEnough()) {
      row.set(THIRST, thirst.factor()).set(THIRST_DAYS, thirst.days());
    }
  }

  void figures(Answer answer, Row sums) {
    Row all = sums.with(Row.aside(READ_ON).set(READ_ON, tank.readOn()));
    answer.figure(
        "goes on from", all, "{volume_start_L}", "{ec_start_mS_cm}", "by the log, {read_on}");
    if (thirst.isEnough()) {
      answer.figure(
          "thirst", all, "{thirst_pct}", "of the forecast on {thirst_days} days of the log");
    }
  }

  void minds(Answer answer, Row sums) {
    Row words = sums.with(Row.aside(CHANGED).set(CHANGED, DateWords.day(tank.changed())));
    if (tank.ec() == null) {
      answer.mind(
          "no-log-ec",
          words,
          "the log has no EC: the season goes on at the plan's {ec_start_mS_cm}.");
    }
    if (!tank.holdsChange()) {
      answer.mind(
          "no-change-logged",
          words,
          "the log holds no change of solution: changes are counted from its first day, {changed}.");
    }
    thirst(answer, words);
    answer.mind(
        "spent",
        "money, seed and harvest are those of the days to come; what was poured, sown and bought before is spent.");
  }

  private void thirst(Answer answer, Row words) {
    if (!thirst.isEnough()) {
      answer.mind(
          "thirst-unmeasured",
          Row.aside(LEAST).set(LEAST, Calibration.LEAST_DAYS),
          "the log has fewer than {least_days} whole, sure days without rain in the season: too few to measure the thirst, which goes on as the plan says.");
    } else if (thirst.isHeld()) {
      answer.mind(
          "thirst-held",
          words,
          "log and forecast are far apart: the thirst is held at {thirst_pct}. Look at the crops' dates and pots, and at the sender.");
    }
  }

  /** The thirst as a line to set; nothing when it is not measured, or cannot be believed. */
  void next(Answer answer) {
    if (thirst.isEnough() && !thirst.isHeld()) {
      call.intoPlan(answer, "thirst", shown());
    }
  }

  private String shown() {
    return leat.answer.Phrase.of(thirst.factor(), Show.PERCENT.digits(3)).render(false);
  }
}

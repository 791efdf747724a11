package leat.command.run;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.command.MeasuredWords;
import leat.energy.DryLimit;
import leat.energy.LeastRun;
import leat.energy.LongestRest;
import leat.energy.Suggestion;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.energy.TradeOff;
import leat.plan.Plan;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.system.DrawOf;
import leat.system.PeriodOf;
import leat.system.RunNeeds;
import leat.system.TariffOf;
import leat.system.TimetableOf;

/** {@code leat duty --suggest}: the timing of least energy that keeps the roots wet. */
final class DutySuggestion {
  static final Column REST_NIGHT = Column.of("rest_night_s", "at night", Show.S.digits(4));
  static final Column LEAST_RUN = Column.of("least_run_s", "least run", Show.S.digits(3));
  static final Column FILL = Column.of("fill_s", "fill", Show.S.digits(2));
  static final Column FILM = Column.of("film_s", "film", Show.S.digits(2));
  static final Column WETTING = Column.of("wetting_s", "wetting", Show.S.digits(2));
  static final Column LIMIT_DAY = Column.of("longest_rest_day_s", "rest by day", Show.S);
  static final Column LIMIT_NIGHT = Column.of("longest_rest_night_s", "rest by night", Show.S);
  static final Column RUN_BOUND = Column.plain("run_bound", "run bound by");
  static final Column REST_BOUND = Column.plain("rest_bound", "rest bound by");
  private static final Column TOWER = Column.plain("tower", "tower");

  private static final Column[] COLUMNS = {
    DutyRows.TIMING,
    DutyRows.RUN,
    DutyRows.REST,
    REST_NIGHT,
    DutyRows.SHARE,
    DutyRows.STARTS,
    DutyRows.KWH_DAY,
    DutyRows.COST_DAY,
    DutyRows.KWH,
    DutyRows.COST,
    DutyRows.CURRENCY,
    DutyRows.DAYS,
    DutyRows.RELAY_DAYS,
    LEAST_RUN,
    FILL,
    FILM,
    WETTING,
    LIMIT_DAY,
    LIMIT_NIGHT,
    RUN_BOUND,
    REST_BOUND,
    PlugRest.USE
  };

  /** Name of the row of the plan's own timing. */
  static final String PLAN = "plan";

  final Call call;
  final Plan plan;
  final RunNeeds needs;
  final PlugRest plug;
  final Suggestion day;
  final Suggestion night;
  final DutyLine.Terms terms;
  final Answer answer = new Answer(COLUMNS);
  final List<DutyLine> lines = new ArrayList<>();
  final List<Row> rows = new ArrayList<>();

  private DutySuggestion(
      Call call,
      RunNeeds needs,
      PlugRest plug,
      Suggestion day,
      Suggestion night,
      DutyLine.Terms terms) {
    this.call = call;
    this.plan = call.plan();
    this.needs = needs;
    this.plug = plug;
    this.day = day;
    this.night = night;
    this.terms = terms;
  }

  /** The proposal for a plan. */
  static Answer of(Call call, TariffOf price) {
    Plan plan = call.plan();
    RunNeeds needs = RunNeeds.forProposal(plan, call.taken());
    if (needs.dryTower() != null) {
      return dry(call, needs);
    }
    DryLimit dry = RunNeeds.dryLimit(plan, call.taken());
    Double starts = call.above0("--most-starts");
    double cycle = starts == null ? 0 : Suggestion.cycleForStarts(Units.PER_H.fromBase(starts));
    PlugRest plug = PlugRest.of(call, dry.dayS());
    Suggestion day =
        Suggestion.of(needs.least(), plug.longest, DrawOf.of(plan, call.taken()), cycle);
    Suggestion night =
        Suggestion.of(
            needs.least(), LongestRest.of(dry.nightS()), DrawOf.of(plan, call.taken()), cycle);
    PeriodOf period =
        PeriodOf.of(
            plan,
            call.above0("--days"),
            call.text("--days"),
            true,
            !price.tariff().windows().everyDayAlike(),
            call.taken());
    return new DutySuggestion(
            call, needs, plug, day, night, new DutyLine.Terms(plan, price, period, call.taken()))
        .answer();
  }

  private static Answer dry(Call call, RunNeeds needs) {
    Answer none = new Answer(COLUMNS);
    MeasuredWords.say(none, needs.believed(), "");
    none.sentence(
        Row.aside(TOWER).set(TOWER, needs.dryTower()),
        "No timing waters {tower}: no water reaches its top with the tank at the refill mark.");
    return call.withTaken(none.next(call.again("pump") + "   says by how much").no());
  }

  private Answer answer() {
    MeasuredWords.say(answer, needs.believed(), "");
    row("suggested", table(day.timing(), night.timing()));
    if (TimetableOf.isKnown(plan)) {
      row(PLAN, TimetableOf.of(plan));
    }
    Timing[] days = TradeOff.candidates(day);
    Timing[] nights = TradeOff.candidates(night);
    for (int i = 1; i < Math.min(days.length, nights.length); i++) {
      row(i < 3 ? "longer runs" : "shorter rests", table(days[i], nights[i]));
    }
    new DutySuggestionWords(this, call.taken()).write();
    call.withTaken(answer);
    return call.intoPlan(answer, "timing", typed());
  }

  private static Timetable table(Timing day, Timing night) {
    return day.restS() == night.restS() && day.runS() == night.runS()
        ? Timetable.of(day)
        : Timetable.dayAndNight(day, night, DryLimit.usualNight());
  }

  private void row(String name, Timetable timetable) {
    DutyLine line = terms.line(name, timetable);
    lines.add(line);
    boolean shown = !PLAN.equals(name) || timetable.size() == 1;
    Timing first = timetable.timing(0);
    Timing last = timetable.timing(timetable.size() - 1);
    double operations = DrawOf.operations(plan, call.taken());
    Row row = answer.row();
    DutyRows.fill(row, terms, line, operations);
    row.set(DutyRows.RUN, shown ? Double.valueOf(first.runS()) : null)
        .set(DutyRows.REST, shown ? Double.valueOf(first.restS()) : null)
        .set(REST_NIGHT, shown ? Double.valueOf(last.restS()) : null);
    LeastRun least = needs.least();
    row.set(LEAST_RUN, least.seconds())
        .set(FILL, least.fillS())
        .set(FILM, least.filmS())
        .set(WETTING, least.wettingS())
        .set(LIMIT_DAY, day.longestRest().seconds())
        .set(LIMIT_NIGHT, night.longestRest().seconds())
        .set(RUN_BOUND, runBound())
        .set(REST_BOUND, restBound())
        .set(PlugRest.USE, plug.perSecond());
    rows.add(row.with(DutyRows.words(terms, line, operations)));
  }

  private String runBound() {
    switch (day.runBound()) {
      case LEAST_CYCLE:
        return "most-starts";
      case NONE:
        return "none";
      default:
        return "least-run";
    }
  }

  private String restBound() {
    if (day.restBound() == null) {
      return "none";
    }
    return day.restBound() == LongestRest.Bound.PLUG_WATER ? "plug-water" : "dry-limit";
  }

  /** The proposal as one types it into a plan. */
  private String typed() {
    Timing d = day.timing();
    Timing n = night.timing();
    String first = "{run: " + time(d.runS()) + ", rest: " + time(d.restS());
    if (table(d, n).size() == 1) {
      return "[" + first + "}]";
    }
    return "["
        + first
        + "}, {run: "
        + time(n.runS())
        + ", rest: "
        + time(n.restS())
        + ", from: \"22:00\", to: \"06:00\"}]";
  }

  /** Whole seconds as one would type them: minutes where they are whole or half. */
  static String time(double s) {
    double minutes = Units.MIN.fromBase(s);
    return minutes >= 2 && NumberText.isWhole(minutes + minutes)
        ? NumberText.shortest(minutes) + " min"
        : NumberText.shortest(s) + " s";
  }
}

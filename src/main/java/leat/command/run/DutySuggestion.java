package leat.command.run;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.command.MeasuredWords;
import leat.energy.DryLimit;
import leat.energy.LeastRun;
import leat.energy.LongestRest;
import leat.energy.RelayLife;
import leat.energy.Suggestion;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.energy.TradeOff;
import leat.hydraulics.Derate;
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

  private static final Column[] COLUMNS = {
    DutyCommand.TIMING,
    DutyCommand.RUN,
    DutyCommand.REST,
    REST_NIGHT,
    DutyCommand.SHARE,
    DutyCommand.STARTS,
    DutyCommand.KWH_DAY,
    DutyCommand.COST_DAY,
    DutyCommand.KWH,
    DutyCommand.COST,
    DutyCommand.CURRENCY,
    DutyCommand.DAYS,
    DutyCommand.RELAY_DAYS,
    LEAST_RUN,
    FILL,
    FILM,
    WETTING,
    LIMIT_DAY,
    LIMIT_NIGHT,
    RUN_BOUND,
    REST_BOUND
  };

  private final Call call;
  private final Plan plan;
  private final RunNeeds needs;
  private final DryLimit dry;
  private final Suggestion day;
  private final Suggestion night;
  private final DutyLine.Terms terms;
  private final Answer answer = new Answer(COLUMNS);
  private final List<DutyLine> lines = new ArrayList<>();

  private DutySuggestion(
      Call call, RunNeeds needs, Suggestion day, Suggestion night, DutyLine.Terms terms) {
    this.call = call;
    this.plan = call.plan();
    this.needs = needs;
    this.dry = RunNeeds.dryLimit(plan);
    this.day = day;
    this.night = night;
    this.terms = terms;
  }

  /** The proposal for a plan. */
  static Answer of(Call call, TariffOf price) {
    Plan plan = call.plan();
    RunNeeds needs = RunNeeds.of(plan);
    if (needs.dryTower() != null) {
      return dry(call, needs);
    }
    DryLimit dry = RunNeeds.dryLimit(plan);
    Double starts = call.above0("--most-starts");
    double cycle = starts == null ? 0 : Suggestion.cycleForStarts(Units.PER_H.fromBase(starts));
    Suggestion day = Suggestion.of(needs.least(), rest(call, dry.dayS()), DrawOf.of(plan), cycle);
    Suggestion night =
        Suggestion.of(needs.least(), LongestRest.of(dry.nightS()), DrawOf.of(plan), cycle);
    PeriodOf period =
        PeriodOf.of(
            plan,
            call.above0("--days"),
            call.text("--days"),
            true,
            !price.tariff().windows().everyDayAlike());
    return new DutySuggestion(call, needs, day, night, new DutyLine.Terms(plan, price, period))
        .answer();
  }

  /** By day the water held by plug and root may bind before the dry limit. */
  private static LongestRest rest(Call call, double limit) {
    Double held = call.above0("--plug-water");
    Double use = call.above0("--plant-use");
    if (held == null && use == null) {
      return LongestRest.of(limit);
    }
    if (held == null || use == null) {
      throw call.needs(held == null ? "--plug-water" : "--plant-use");
    }
    call.plan().taken().note("half of the held water usable, noon 2.5 times the mean use");
    return LongestRest.of(
        limit,
        LongestRest.plugWaterS(
            held, LongestRest.USUAL_USABLE_SHARE, use, LongestRest.USUAL_PEAK_FACTOR));
  }

  private static Answer dry(Call call, RunNeeds needs) {
    Answer none = new Answer(COLUMNS);
    MeasuredWords.say(none, needs.believed(), "");
    return call.withTaken(
        none.sentence(
                Phrase.of("No timing waters ")
                    .add(needs.dryTower())
                    .add(": the pump does not reach its top with the tank at the refill mark."))
            .next("leat pump --plan " + call.planName() + "   says by how much")
            .no());
  }

  private Answer answer() {
    MeasuredWords.say(answer, needs.believed(), "");
    Timetable best = table(day.timing(), night.timing());
    row("suggested", best);
    if (TimetableOf.isKnown(plan)) {
      row("plan", TimetableOf.of(plan));
    }
    Timing[] days = TradeOff.candidates(day);
    Timing[] nights = TradeOff.candidates(night);
    for (int i = 1; i < Math.min(days.length, nights.length); i++) {
      row(i < 3 ? "longer runs" : "shorter rests", table(days[i], nights[i]));
    }
    sentence();
    figures();
    table();
    plan.taken().note("night 22:00 to 06:00");
    minds();
    working();
    call.withTaken(answer);
    answer.next("paste into the plan:  timing: " + paste());
    return answer;
  }

  private static Timetable table(Timing day, Timing night) {
    return day.restS() == night.restS() && day.runS() == night.runS()
        ? Timetable.of(day)
        : Timetable.dayAndNight(day, night, DryLimit.usualNight());
  }

  private void row(String name, Timetable timetable) {
    DutyLine line = terms.line(name, timetable);
    lines.add(line);
    boolean own = !"plan".equals(name);
    boolean single = timetable.size() == 1;
    Timing first = timetable.timing(0);
    OptionalDouble relay = RelayLife.days(DrawOf.operations(plan), line.startsPerDay);
    boolean priced = terms.price.isPriced();
    Row row =
        answer
            .row()
            .set(DutyCommand.TIMING, name)
            .set(DutyCommand.RUN, own || single ? Double.valueOf(first.runS()) : null)
            .set(DutyCommand.REST, own || single ? Double.valueOf(first.restS()) : null)
            .set(
                REST_NIGHT,
                own || single
                    ? Double.valueOf(timetable.timing(timetable.size() - 1).restS())
                    : null)
            .set(DutyCommand.SHARE, line.share)
            .set(DutyCommand.STARTS, line.startsPerDay)
            .set(DutyCommand.KWH_DAY, line.jDay)
            .set(DutyCommand.COST_DAY, priced ? Double.valueOf(line.costDay) : null)
            .set(DutyCommand.KWH, line.j)
            .set(DutyCommand.COST, priced ? Double.valueOf(line.cost) : null)
            .set(DutyCommand.CURRENCY, terms.price.currency())
            .set(DutyCommand.DAYS, terms.period.days())
            .set(
                DutyCommand.RELAY_DAYS,
                relay.isPresent() ? Double.valueOf(relay.getAsDouble()) : null);
    LeastRun least = needs.least();
    row.set(LEAST_RUN, least.seconds())
        .set(FILL, least.fillS())
        .set(FILM, least.filmS())
        .set(WETTING, least.wettingS())
        .set(LIMIT_DAY, day.longestRest().seconds())
        .set(LIMIT_NIGHT, night.longestRest().seconds())
        .set(RUN_BOUND, runBound())
        .set(REST_BOUND, restBound());
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

  private void sentence() {
    Phrase words = Phrase.of();
    Timing timing = day.timing();
    if (timing.withoutPause()) {
      words.add(
          day.runBound() == Suggestion.RunBound.NONE
              ? "Run without pause: the coil draws more in the rests than the pump in the runs"
              : "Run without pause by day: the dry limit leaves no room for a rest");
    } else {
      words.add("Run ").add(time(timing.runS())).add(", rest ").duration(timing.restS());
      if (night.timing().restS() != timing.restS()) {
        words.add(" by day and ").duration(night.timing().restS()).add(" at night");
      }
      words.add(": the least energy that keeps the roots wet");
    }
    amount(words.add(", "), lines.get(0)).add(" in ");
    words.count(NumberText.nearest(terms.period.days())).add(" days");
    if (TimetableOf.isKnown(plan)) {
      amount(words.add("; the plan's timing takes "), lines.get(1));
    }
    answer.sentence(words.add("."));
  }

  private Phrase amount(Phrase words, DutyLine line) {
    words.add(line.j, Show.KWH);
    return terms.price.isPriced()
        ? words.add(" for ").money(line.cost, terms.price.currency())
        : words;
  }

  /** Wear against energy: the proposal beside longer runs and shorter rests. */
  private void table() {
    answer.block();
    boolean priced = terms.price.isPriced();
    answer.figure(
        "",
        Phrase.of("run, rest, at night"),
        Phrase.of("starts a day"),
        Phrase.of("energy"),
        Phrase.of(priced ? "cost" : "relay"),
        Phrase.of(priced ? "relay" : ""));
    for (int i = 0; i < lines.size(); i++) {
      DutyLine line = lines.get(i);
      OptionalDouble life = RelayLife.days(DrawOf.operations(plan), line.startsPerDay);
      Phrase relay =
          life.isEmpty()
              ? Phrase.of("never switches")
              : Phrase.of().number(life.getAsDouble(), 3).add(" days");
      answer.figure(
          line.name,
          timings(line),
          Phrase.of().number(line.startsPerDay, 3),
          Phrase.of(line.j, Show.KWH),
          priced ? Phrase.of().money(line.cost, terms.price.currency()) : relay,
          priced ? relay : Phrase.of());
    }
  }

  private static Phrase timings(DutyLine line) {
    Timetable table = line.timetable;
    if ("plan".equals(line.name) && table.size() > 1) {
      return Phrase.of("as it stands");
    }
    if (table.timing(0).withoutPause()) {
      return Phrase.of(table.size() == 1 ? "without pause" : "without pause by day");
    }
    Phrase words = Phrase.of(time(table.timing(0).runS())).add(", ");
    words.add(time(table.timing(0).restS()));
    return table.size() == 1
        ? words
        : words.add(", ").add(time(table.timing(table.size() - 1).restS()));
  }

  private void figures() {
    LeastRun least = needs.least();
    answer.figure(
        "shortest run",
        Phrase.of(time(least.wholeSeconds())),
        Phrase.of()
            .add(least.fillS(), Show.S)
            .add(" to fill the riser, ")
            .add(least.filmS(), Show.S)
            .add(" of film, ")
            .add(least.wettingS(), Show.S)
            .add(" of wetting"));
    answer.figure(
        "slowest tower",
        Phrase.of(needs.tower()),
        Phrase.of(needs.flow(), Show.L_MIN).add(" at the refill mark"));
    answer.figure(
        "longest rest",
        Phrase.of().duration(day.longestRest().seconds()),
        Phrase.of(
                day.longestRest().bound() == LongestRest.Bound.PLUG_WATER
                    ? "by day, about, what plug and root hold; "
                    : "by day, ")
            .duration(night.longestRest().seconds())
            .add(" at night"));
    answer.figure("what binds", binds());
  }

  private Phrase binds() {
    Phrase words;
    switch (day.runBound()) {
      case LEAST_CYCLE:
        words = Phrase.of("the run: the starts an hour");
        break;
      case NONE:
        return Phrase.of("nothing: the coil's draw makes rests dear");
      default:
        words = Phrase.of("the run: ").add(part(needs.least().longestPart()));
    }
    return words
        .add("; the rest: ")
        .add("plug-water".equals(restBound()) ? "the water plug and root hold" : "the dry limit");
  }

  private static String part(LeastRun.Part part) {
    switch (part) {
      case FILL:
        return "filling the riser takes most of it";
      case FILM:
        return "the film's way down takes most of it";
      default:
        return "wetting takes most of it";
    }
  }

  private void minds() {
    if (!plan.section("dry_limit").has("day")) {
      answer.mind(
          "dry-limit-practice",
          Phrase.of("a rest of ")
              .duration(dry.dayS())
              .add(
                  " is common practice, no experiment stands behind it for falling films. Young plugs and hot noons want less: look at the top roots before the pump starts."));
    }
    if (needs.believed().kind() != Derate.Kind.MEASURED) {
      answer.mind(
          "pump-guess",
          "the flow is the printed pump's; a tired pump fills slower. A bucket and a watch tell: add a third until you know.");
    }
    DutyCommand.controllerHint(answer, plan, terms, lines.get(0));
    if (needs.filmDoubtful()) {
      answer.mind(
          "film-indication",
          "so thick a film is no longer smooth: its time is an indication only.");
    }
  }

  private void working() {
    LeastRun least = needs.least();
    answer.working(
        Working.of(
            "least run",
            "t = fill + 3 h/u + wetting",
            Phrase.of("fill ")
                .add(least.fillS(), Show.S.digits(3))
                .add(", film ")
                .add(least.filmS(), Show.S.digits(3))
                .add(", wetting ")
                .add(least.wettingS(), Show.S.digits(3)),
            least.seconds(),
            Show.S.digits(4),
            "film Re up to 1500",
            "Nusselt 1916 for the film's mean speed u; factor 3 among roots: common practice"));
  }

  private String paste() {
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

  /** Whole seconds as one would type them: minutes where they are whole. */
  private static String time(double s) {
    double minutes = Units.MIN.fromBase(s);
    return minutes >= 2 && NumberText.isWhole(minutes)
        ? Phrase.of().count((long) minutes).add(" min").render(false)
        : Phrase.of().count((long) s).add(" s").render(false);
  }
}

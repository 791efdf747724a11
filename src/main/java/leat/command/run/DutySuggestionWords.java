package leat.command.run;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.energy.LeastRun;
import leat.energy.LongestRest;
import leat.energy.Suggestion;
import leat.energy.Timetable;
import leat.hydraulics.PumpCurve;
import leat.plan.Taken;
import leat.system.RunNeeds;
import leat.system.TimetableOf;

/** A proposed timing in words: the sentence, what it rests on, and what else could be had. */
final class DutySuggestionWords {
  private static final Column RUN_TEXT = Column.plain("run", "run");
  private static final Column REST_DAY = Column.of("rest_day_s", "rest by day", Show.S);
  private static final Column REST_NIGHT = Column.of("rest_at_night_s", "rest at night", Show.S);
  private static final Column PLAN_COST = Column.money("plan_cost", "plan costs");
  private static final Column PLAN_KWH = Column.of("plan_kWh", "plan takes", Show.KWH);
  private static final Column SHORTEST = Column.plain("shortest", "shortest run");
  private static final Column TOWER = Column.plain("tower", "tower");
  private static final Column FLOW = Column.of("flow_L_min", "flow", Show.L_MIN);
  private static final Column LIMIT = Column.of("dry_limit_s", "dry limit", Show.S);
  private static final Column TAKEN = Column.of("taken_pct", "of the printed head", Show.PERCENT);
  private static final Column TIMINGS = Column.plain("timings", "run, rest, at night");

  private final DutySuggestion said;
  private final Taken taken;
  private final Answer answer;
  private final boolean priced;
  private final Row best;

  DutySuggestionWords(DutySuggestion said, Taken taken) {
    this.taken = taken;
    this.said = said;
    this.answer = said.answer;
    this.priced = said.terms.price.isPriced();
    this.best = said.rows.get(0).with(aside());
  }

  private Row aside() {
    LeastRun least = said.needs.least();
    Row row =
        Row.aside(
                RUN_TEXT,
                REST_DAY,
                REST_NIGHT,
                PLAN_COST,
                PLAN_KWH,
                SHORTEST,
                TOWER,
                FLOW,
                LIMIT,
                TAKEN)
            .set(RUN_TEXT, DutySuggestion.time(said.day.timing().runS()))
            .set(REST_DAY, said.day.timing().restS())
            .set(REST_NIGHT, said.night.timing().restS())
            .set(SHORTEST, DutySuggestion.time(least.wholeSeconds()))
            .set(TOWER, said.needs.tower())
            .set(FLOW, said.needs.flow())
            .set(LIMIT, RunNeeds.dryDay(said.plan, taken))
            .set(TAKEN, said.needs.share());
    if (TimetableOf.isKnown(said.plan)) {
      row.set(PLAN_COST, said.lines.get(1).cost).set(PLAN_KWH, said.lines.get(1).j);
    }
    return row;
  }

  void write() {
    answer.sentence(sentence());
    figures();
    table();
    taken.note("night 22:00 to 06:00");
    minds();
    working();
  }

  private Phrase sentence() {
    Phrase words = Answer.filled(best, proposal());
    words.add(
        Answer.filled(
            best,
            priced
                ? ", {kwh_total} for {cost_total:money} {currency} in {period}"
                : ", {kwh_total} in {period}"));
    if (!TimetableOf.isKnown(said.plan)) {
      return words.add(".");
    }
    return words.add(
        Answer.filled(
            best,
            priced
                ? "; the plan's timing takes {plan_kWh} for {plan_cost:money} {currency}."
                : "; the plan's timing takes {plan_kWh}."));
  }

  private String proposal() {
    if (said.day.timing().withoutPause()) {
      return said.day.runBound() == Suggestion.RunBound.NONE
          ? "Run without pause: the coil draws more in the rests than the pump in the runs"
          : "Run without pause by day: the dry limit leaves no room for a rest";
    }
    return said.night.timing().restS() == said.day.timing().restS()
        ? "Run {run}, rest {rest_day_s:duration}: the least energy that keeps the roots wet"
        : "Run {run}, rest {rest_day_s:duration} by day and {rest_at_night_s:duration} at night: the least energy that keeps the roots wet";
  }

  private void figures() {
    answer.figure(
        "shortest run",
        best,
        "{shortest}",
        "{fill_s} to fill the riser, {film_s} of film, {wetting_s} of wetting");
    answer.figure("slowest tower", best, "{tower}", "{flow_L_min} at the refill mark");
    answer.figure(
        "longest rest",
        best,
        "{longest_rest_day_s:duration}",
        said.day.longestRest().bound() == LongestRest.Bound.PLUG_WATER
            ? "by day, about, what plug and root hold; {longest_rest_night_s:duration} at night"
            : "by day, {longest_rest_night_s:duration} at night");
    said.plug.figure(answer, best);
    answer.figure("what binds", best, binds());
  }

  private String binds() {
    boolean plug = said.day.restBound() == LongestRest.Bound.PLUG_WATER;
    switch (said.day.runBound()) {
      case LEAST_CYCLE:
        return plug
            ? "the run: the starts an hour; the rest: the water plug and root hold"
            : "the run: the starts an hour; the rest: the dry limit";
      case NONE:
        return "nothing: the coil's draw makes rests dear";
      default:
        return bindsRun(plug);
    }
  }

  private String bindsRun(boolean plug) {
    switch (said.needs.least().longestPart()) {
      case FILL:
        return plug
            ? "the run: filling the riser takes most of it; the rest: the water plug and root hold"
            : "the run: filling the riser takes most of it; the rest: the dry limit";
      case FILM:
        return plug
            ? "the run: the film's way down takes most of it; the rest: the water plug and root hold"
            : "the run: the film's way down takes most of it; the rest: the dry limit";
      default:
        return plug
            ? "the run: wetting takes most of it; the rest: the water plug and root hold"
            : "the run: wetting takes most of it; the rest: the dry limit";
    }
  }

  /** Wear against energy: the proposal beside longer runs and shorter rests. */
  private void table() {
    answer.block();
    Phrase last = Phrase.of(priced ? "relay life" : "");
    answer.figure(
        "",
        Phrase.of("run, rest, at night"),
        Phrase.of("starts per day"),
        Phrase.of("energy"),
        Phrase.of(priced ? "cost" : "relay life"),
        last);
    for (int i = 0; i < said.lines.size(); i++) {
      DutyLine line = said.lines.get(i);
      Row row = said.rows.get(i).with(Row.aside(TIMINGS).set(TIMINGS, timings(line)));
      String relay = row.get(DutyRows.RELAY_DAYS) == null ? "never switches" : "{relay_days} days";
      answer.figure(
          line.name,
          row,
          "{timings}",
          "{starts}",
          "{kwh_total}",
          priced ? "{cost_total:money} {currency}" : relay,
          priced ? relay : "");
    }
  }

  private static String timings(DutyLine line) {
    Timetable table = line.timetable;
    if (DutySuggestion.PLAN.equals(line.name) && table.size() > 1) {
      return "as it stands";
    }
    if (table.timing(0).withoutPause()) {
      return table.size() == 1 ? "without pause" : "without pause by day";
    }
    String words =
        DutySuggestion.time(table.timing(0).runS())
            + ", "
            + DutySuggestion.time(table.timing(0).restS());
    return table.size() == 1
        ? words
        : words + ", " + DutySuggestion.time(table.timing(table.size() - 1).restS());
  }

  private void minds() {
    if (!said.plan.section("dry_limit").has("day")) {
      answer.mind(
          "dry-limit-practice",
          best,
          "a rest of {dry_limit_s:duration} is common practice, no experiment stands behind it for falling films. Young plugs and hot noons want less: look at the top roots before the pump starts.");
    }
    if (!said.needs.isMeasured()) {
      answer.mind("pump-guess", best, unmeasured());
    }
    DutyHint.controller(answer, said.plan, said.terms, said.lines.get(0));
    if (said.needs.filmDoubtful()) {
      answer.mind(
          "film-indication",
          "so thick a film is no longer smooth: its time is an indication only.");
    }
  }

  private String unmeasured() {
    return said.needs.share() > PumpCurve.USUAL_DERATE_WORN
        ? "the pump is not measured, and at 70 % of its printed head, as many pumps give, not every tower gets water; the flow here is that of {taken_pct}. Hold a bucket under it first: leat pump --measured."
        : "the pump is not measured: its flow here is that of {taken_pct} of its printed head. A bucket and a watch tell: leat pump --measured.";
  }

  private void working() {
    answer.working(
        Working.of(
            "least run",
            "t = fill + 3 h/u + wetting",
            Answer.filled(best, "fill {fill_s}, film {film_s}, wetting {wetting_s}"),
            said.needs.least().seconds(),
            Show.S.digits(4),
            "film Re up to 1500",
            "Nusselt 1916 for the film's mean speed u; factor 3 among roots: common practice"));
  }
}

package leat.command.run;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.command.MeasuredWords;
import leat.energy.Dates;
import leat.energy.DryLimit;
import leat.energy.EntryBounds;
import leat.energy.LeastRun;
import leat.energy.LongestRest;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Plan;
import leat.plan.Taken;
import leat.system.PeriodOf;
import leat.system.RunNeeds;
import leat.system.TimetableOf;
import leat.system.ZoneOf;

/** Holds a timetable against the least run and the longest rest, and says so. */
final class DutyBounds {
  private static final Column ENTRY = Column.plain("entry", "timing");
  private static final Column RUN = Column.of("run_s", "run", Show.S);
  private static final Column REST = Column.of("rest_s", "rest", Show.S);
  private static final Column LIMIT = Column.of("longest_rest_s", "longest rest", Show.S);
  private static final Column LEAST = Column.plain("least_run_s", "least run");
  private static final Column TOWER = Column.plain("tower", "tower");
  private static final Column WHEN = Column.plain("when", "when");

  private final Answer answer;
  private final LeastRun least;
  private final String tower;

  /** Whether what is broken makes the answer no. */
  private final boolean judges;

  private Phrase first;
  private boolean dry;

  private DutyBounds(Answer answer, LeastRun least, String tower, boolean judges) {
    this.judges = judges;
    this.answer = answer;
    this.least = least;
    this.tower = tower;
  }

  /**
   * Notes what is broken; a run under the least one, or a rest over the dry limit, makes the answer
   * no.
   */
  static DutyBounds judge(
      Answer answer, Plan plan, Timetable timetable, PeriodOf period, Taken taken) {
    RunNeeds needs = RunNeeds.isKnown(plan) ? RunNeeds.of(plan, taken) : null;
    MeasuredWords.say(answer, needs == null ? null : needs.believed(), "");
    LeastRun least = needs == null ? null : needs.least();
    DutyBounds bounds = new DutyBounds(answer, least, least == null ? "" : needs.tower(), true);
    if (needs != null && needs.dryTower() != null) {
      bounds.dryTower(needs.dryTower());
    }
    if (least != null) {
      bounds.figure(timetable);
    }
    bounds.timings(plan, timetable, period.dates(), taken);
    return bounds;
  }

  private void dryTower(String name) {
    Row row = Row.aside(TOWER).set(TOWER, name);
    answer.mind(
        "dry-tower",
        row,
        "with the tank at the refill mark no water reaches the top of {tower}, however long the pump runs.");
    dry = true;
    sayFirst(row, "No timing waters {tower} with the tank at the refill mark. ");
  }

  /** Notes the rests of the plan's timing that roots do not bear; the answer stays what it is. */
  static void rests(Answer answer, Plan plan, Taken taken) {
    if (TimetableOf.isKnown(plan)) {
      new DutyBounds(answer, null, "", false).timings(plan, TimetableOf.of(plan), null, taken);
    }
  }

  /** {@code dates} are those of the plan's season when null. */
  private void timings(Plan plan, Timetable timetable, Dates dates, Taken taken) {
    if (timetable.size() > 1) {
      entries(plan, timetable, dates == null ? ZoneOf.season(plan, taken) : dates, taken);
      return;
    }
    Timing timing = timetable.timing(0);
    run(timing, -1);
    if (RunNeeds.restsTooLong(plan, timing)) {
      rest(timing, RunNeeds.dryDay(plan, taken), true, -1);
    }
  }

  /** What is to be said first, before any cost, or null. */
  Phrase first() {
    return first;
  }

  /** Whether a tower gets no water at the refill mark. */
  boolean dry() {
    return dry;
  }

  private void entries(Plan plan, Timetable timetable, Dates dates, Taken taken) {
    DryLimit dry = RunNeeds.dryLimit(plan, taken);
    EntryBounds[] bounds =
        EntryBounds.of(
            timetable,
            dates,
            DryLimit.usualNight(),
            least == null ? new LeastRun(0, 0, LeastRun.USUAL_WETTING_S) : least,
            LongestRest.of(dry.dayS()),
            LongestRest.of(dry.nightS()));
    taken.note("night 22:00 to 06:00");
    for (int i = 0; i < bounds.length; i++) {
      run(bounds[i].timing(), bounds[i].entry());
      rest(bounds[i].timing(), bounds[i].longestRestS(), bounds[i].byDay(), bounds[i].entry());
    }
  }

  private void figure(Timetable timetable) {
    boolean covered = true;
    for (int i = 0; i < timetable.size(); i++) {
      covered &= least.coveredBy(timetable.timing(i));
    }
    answer.figure(
        "least run",
        row(null, 0, -1),
        "{least_run_s} s",
        covered
            ? "covered: fill, film, wet the lowest pot of {tower}"
            : "a run is too short: fill, film, wet the lowest pot of {tower}");
  }

  private Row row(Timing timing, double limit, int entry) {
    Row row =
        Row.aside(ENTRY, RUN, REST, LIMIT, LEAST, TOWER, WHEN)
            .set(ENTRY, entry)
            .set(LIMIT, limit)
            .set(TOWER, tower);
    if (least != null) {
      row.set(LEAST, (int) least.wholeSeconds());
    }
    return timing == null ? row : row.set(RUN, timing.runS()).set(REST, timing.restS());
  }

  private void run(Timing timing, int entry) {
    if (least == null || least.coveredBy(timing)) {
      return;
    }
    Row row = row(timing, 0, entry);
    sayFirst(
        row,
        entry < 0
            ? "The run is too short: {run_s:duration}, and the lowest pot of {tower} needs {least_run_s} s. "
            : "timing[{entry}] runs too short: {run_s:duration}, and the lowest pot of {tower} needs {least_run_s} s. ");
    answer.mind(
        "run-too-short",
        row,
        entry < 0
            ? "a run of {run_s:duration} does not water the lowest pot: {least_run_s} s are needed."
            : "timing[{entry}]: a run of {run_s:duration} does not water the lowest pot: {least_run_s} s are needed.");
  }

  private void rest(Timing timing, double limit, boolean byDay, int entry) {
    if (LongestRest.of(limit).allows(timing)) {
      return;
    }
    Row row = row(timing, limit, entry);
    row.set(WHEN, byDay ? "by day, 06:00 to 22:00" : "at night, 22:00 to 06:00");
    sayFirst(
        row,
        entry < 0
            ? "The rest is too long: {rest_s:duration}, over the dry limit of {longest_rest_s:duration} {when}. "
            : "timing[{entry}] rests too long: {rest_s:duration}, over the dry limit of {longest_rest_s:duration} {when}. ");
    answer.mind(
        "rest-too-long",
        row,
        entry < 0
            ? "a rest of {rest_s:duration} is over the dry limit of {longest_rest_s:duration} {when}: roots in a falling film keep little water."
            : "timing[{entry}]: a rest of {rest_s:duration} is over the dry limit of {longest_rest_s:duration} {when}: roots in a falling film keep little water.");
  }

  /** The answer is no, and the first reason opens it. */
  private void sayFirst(Row row, String template) {
    if (!judges) {
      return;
    }
    answer.no();
    first = first == null ? Answer.filled(row, template) : first;
  }
}

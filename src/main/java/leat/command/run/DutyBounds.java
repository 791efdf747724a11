package leat.command.run;

import leat.answer.Answer;
import leat.answer.Phrase;
import leat.command.MeasuredWords;
import leat.energy.DryLimit;
import leat.energy.EntryBounds;
import leat.energy.LeastRun;
import leat.energy.LongestRest;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Plan;
import leat.system.PeriodOf;
import leat.system.RunNeeds;
import leat.system.ZoneOf;

/** Holds a timetable against the least run and the longest rest, and says so. */
final class DutyBounds {
  private DutyBounds() {}

  /** Notes what is broken; a rest over the dry limit makes the answer no. */
  static void judge(Answer answer, Plan plan, Timetable timetable, PeriodOf period) {
    RunNeeds needs = RunNeeds.isKnown(plan) ? RunNeeds.of(plan) : null;
    MeasuredWords.say(answer, needs == null ? null : needs.believed(), "");
    LeastRun least = needs == null ? null : needs.least();
    if (needs != null && needs.dryTower() != null) {
      answer.mind(
          "dry-tower",
          Phrase.of("with the tank at the refill mark no water reaches the top of ")
              .add(needs.dryTower())
              .add(", however long the pump runs."));
    }
    if (least != null) {
      answer.figure(
          "least run",
          Phrase.of().count((long) least.wholeSeconds()).add(" s"),
          Phrase.of(covered(least, timetable) ? "covered: " : "a run is too short: ")
              .add("fill, film, wet the lowest pot of ")
              .add(needs.tower()));
    }
    if (timetable.size() == 1) {
      Timing timing = timetable.timing(0);
      run(answer, least, timing, "");
      if (RunNeeds.restsTooLong(plan, timing)) {
        rest(answer, timing, RunNeeds.dryDay(plan), "");
      }
      return;
    }
    DryLimit dry = RunNeeds.dryLimit(plan);
    EntryBounds[] bounds =
        EntryBounds.of(
            timetable,
            period.dates() == null ? ZoneOf.season(plan) : period.dates(),
            DryLimit.usualNight(),
            least == null ? new LeastRun(0, 0, LeastRun.USUAL_WETTING_S) : least,
            LongestRest.of(dry.dayS()),
            LongestRest.of(dry.nightS()));
    plan.taken().note("night 22:00 to 06:00");
    for (int i = 0; i < bounds.length; i++) {
      String where = "timing[" + bounds[i].entry() + "]: ";
      run(answer, least, bounds[i].timing(), where);
      rest(answer, bounds[i].timing(), bounds[i].longestRestS(), where);
    }
  }

  private static boolean covered(LeastRun least, Timetable timetable) {
    for (int i = 0; i < timetable.size(); i++) {
      if (!least.coveredBy(timetable.timing(i))) {
        return false;
      }
    }
    return true;
  }

  private static void run(Answer answer, LeastRun least, Timing timing, String where) {
    if (least == null || least.coveredBy(timing)) {
      return;
    }
    answer.mind(
        "run-too-short",
        Phrase.of(where)
            .add("a run of ")
            .duration(timing.runS())
            .add(" does not water the lowest pot: ")
            .count((long) least.wholeSeconds())
            .add(" s are needed."));
  }

  private static void rest(Answer answer, Timing timing, double limit, String where) {
    if (LongestRest.of(limit).allows(timing)) {
      return;
    }
    answer.no();
    answer.mind(
        "rest-too-long",
        Phrase.of(where)
            .add("a rest of ")
            .duration(timing.restS())
            .add(" is over the dry limit of ")
            .duration(limit)
            .add(": roots in a falling film keep little water."));
  }
}

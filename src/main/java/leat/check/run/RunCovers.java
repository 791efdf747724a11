package leat.check.run;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.LeastRun;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.system.RunNeeds;
import leat.system.TimetableOf;

/** Every run lasts until the lowest pot of the slowest tower is wet. */
final class RunCovers extends DeclaredRule {
  private static final Show SECONDS = Show.S.digits(3);

  RunCovers() {
    super(
        "run-covers",
        AT_LEAST,
        SECONDS,
        null,
        "fill time and Nusselt's film at the refill mark; factor 3 among roots and 20 s of wetting: common practice, no source",
        "timing wetting towers pump tank.low",
        "Run of the pump, against the time to fill the riser, to let the film come down and to wet the lowest pot.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Timetable timetable = TimetableOf.of(subject.plan());
    RunNeeds needs = RunNeeds.of(subject.plan(), subject.waterway(), subject.flowsLow());
    if (needs.dryTower() != null) {
      return List.of(
          Finding.words(
              this,
              Verdict.FAIL,
              "no water",
              Phrase.of(needs.dryTower() + " stays dry however long the pump runs")));
    }
    LeastRun least = needs.least();
    Double own = subject.ownLimit(this);
    double limit = own == null ? least.seconds() : own;
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < timetable.size(); i++) {
      Timing timing = timetable.timing(i);
      if (timing.withoutPause()) {
        continue;
      }
      double whole = own == null ? least.wholeSeconds() : Math.ceil(own);
      Phrase advice =
          Phrase.of("timing[" + i + "].run of ")
              .count((long) whole)
              .add(" s, for " + needs.tower());
      Finding finding = atLeast(timing.runS(), limit, Verdict.FAIL, advice);
      found.add(timetable.size() > 1 ? finding.at("timing[" + i + "]") : finding);
    }
    return found;
  }
}

package leat.check.run;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Suggestion;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.quantity.Units;
import leat.system.TimetableOf;

/** The pump starts no oftener than a small motor and its relay like. */
final class StartsPerHour extends DeclaredRule {
  private static final Show PER_HOUR = Show.of(Units.PER_H, 3);
  private static final double USUAL = 20;

  StartsPerHour() {
    super(
        "starts-per-hour",
        AT_MOST,
        PER_HOUR,
        Units.PER_H.toBase(USUAL),
        PRACTICE,
        "timing",
        "Starts an hour of the busiest timing: each start is a knock on the bearing and a spark at the contact.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Timetable timetable = TimetableOf.of(subject.plan());
    int busiest = 0;
    for (int i = 1; i < timetable.size(); i++) {
      if (timetable.timing(i).startsPerHour() > timetable.timing(busiest).startsPerHour()) {
        busiest = i;
      }
    }
    Timing timing = timetable.timing(busiest);
    double limit = limit(subject);
    Phrase advice = Phrase.of("longer rests");
    if (limit > 0) {
      double cycle = Suggestion.cycleForStarts(Units.PER_H.fromBase(limit));
      advice =
          Mends.of(Phrase.of(), "timing[" + busiest + "].rest", cycle - timing.runS(), Show.MIN);
    }
    Finding finding =
        atMost(
            Units.PER_H.toBase(timing.startsPerHour()),
            limit,
            subject.ownLimit(this) == null ? Verdict.WARN : Verdict.FAIL,
            advice);
    return List.of(timetable.size() > 1 ? finding.at("timing[" + busiest + "]") : finding);
  }
}

package leat.check.run;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Suggestion;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.quantity.Units;

/** The pump starts no oftener than a small motor and its relay like. */
final class StartsPerHour extends TimingRule {
  private static final Show PER_HOUR = Show.of(Units.PER_H, 3);
  private static final double USUAL = 20;

  StartsPerHour() {
    super(
        "starts-per-hour",
        AT_MOST,
        PER_HOUR,
        Units.PER_H.toBase(USUAL),
        PRACTICE,
        "timing[].run timing[].rest",
        "Starts an hour of the busiest timing: each start is a knock on the bearing and a spark at the contact.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Timetable timetable = subject.timetable();
    int busiest = 0;
    for (int i = 1; i < timetable.size(); i++) {
      if (timetable.timing(i).startsPerHour() > timetable.timing(busiest).startsPerHour()) {
        busiest = i;
      }
    }
    double starts = Units.PER_H.toBase(timetable.timing(busiest).startsPerHour());
    Verdict breach = subject.ownLimit(this) == null ? Verdict.WARN : Verdict.FAIL;
    return List.of(atMost(starts, limit(subject), breach).at(busiest));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    int entry = finding.part();
    Timing timing = subject.timetable().timing(entry);
    double cycle = Suggestion.cycleForStarts(Units.PER_H.fromBase(finding.limit()));
    double both = cycle / timing.cycleS();
    return Advice.of("longer rests")
        .cure(Cure.atLeast(key(entry, "rest"), cycle - timing.runS(), Show.MIN))
        .cure(
            Cure.atLeast(key(entry, "run"), both * timing.runS(), Show.S.digits(3))
                .andAtLeast(key(entry, "rest"), both * timing.restS(), Show.MIN))
        .cure(Cure.atLeast(key(entry, "run"), cycle - timing.restS(), Show.S.digits(3)));
  }
}

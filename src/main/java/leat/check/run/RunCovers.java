package leat.check.run;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.LeastRun;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.system.RunNeeds;

/** Every run lasts until the lowest pot of the slowest tower is wet. */
final class RunCovers extends TimingRule {
  private static final Show SECONDS = Show.S.digits(3);

  RunCovers() {
    super(
        "run-covers",
        AT_LEAST,
        SECONDS,
        null,
        "fill time and Nusselt's film at the refill mark; factor 3 among roots and 20 s of wetting: common practice, no source",
        "timing[].run timing[].rest wetting pump.check_valve "
            + ReadKeys.WATER_WAY
            + ReadKeys.STACK
            + ReadKeys.FILM,
        "Run of the pump, against the time to fill the riser, to let the film come down and to wet the lowest pot.");
  }

  private static RunNeeds needs(Subject subject) {
    return RunNeeds.of(subject.plan(), subject.waterway(), subject.flowsLow(), subject.taken());
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Timetable timetable = subject.timetable();
    RunNeeds needs = needs(subject);
    if (needs.dryTower() != null) {
      return List.of(Finding.words(this, Verdict.FAIL, 0));
    }
    LeastRun least = needs.least();
    double limit = limitOr(subject, least.seconds());
    List<Finding> found = new ArrayList<>(timetable.size());
    for (int i = 0; i < timetable.size(); i++) {
      Timing timing = timetable.timing(i);
      if (!timing.withoutPause()) {
        found.add(atLeast(timing.runS(), limit, Verdict.FAIL).at(i));
      }
    }
    return found;
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return "no water";
  }

  /** What brings water to a dry tower: the advice of the rule that says why it is dry. */
  private static Advice watered(Subject subject) {
    Rule[] why = {Rules.find("reaches-top"), Rules.find("tower-fed")};
    List<Finding> found = Rules.judge(subject, why);
    for (int i = 0; i < found.size(); i++) {
      if (found.get(i).verdict() == Verdict.FAIL) {
        return found.get(i).rule().advice(subject, found.get(i));
      }
    }
    return Advice.none();
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    RunNeeds needs = needs(subject);
    if (!finding.hasValue()) {
      return watered(subject).say(needs.dryTower() + " stays dry however long the pump runs");
    }
    double whole = subject.ownLimit(this) == null ? needs.least().wholeSeconds() : finding.limit();
    return Advice.none()
        .cure(
            Cure.typed(key(finding.part(), "run"), (long) Math.ceil(whole) + " s")
                .remark(", for " + needs.tower()));
  }
}

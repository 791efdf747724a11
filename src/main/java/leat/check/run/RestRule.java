package leat.check.run;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.Overlap;
import leat.energy.Timetable;

/** No rest is longer than the roots bear, judged for the hours of day or of night. */
abstract class RestRule extends TimingRule {
  private final int part;
  private final String key;

  /** {@code part} 0 is the day, 1 the night; {@code key} that of {@code dry_limit}. */
  RestRule(int part, String key, double usual, String id, String meaning) {
    super(
        id,
        AT_MOST,
        Show.MIN,
        usual,
        PRACTICE + "; no survival curve for falling films was found",
        "dry_limit." + key + ReadKeys.TIMING,
        meaning);
    this.part = part;
    this.key = key;
  }

  /** The entry with the longest rest in force in these hours, -1 when none is. */
  private int worst(Subject subject, Timetable timetable) {
    if (timetable.size() == 1) {
      return 0;
    }
    Overlap overlap = subject.dayAndNight();
    int worst = -1;
    for (int i = 0; i < timetable.size(); i++) {
      if (overlap.seconds(i, part) > 0
          && (worst < 0 || timetable.timing(i).restS() > timetable.timing(worst).restS())) {
        worst = i;
      }
    }
    return worst;
  }

  @Override
  public final List<Finding> measure(Subject subject) {
    Timetable timetable = subject.timetable();
    int worst = worst(subject, timetable);
    if (worst < 0) {
      return List.of();
    }
    Double own = subject.ownLimit(this);
    double limit = own == null ? subject.section("dry_limit").get(key, subject.taken()) : own;
    return List.of(atMost(timetable.timing(worst).restS(), limit, Verdict.FAIL).at(worst));
  }

  @Override
  public final Advice advice(Subject subject, Finding finding) {
    return Advice.none()
        .also("dry_limit." + key + " if your roots bear it")
        .cure(Cure.atMost(key(finding.part(), "rest"), finding.limit(), Show.MIN))
        .cure(bothShorter(subject, finding));
  }

  /** A shorter rest, and a run shorter by the same share, that costs no more. */
  private Cure bothShorter(Subject subject, Finding finding) {
    double share = finding.limit() / finding.value();
    double run = subject.timetable().timing(finding.part()).runS() * share;
    return Cure.atMost(key(finding.part(), "rest"), finding.limit(), Show.MIN)
        .andAtMost(key(finding.part(), "run"), run, Show.S);
  }
}

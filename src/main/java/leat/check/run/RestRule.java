package leat.check.run;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.energy.DryLimit;
import leat.energy.Overlap;
import leat.energy.Timetable;
import leat.energy.Windows;
import leat.system.TimetableOf;
import leat.system.ZoneOf;

/** No rest is longer than the roots bear, judged for the hours of day or of night. */
abstract class RestRule extends DeclaredRule {
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
        "timing dry_limit season site.time_zone",
        meaning);
    this.part = part;
    this.key = key;
  }

  @Override
  public final List<Finding> judge(Subject subject) {
    Timetable timetable = TimetableOf.of(subject.plan());
    Overlap overlap =
        Overlap.of(
            ZoneOf.season(subject.plan()),
            timetable.windows(),
            Windows.dayAndNight(DryLimit.usualNight()));
    int worst = -1;
    for (int i = 0; i < timetable.size(); i++) {
      if (overlap.seconds(i, part) > 0
          && (worst < 0 || timetable.timing(i).restS() > timetable.timing(worst).restS())) {
        worst = i;
      }
    }
    if (worst < 0) {
      return List.of();
    }
    Double own = subject.ownLimit(this);
    double limit = own == null ? subject.section("dry_limit").get(key) : own;
    Phrase advice =
        Mends.atMost(Phrase.of(), "timing[" + worst + "].rest", limit, Show.MIN)
            .add(", or dry_limit." + key + " if your roots bear it");
    Finding finding = atMost(timetable.timing(worst).restS(), limit, Verdict.FAIL, advice);
    return List.of(timetable.size() > 1 ? finding.at("timing[" + worst + "]") : finding);
  }
}

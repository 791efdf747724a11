package leat.check.feed;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;

/** There is room for feed between the water's EC and the EC aimed at. */
final class TargetAboveWater extends DeclaredRule {
  private static final double LIMIT = 0.5;

  TargetAboveWater() {
    super(
        "target-above-water",
        AT_LEAST,
        Show.MS_CM,
        LIMIT,
        PRACTICE,
        "target.ec water.ec",
        "What is left for feed: the EC aimed at less the EC of the water poured. With little left the plants live on tap salts, and with none the target cannot be reached at all.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    double room = subject.section("target").need("ec") - subject.section("water").need("ec");
    return List.of(atLeast(room, limit(subject), room > 0 ? Verdict.WARN : Verdict.FAIL));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double target = subject.section("target").need("ec");
    double water = subject.section("water").need("ec");
    Advice advice = Advice.of("rain in the can");
    advice.cure(Cure.atLeast("target.ec", water + finding.limit(), Show.MS_CM));
    return target > finding.limit()
        ? advice.cure(Cure.atMost("water.ec", target - finding.limit(), Show.MS_CM))
        : advice;
  }
}

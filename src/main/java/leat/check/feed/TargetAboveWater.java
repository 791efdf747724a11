package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;

/** There is room for feed between the water's EC and the EC aimed at. */
public final class TargetAboveWater extends DeclaredRule {
  public TargetAboveWater() {
    super(
        "target-above-water",
        AT_LEAST,
        Show.MS_CM,
        0.5,
        PRACTICE,
        "target.ec water.ec",
        "What is left for feed: the EC aimed at less the EC of the water poured. With little left the plants live on tap salts, and with none the target cannot be reached at all.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    double target = subject.section("target").need("ec");
    double water = subject.section("water").need("ec");
    double room = target - water;
    double limit = limit(subject);
    Phrase advice = Mends.of(Phrase.of(), "target.ec", water + limit, Show.MS_CM);
    if (target > limit) {
      advice.add(", or rain in the can: ");
      Mends.atMost(advice, "water.ec", target - limit, Show.MS_CM);
    }
    return List.of(atLeast(room, limit, room > 0 ? Verdict.WARN : Verdict.FAIL, advice));
  }
}

package leat.check.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Subject;
import leat.system.StandingOf;

/** A rule of one tower in the wind; silent until the plan names a wind. */
abstract class StandingRule extends RuleOfTowers {
  /** What every rule of standing reads. */
  static final String READS =
      "site.wind site.terrain site.height_above_ground site.shelter site.gust_factor"
          + " site.air_density tank towers";

  StandingRule(
      String id, String need, Show show, Double usualLimit, String source, String meaning) {
    super(id, need, show, usualLimit, source, READS, meaning);
  }

  @Override
  public final List<Finding> measure(Subject subject) {
    List<Finding> found = new ArrayList<>();
    if (!subject.section("site").section("wind").isGiven()) {
      return found;
    }
    StandingOf standing = subject.standing();
    for (int t = 0; t < standing.towers(); t++) {
      Finding finding = measure(subject, standing, t);
      if (finding != null) {
        found.add(finding.at(t));
      }
    }
    return found;
  }

  /** Measures one tower; null when the rule has nothing to say of it. */
  abstract Finding measure(Subject subject, StandingOf standing, int t);
}

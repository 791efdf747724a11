package leat.check.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.Subject;
import leat.system.TowerAt;
import leat.system.Waterway;

/** A rule of flow: judged tower by tower, with the tank at its refill mark or full. */
abstract class TowerRule extends RuleOfTowers {
  /** Level at which the tower is judged. */
  enum At {
    LOW,
    FULL
  }

  private final At at;

  TowerRule(
      At at,
      String id,
      String need,
      Show show,
      Double usualLimit,
      String source,
      String reads,
      String meaning) {
    super(id, need, show, usualLimit, source, reads, meaning);
    this.at = at;
  }

  private TowerAt tower(Subject subject, int t) {
    return at == At.LOW ? subject.low(t) : subject.full(t);
  }

  @Override
  public final List<Finding> measure(Subject subject) {
    Waterway way = subject.waterway();
    List<Finding> found = new ArrayList<>(way.towers());
    for (int t = 0; t < way.towers(); t++) {
      Finding finding = measure(subject, tower(subject, t));
      if (finding != null) {
        found.add(finding.at(t));
      }
    }
    return found;
  }

  @Override
  public final Advice advice(Subject subject, Finding finding) {
    return advice(subject, tower(subject, finding.part()), finding);
  }

  /** Measures one tower; null when the rule has nothing to say of it. */
  abstract Finding measure(Subject subject, TowerAt tower);

  /** What to change so that a tower passes. */
  abstract Advice advice(Subject subject, TowerAt tower, Finding finding);
}

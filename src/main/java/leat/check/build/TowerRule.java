package leat.check.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;
import leat.system.Waterway;

/** A rule that is judged tower by tower, with the tank at its refill mark or full. */
abstract class TowerRule extends DeclaredRule {
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

  @Override
  public final List<Finding> judge(Subject subject) {
    Waterway way = subject.waterway();
    ManifoldFlow flows = at == At.LOW ? subject.flowsLow() : subject.flowsFull();
    List<Finding> found = new ArrayList<>();
    for (int t = 0; t < way.towers(); t++) {
      Finding finding = judge(subject, new TowerAt(way, t, flows), flows);
      if (finding != null) {
        found.add(way.towers() > 1 ? finding.at(way.name(t)) : finding);
      }
    }
    return found;
  }

  /** Judges one tower; null when the rule has nothing to say of it. */
  abstract Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows);

  /** Key path of the tower, such as {@code towers[0].outlet}. */
  static String key(TowerAt tower, String name) {
    return "towers[" + tower.number() + "]." + name;
  }
}

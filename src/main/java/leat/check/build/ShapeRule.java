package leat.check.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Finding;
import leat.check.Subject;
import leat.plan.Section;
import leat.system.Stack;

/** A rule of geometry: judged tower by tower from its measures alone, without a pump. */
abstract class ShapeRule extends RuleOfTowers {
  ShapeRule(
      String id,
      String need,
      Show show,
      Double usualLimit,
      String source,
      String reads,
      String meaning) {
    super(id, need, show, usualLimit, source, reads, meaning);
  }

  @Override
  public final List<Finding> measure(Subject subject) {
    List<Section> towers = towers(subject);
    List<Finding> found = new ArrayList<>(towers.size());
    for (int t = 0; t < towers.size(); t++) {
      found.add(measure(subject, towers.get(t)).at(t));
    }
    return found;
  }

  @Override
  public final Advice advice(Subject subject, Finding finding) {
    return advice(subject, towers(subject).get(finding.part()), finding);
  }

  /** Height of the top of a tower's modules over the tank's floor, m; NaN when unknown. */
  static double top(Section tower) {
    return Stack.of(tower).top().orElse(Double.NaN);
  }

  /** Height of the middle of its top module, m; NaN when unknown. */
  static double highestPot(Section tower) {
    return Stack.of(tower).highestPot().orElse(Double.NaN);
  }

  /** Measures one tower; unknown when one of {@link #needs} is missing. */
  abstract Finding measure(Subject subject, Section tower);

  /** What to change so that a tower passes. */
  abstract Advice advice(Subject subject, Section tower, Finding finding);
}

package leat.check.build;

import java.util.ArrayList;
import java.util.List;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;

/** Guy lines go to the ground: tied to the tank they add nothing against tipping. */
final class GuyAnchor extends RuleOfTowers {
  private static final int TANK = 0;
  private static final int GROUND = 1;

  GuyAnchor() {
    super(
        "guy-anchor",
        "to the ground",
        null,
        null,
        "statics",
        "towers[].guys.anchor",
        "What guy lines are tied to: lines to the tank, or to anything it carries, hold the tower to the tank and add nothing against tipping of the whole. A railing is no anchor until somebody who may say so does.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    List<Section> towers = towers(subject);
    List<Finding> found = new ArrayList<>();
    for (int t = 0; t < towers.size(); t++) {
      String anchor = towers.get(t).section("guys").text("anchor");
      if (anchor != null) {
        boolean ground = "ground".equals(anchor);
        found.add(
            Finding.words(this, ground ? Verdict.PASS : Verdict.WARN, ground ? GROUND : TANK)
                .at(t));
      }
    }
    return found;
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return finding.saying() == GROUND ? "to the ground" : "to the tank";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of("tie the lines to the ground")
        .cure(Cure.typed(key(finding.part(), "guys.anchor"), "ground"));
  }
}

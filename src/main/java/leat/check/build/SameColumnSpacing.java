package leat.check.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.parts.Module;
import leat.parts.PotRing;
import leat.parts.Tower;
import leat.plan.Section;
import leat.quantity.Units;
import leat.system.StackOf;

/** Pots over each other stand far enough apart. */
final class SameColumnSpacing extends RuleOfTowers {
  private static final Show DEGREES = Show.of(Units.DEG, 3);

  SameColumnSpacing() {
    super(
        "same-column-spacing",
        AT_LEAST,
        Show.MM,
        PotRing.LEAST_SPACING,
        PRACTICE,
        "towers[].base.height towers[].modules[].pots towers[].modules[].turn"
            + " towers[].modules[].diameter"
            + ReadKeys.STACK,
        "Height between two pots in one line, by the turn of each module against the one below: closer, the upper plants shade the lower ones.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    List<Section> towers = towers(subject);
    List<Finding> found = new ArrayList<>();
    for (int t = 0; t < towers.size(); t++) {
      Tower stack = known(towers.get(t)) ? stack(subject, towers.get(t)) : null;
      Double spacing = stack == null ? null : stack.sameColumnSpacing();
      if (spacing != null) {
        found.add(atLeast(spacing, limit(subject), Verdict.WARN).at(t));
      }
    }
    return found;
  }

  private static Tower stack(Subject subject, Section tower) {
    return StackOf.of(subject.section("tank"), tower);
  }

  /** Whether its modules say how they are turned. */
  private static boolean known(Section tower) {
    List<Section> modules = tower.sections("modules");
    boolean known = !modules.isEmpty() && tower.section("base").has("height");
    for (int i = 0; i < modules.size(); i++) {
      known &= modules.get(i).has("turn") && modules.get(i).has("diameter");
    }
    return known;
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    int t = finding.part();
    Tower stack = stack(subject, towers(subject).get(t));
    Advice advice = Advice.of("another turn, or taller modules");
    for (int i = 0; i < stack.modules().size(); i++) {
      Module module = stack.modules().get(i);
      Double best = module.ring().bestTurn();
      Double now = module.sameColumnSpacing();
      if (best != null && now != null && now < finding.limit()) {
        String key = key(t, "modules[" + i + "].turn");
        advice.cure(Cure.atLeast(key, best, DEGREES));
      }
    }
    return advice;
  }
}

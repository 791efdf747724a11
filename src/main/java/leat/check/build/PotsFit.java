package leat.check.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.parts.PotRing;
import leat.plan.Section;

/** The pots fit round their module. */
final class PotsFit extends RuleOfTowers {
  PotsFit() {
    super(
        "pots-fit",
        AT_LEAST,
        Show.MM,
        PotRing.LEAST_ROOM,
        PRACTICE,
        "towers[].modules[].pot towers[].modules[].pots towers[].modules[].diameter",
        "Room between two pots round a module, on the straight line between their middles: less and they do not fit; sloped sockets need more.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    List<Section> towers = towers(subject);
    List<Finding> found = new ArrayList<>();
    for (int t = 0; t < towers.size(); t++) {
      Section tightest = tightest(towers.get(t));
      if (tightest != null) {
        double room = ring(tightest).room(tightest.need("pot"));
        found.add(atLeast(room, limit(subject), Verdict.FAIL).at(t));
      }
    }
    return found;
  }

  /** The modules with least room between their pots; null when none can be judged. */
  private static Section tightest(Section tower) {
    Section tightest = null;
    List<Section> modules = tower.sections("modules");
    for (int i = 0; i < modules.size(); i++) {
      Section module = modules.get(i);
      boolean known = module.has("pot") && module.has("diameter") && module.has("pots");
      if (known && module.need("pots") > 0) {
        double room = ring(module).room(module.need("pot"));
        if (tightest == null || room < ring(tightest).room(tightest.need("pot"))) {
          tightest = module;
        }
      }
    }
    return tightest;
  }

  private static PotRing ring(Section module) {
    return new PotRing(module.need("diameter"), (int) module.need("pots"), 0);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Section module = tightest(towers(subject).get(finding.part()));
    double pot = module.need("pot");
    Advice advice = Advice.of("fewer or smaller pots, or a wider module");
    int most = ring(module).mostPots(pot);
    if (most > 0) {
      advice.cure(Cure.typed(module.path("pots"), String.valueOf(most)));
    }
    return advice.cure(
        Cure.atLeast(module.path("diameter"), ring(module).diameterFor(pot), Show.MM));
  }
}

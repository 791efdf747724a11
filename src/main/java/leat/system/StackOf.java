package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.parts.Module;
import leat.parts.Tower;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.plan.Section;

/** The stack of a plan's tower, for heights and pots. */
public final class StackOf {
  private StackOf() {}

  /** The stack; refused with the key that is missing. */
  public static Tower of(Section tank, Section tower) {
    List<Section> sections = tower.sections("modules");
    if (sections.isEmpty()) {
      throw tower.missing("modules");
    }
    List<Module> modules = new ArrayList<>();
    for (int i = 0; i < sections.size(); i++) {
      modules.add(module(sections.get(i)));
    }
    return new Tower(
        tank.value("stand").orElse(0),
        tower.section("base").need("height"),
        modules,
        tower.section("cap").value("height").orElse(0));
  }

  private static Module module(Section module) {
    int count = module.countOr("count", 1);
    double height = module.need("height");
    Double overlap = module.maybe("overlap");
    double sits = overlap == null ? 0 : overlap;
    double diameter = module.need("diameter");
    int pots = module.countOr("pots", 0);
    Double turn = module.maybe("turn");
    double turned = turn == null ? 0 : turn;
    Double potAt = module.maybe("pot_at");
    try {
      return potAt == null
          ? Module.of(count, height, sits, diameter, pots, turned)
          : new Module(count, height, sits, diameter, pots, potAt, turned);
    } catch (Impossible e) {
      throw refused(module, e);
    }
  }

  /** A refusal of the trade at the key of its quantity. */
  static RuntimeException refused(Section module, Impossible e) {
    String key =
        "overlap".equals(e.quantity()) || "module height".equals(e.quantity())
            ? "overlap"
            : "pot height".equals(e.quantity()) ? "pot_at" : "wall";
    return module.has(key) ? new Refused(PlanErrors.refusedByTrade(module, key, e)) : e;
  }
}

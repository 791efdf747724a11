package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.parts.Module;
import leat.parts.Tower;
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
        tank.get("stand"),
        tower.section("base").need("height"),
        modules,
        tower.section("cap").get("height"));
  }

  private static Module module(Section module) {
    int count = module.has("count") ? module.count("count") : 1;
    double height = module.need("height");
    Double overlap = module.maybe("overlap");
    double sits = overlap == null ? 0 : overlap;
    double diameter = module.need("diameter");
    int pots = module.has("pots") ? module.count("pots") : 0;
    Double turn = module.maybe("turn");
    double turned = turn == null ? 0 : turn;
    Double potAt = module.maybe("pot_at");
    return potAt == null
        ? Module.of(count, height, sits, diameter, pots, turned)
        : new Module(count, height, sits, diameter, pots, potAt, turned);
  }
}

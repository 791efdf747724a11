package leat.check.build;

import java.util.List;
import leat.plan.Section;

/**
 * The stacked modules of a tower on their base; heights over the tank's floor, m.
 *
 * @param height of the stack alone; NaN without modules or their heights
 * @param top of the uppermost module; NaN when base or modules are unknown
 * @param highestPot middle of the uppermost module; NaN when unknown
 */
record Stack(double height, double top, double highestPot) {
  static Stack of(Section tower) {
    List<Section> modules = tower.sections("modules");
    Double base = tower.section("base").maybe("height");
    double height = modules.isEmpty() ? Double.NaN : 0;
    double overlap = 0;
    double last = 0;
    for (int i = 0; i < modules.size(); i++) {
      Section module = modules.get(i);
      last = orNan(module.maybe("height"));
      overlap = module.has("overlap") ? module.need("overlap") : 0;
      height += count(module) * (last - overlap);
    }
    height += overlap;
    double top = orNan(base) + height;
    return new Stack(height, top, top - last / 2);
  }

  private static double orNan(Double value) {
    return value == null ? Double.NaN : value;
  }

  /** How many of a kind of module there are. */
  static int count(Section module) {
    return module.has("count") ? module.count("count") : 1;
  }
}

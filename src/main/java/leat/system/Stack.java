package leat.system;

import java.util.List;
import java.util.OptionalDouble;
import leat.plan.Section;
import leat.plan.Value;

/**
 * The modules of a tower, stacked on its base, in values.
 *
 * @param modules number of kinds of module
 * @param base height of the base over the tank's floor, m
 * @param height of the whole stack, m, 0 without modules
 * @param highest height of the top kind of module, m, 0 without modules
 * @param diameter outside diameter of the lowest module, m
 * @param wall its wall, m, 0 when it is not told
 */
public record Stack(
    int modules, Value base, double height, double highest, Value diameter, double wall) {

  /** The stack of a tower; refused when a module's height is missing. */
  public static Stack of(Section tower) {
    List<Section> modules = tower.sections("modules");
    Value base = tower.section("base").value("height");
    int n = modules.size();
    if (n == 0) {
      return new Stack(0, base, 0, 0, Value.missing(tower, "modules"), 0);
    }
    double height = 0;
    double overlap = 0;
    for (int i = 0; i < n; i++) {
      Section module = modules.get(i);
      overlap = module.value("overlap").orElse(0);
      height += module.value("count").orElse(1) * (module.need("height") - overlap);
    }
    return new Stack(
        n,
        base,
        height + overlap,
        modules.get(n - 1).need("height"),
        modules.get(0).value("diameter"),
        modules.get(0).value("wall").orElse(0));
  }

  /** Height over which the film falls, m, or empty without modules. */
  public OptionalDouble filmHeight() {
    return height > 0 ? OptionalDouble.of(height) : OptionalDouble.empty();
  }

  /** Height of its top over the tank's floor, m, or empty when base or modules are unknown. */
  public OptionalDouble top() {
    return base.isKnown() && height > 0
        ? OptionalDouble.of(base.need() + height)
        : OptionalDouble.empty();
  }

  /** Height of the middle of the top module over the tank's floor, m, or empty when unknown. */
  public OptionalDouble highestPot() {
    return base.isKnown() && height > 0
        ? OptionalDouble.of(base.need() + height - highest / 2)
        : OptionalDouble.empty();
  }

  /** Inside diameter of the lowest module, m, or empty. */
  public OptionalDouble innerDiameter() {
    return diameter.isKnown()
        ? OptionalDouble.of(diameter.need() - 2 * wall)
        : OptionalDouble.empty();
  }
}

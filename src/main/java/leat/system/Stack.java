package leat.system;

import java.util.List;
import java.util.OptionalDouble;
import leat.plan.Section;
import leat.plan.Value;

/** The modules of a tower, stacked on its base, in values; added up when first asked for. */
public final class Stack {
  private final Value base;
  private final Value[] heights;
  private final Value[] overlaps;
  private final Value[] counts;
  private final Value diameter;
  private final Value wall;
  private double height = Double.NaN;

  private Stack(Section tower, List<Section> modules) {
    int n = modules.size();
    this.base = tower.section("base").value("height");
    this.heights = new Value[n];
    this.overlaps = new Value[n];
    this.counts = new Value[n];
    for (int i = 0; i < n; i++) {
      Section module = modules.get(i);
      heights[i] = module.value("height");
      overlaps[i] = module.value("overlap");
      counts[i] = module.value("count");
    }
    this.diameter = n == 0 ? tower.value("modules") : modules.get(0).value("diameter");
    this.wall = n == 0 ? null : modules.get(0).value("wall");
  }

  /** The stack of a tower of a plan. */
  public static Stack of(Section tower) {
    return new Stack(tower, tower.sections("modules"));
  }

  /** Height of the base over the tank's floor, m. */
  public Value base() {
    return base;
  }

  /** Height of the stack without its base, m, 0 without modules; refused when one has no height. */
  public double height() {
    if (Double.isNaN(height)) {
      double sum = 0;
      double overlap = 0;
      for (int i = 0; i < heights.length; i++) {
        overlap = overlaps[i].orElse(0);
        sum += counts[i].orElse(1) * (heights[i].need() - overlap);
      }
      height = sum + overlap;
    }
    return height;
  }

  /** Height over which the film falls, m, or empty without modules. */
  public OptionalDouble filmHeight() {
    return height() > 0 ? OptionalDouble.of(height()) : OptionalDouble.empty();
  }

  /** Height of its top over the tank's floor, m, or empty when base or modules are unknown. */
  public OptionalDouble top() {
    return base.isKnown() && height() > 0
        ? OptionalDouble.of(base.need() + height())
        : OptionalDouble.empty();
  }

  /** Height of the middle of the top module over the tank's floor, m, or empty when unknown. */
  public OptionalDouble highestPot() {
    return top().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(top().getAsDouble() - heights[heights.length - 1].need() / 2);
  }

  /** Outside diameter of the lowest module, m; its absence asks for it, or for the modules. */
  public Value diameter() {
    return diameter;
  }

  /** Inside diameter of the lowest module, m, or empty. */
  public OptionalDouble innerDiameter() {
    return heights.length > 0 && diameter.isKnown()
        ? OptionalDouble.of(diameter.need() - 2 * wall.orElse(0))
        : OptionalDouble.empty();
  }
}

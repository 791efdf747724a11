package leat.system;

import java.util.List;
import java.util.OptionalDouble;
import leat.hydraulics.WallFilms;
import leat.plan.Section;
import leat.plan.Value;

/** The modules of a tower, stacked on its base, in values; added up when first asked for. */
public final class Stack {
  private final Value base;
  private final Value[] heights;
  private final Value[] overlaps;
  private final Value[] counts;
  private final Value[] diameters;
  private final Value[] walls;
  private final String[] names;
  private final Value diameter;
  private final Value wall;
  private double height = Double.NaN;

  private Stack(Section tower, List<Section> modules) {
    int n = modules.size();
    this.base = tower.section("base").value("height");
    this.heights = new Value[n];
    this.overlaps = new Value[n];
    this.counts = new Value[n];
    this.diameters = new Value[n];
    this.walls = new Value[n];
    this.names = new String[n];
    for (int i = 0; i < n; i++) {
      Section module = modules.get(i);
      heights[i] = module.value("height");
      overlaps[i] = module.value("overlap");
      counts[i] = module.value("count");
      diameters[i] = module.value("diameter");
      walls[i] = module.value("wall");
      names[i] = module.text("name");
    }
    this.diameter = n == 0 ? tower.value("modules") : modules.get(0).value("diameter");
    this.wall = n == 0 ? null : modules.get(0).value("wall");
  }

  /** The stack of a tower of a plan. */
  public static Stack of(Section tower) {
    return new Stack(tower, tower.sections("modules"));
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

  /** Number of kinds of module. */
  public int kinds() {
    return heights.length;
  }

  /** Name of a kind of module, or its number. */
  public String name(int i) {
    return names[i] == null ? "module " + (i + 1) : names[i];
  }

  /** The wall of a kind of module, all of it together; null when a measure is missing. */
  public WallFilms.Wall wall(int i) {
    if (!diameters[i].isKnown() || !heights[i].isKnown()) {
      return null;
    }
    return new WallFilms.Wall(
        diameters[i].need() - 2 * walls[i].orElse(0),
        1,
        counts[i].orElse(1) * (heights[i].need() - overlaps[i].orElse(0)));
  }

  /** Whether its kinds of module differ in width. */
  public boolean widthsDiffer() {
    for (int i = 1; i < heights.length; i++) {
      WallFilms.Wall first = wall(0);
      WallFilms.Wall other = wall(i);
      if (first != null && other != null && first.innerDiameter() != other.innerDiameter()) {
        return true;
      }
    }
    return false;
  }
}

package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.stability.Column;
import leat.stability.GuyLines;
import leat.stability.Ring;

/** A tower of a plan as wind and gravity see it. */
public final class ColumnOf {
  private ColumnOf() {}

  /** The column; refused with the key that is missing or wrong. */
  public static Column of(Section tower, Taken taken) {
    Section cap = tower.section("cap");
    Section grown = tower.section("grown");
    Double mass = cap.maybe("mass");
    double base = tower.section("base").need("height");
    List<Ring> rings = rings(tower);
    try {
      return new Column(
          base,
          rings,
          cap.get("height", taken),
          mass == null ? 0 : mass,
          grown.get("mass", taken),
          grown.get("width", taken),
          tower.maybe("foot_radius"),
          tower.get("tie", taken),
          lines(tower.section("guys")));
    } catch (Impossible e) {
      throw "ring".equals(e.quantity()) ? refused(tower.section("guys"), e) : e;
    }
  }

  private static List<Ring> rings(Section tower) {
    List<Section> modules = tower.sections("modules");
    if (modules.isEmpty()) {
      throw tower.missing("modules");
    }
    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < modules.size(); i++) {
      Section module = modules.get(i);
      Ring ring = ring(module);
      int count = module.countOr("count", 1);
      for (int n = 0; n < count; n++) {
        rings.add(ring);
      }
    }
    return rings;
  }

  private static Ring ring(Section module) {
    Double overlap = module.maybe("overlap");
    Double wall = module.maybe("wall");
    double rise = module.need("height") - (overlap == null ? 0 : overlap);
    double diameter = module.need("diameter");
    double mass = module.need("mass");
    int pots = module.countOr("pots", 0);
    try {
      return new Ring(rise, diameter, wall == null ? 0 : wall, mass, pots);
    } catch (Impossible e) {
      throw StackOf.refused(module, e);
    }
  }

  /** The lines of a tower, ring over its foot; null for none. */
  private static GuyLines lines(Section guys) {
    if (!guys.isGiven()) {
      return null;
    }
    int lines = (int) guys.need("lines");
    double ring = guys.need("ring");
    double run = guys.need("run");
    boolean toGround = "ground".equals(guys.needRaw("anchor"));
    try {
      return new GuyLines(lines, ring, run, toGround);
    } catch (Impossible e) {
      throw refused(guys, e);
    }
  }

  /** A refusal of the trade at the key of its quantity: lines, ring, run. */
  private static RuntimeException refused(Section guys, Impossible e) {
    return new Refused(PlanErrors.refusedByTrade(guys, e.quantity(), e));
  }
}

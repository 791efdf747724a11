package leat.plan;

import java.util.List;
import leat.level.Body;
import leat.level.Cone;
import leat.level.LyingCylinder;
import leat.level.Sections;
import leat.level.SlopingFloorBox;
import leat.level.TaperedBox;
import leat.numeric.Impossible;
import leat.quantity.AreaAt;
import leat.quantity.Quantity;
import leat.quantity.Size;
import leat.quantity.Strap;

/** Whether the measures and levels of a tank can stand together. */
final class TankSense {
  private TankSense() {}

  static void check(Section tank, List<Problem> problems) {
    if (!tank.isGiven()) {
      return;
    }
    try {
      shape(tank, problems);
    } catch (Impossible e) {
      problems.add(PlanErrors.refusedByTrade(tank, key(tank, e.quantity()), e));
    }
    table(tank, problems);
    bodies(tank, problems);
    levels(tank, problems);
  }

  /** Height of the rim over the floor, m, or null when it is not known. */
  static Double rim(Section tank) {
    String shape = tank.text("shape");
    if ("lying-cylinder".equals(shape)) {
      return tank.maybe("diameter");
    }
    if ("table".equals(shape)) {
      List<?> rows = tank.list("table");
      return rows.isEmpty()
          ? null
          : Double.valueOf(((Strap) rows.get(rows.size() - 1)).level().value());
    }
    if ("sections".equals(shape)) {
      List<?> rows = tank.list("sections");
      return rows.isEmpty()
          ? null
          : Double.valueOf(((AreaAt) rows.get(rows.size() - 1)).level().value());
    }
    return tank.maybe("height");
  }

  private static String key(Section tank, String quantity) {
    if ("size".equals(quantity)) {
      return tank.has("bottom") ? "bottom" : "top";
    }
    if ("corner_top".equals(quantity) && !tank.has("corner_top")) {
      return "corner";
    }
    return tank.key.find(quantity) == null || !tank.has(quantity) ? "shape" : quantity;
  }

  private static void shape(Section tank, List<Problem> problems) {
    String shape = tank.text("shape");
    if (shape == null) {
      return;
    }
    double height = tank.has("height") ? tank.need("height") : 1;
    switch (shape) {
      case "box":
        box(tank, height, problems);
        break;
      case "tapered-box":
        taperedBox(tank, height, problems);
        break;
      case "cone":
        cone(tank, height, problems);
        break;
      case "lying-cylinder":
        if (tank.has("diameter") && tank.has("length")) {
          new LyingCylinder(tank.need("diameter"), tank.need("length"));
        }
        break;
      case "sloping-floor":
        slopingFloor(tank, problems);
        break;
      case "sections":
        sections(tank);
        break;
      default:
    }
  }

  private static void slopingFloor(Section tank, List<Problem> problems) {
    Size top = rectangle(tank, "top", problems);
    if (top != null && tank.has("height") && tank.has("floor_rise")) {
      new SlopingFloorBox(
          top.length().value(),
          top.width().value(),
          tank.need("height"),
          tank.has("floor_flat") ? tank.need("floor_flat") : 0,
          tank.need("floor_rise"));
    }
  }

  private static void sections(Section tank) {
    List<?> rows = tank.list("sections");
    if (!isWhole(tank, "sections") || rows.size() < 2) {
      return;
    }
    double[] levels = new double[rows.size()];
    double[] areas = new double[rows.size()];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = ((AreaAt) rows.get(i)).level().value();
      areas[i] = ((AreaAt) rows.get(i)).area().value();
    }
    new Sections(levels, areas, Sections.Between.STRAIGHT_AREA);
  }

  private static void box(Section tank, double height, List<Problem> problems) {
    Size size = rectangle(tank, tank.has("bottom") ? "bottom" : "top", problems);
    if (size != null) {
      double corner = tank.has("corner") ? tank.need("corner") : 0;
      TaperedBox.box(size.length().value(), size.width().value(), height, corner);
    }
  }

  private static void taperedBox(Section tank, double height, List<Problem> problems) {
    Size bottom = rectangle(tank, "bottom", problems);
    Size top = rectangle(tank, "top", problems);
    if (bottom != null && top != null) {
      double corner = tank.has("corner") ? tank.need("corner") : 0;
      TaperedBox.of(
          bottom.length().value(),
          bottom.width().value(),
          corner,
          top.length().value(),
          top.width().value(),
          tank.has("corner_top") ? tank.need("corner_top") : corner,
          height);
    }
  }

  private static void cone(Section tank, double height, List<Problem> problems) {
    Size bottom = round(tank, "bottom", problems);
    Size top = round(tank, "top", problems);
    if (bottom != null && top != null) {
      Cone.of(bottom.length().value(), top.length().value(), height);
    }
  }

  private static Size rectangle(Section tank, String name, List<Problem> problems) {
    Size size = (Size) tank.raw(name);
    if (size != null && size.width() == null) {
      problems.add(PlanErrors.sizeOfBox(tank, name));
      return null;
    }
    return size;
  }

  private static Size round(Section tank, String name, List<Problem> problems) {
    Size size = (Size) tank.raw(name);
    if (size != null && size.width() != null) {
      problems.add(PlanErrors.sizeOfCone(tank, name));
      return null;
    }
    return size;
  }

  private static void table(Section tank, List<Problem> problems) {
    List<?> rows = tank.list("table");
    if (!isWhole(tank, "table")) {
      return;
    }
    for (int i = 1; i < rows.size(); i++) {
      Strap before = (Strap) rows.get(i - 1);
      Strap row = (Strap) rows.get(i);
      rises(tank, "table", i, "levels", row.level(), before.level(), false, problems);
      rises(tank, "table", i, "volumes", row.volume(), before.volume(), true, problems);
    }
  }

  /** Tells an item of a list whose part does not rise over that of the item before. */
  static void rises(
      Section section,
      String name,
      int i,
      String what,
      Quantity got,
      Quantity before,
      boolean second,
      List<Problem> problems) {
    if (!(got.value() > before.value())) {
      Origin at = section.itemOrigin(name, i, got, second);
      problems.add(PlanErrors.mustRise(at, section.path(name) + "[" + i + "]", what, got, before));
    }
  }

  /** Whether every item of a list could be read, so that values and places count alike. */
  static boolean isWhole(Section section, String name) {
    Node node = section.node(name);
    return node != null
        && node.kind == Node.Kind.LIST
        && node.children.size() == section.list(name).size();
  }

  private static void bodies(Section tank, List<Problem> problems) {
    List<Section> bodies = tank.sections("bodies");
    for (int i = 0; i < bodies.size(); i++) {
      Section body = bodies.get(i);
      if (body.has("area") && body.has("to")) {
        try {
          new Body(body.need("area"), body.has("from") ? body.need("from") : 0, body.need("to"));
        } catch (Impossible e) {
          problems.add(PlanErrors.refusedByTrade(body, "to", e));
        }
      }
    }
  }

  private static void levels(Section tank, List<Problem> problems) {
    String rimKey = "lying-cylinder".equals(tank.text("shape")) ? "diameter" : "height";
    boolean byTable = "table".equals(tank.text("shape")) || "sections".equals(tank.text("shape"));
    PlanSense.notOver(tank, "low", "full", "the refill mark lies above full", problems);
    String[] names = {"full", "low", "intake", "rim_overflow"};
    for (int i = 0; i < names.length && !byTable; i++) {
      boolean told = "low".equals(names[i]) && isOver(tank, "low", "full");
      if (!told) {
        PlanSense.notOver(tank, names[i], rimKey, "it lies above the rim", problems);
      }
    }
    Double rim = rim(tank);
    Section drain = tank.section("drain");
    if (rim != null && drain.has("height") && drain.need("height") > rim) {
      problems.add(PlanErrors.overRim(drain, "height", rim));
    }
    for (int i = 0; i < names.length && byTable && rim != null; i++) {
      if (tank.has(names[i]) && tank.need(names[i]) > rim) {
        problems.add(PlanErrors.overRim(tank, names[i], rim));
      }
    }
  }

  private static boolean isOver(Section section, String name, String other) {
    return section.has(name) && section.has(other) && section.need(name) > section.need(other);
  }
}

package leat.system;

import java.util.List;
import leat.level.Body;
import leat.level.Cone;
import leat.level.Displaced;
import leat.level.LyingCylinder;
import leat.level.Sections;
import leat.level.SlopingFloorBox;
import leat.level.StrappingTable;
import leat.level.Tank;
import leat.level.TaperedBox;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.AreaAt;
import leat.quantity.Size;
import leat.quantity.Strap;

/** The tank of a plan's {@code tank} section. */
public final class TankOf {
  private TankOf() {}

  /** Whether enough is said of the tank to know its litres. */
  public static boolean isKnown(Section tank) {
    return tank.has("shape")
        && (tank.has("height")
            || tank.has("table")
            || tank.has("sections")
            || tank.has("diameter"));
  }

  /**
   * Refuses a level over the rim, where the plan tells it.
   *
   * @throws Impossible naming the quantity that was typed
   */
  public static void acceptLevel(Plan plan, String quantity, double level) {
    Double rim = plan.rim();
    if (rim != null && level > rim) {
      throw new Impossible(quantity, "the level lies above the rim of the tank");
    }
  }

  /** The tank, less what stands in it; refused with the key that is missing. */
  public static Tank of(Section tank, Taken taken) {
    String shape = (String) tank.needRaw("shape");
    Tank shell = shell(shape, tank, taken);
    List<Section> bodies = tank.sections("bodies");
    if (bodies.isEmpty()) {
      return shell;
    }
    Body[] inside = new Body[bodies.size()];
    for (int i = 0; i < inside.length; i++) {
      Section body = bodies.get(i);
      Double from = body.maybe("from");
      inside[i] = new Body(body.need("area"), from == null ? 0 : from, body.need("to"));
    }
    return new Displaced(shell, inside);
  }

  private static Tank shell(String shape, Section tank, Taken taken) {
    switch (shape) {
      case "box":
        Size box = rectangle(tank, tank.has("bottom") ? "bottom" : "top");
        return TaperedBox.box(
            box.length().value(),
            box.width().value(),
            tank.need("height"),
            tank.get("corner", taken));
      case "tapered-box":
        Size bottom = rectangle(tank, "bottom");
        Size top = rectangle(tank, "top");
        double corner = tank.get("corner", taken);
        Double cornerTop = tank.maybe("corner_top");
        return TaperedBox.of(
            bottom.length().value(),
            bottom.width().value(),
            corner,
            top.length().value(),
            top.width().value(),
            cornerTop == null ? corner : cornerTop,
            tank.need("height"));
      case "cylinder":
        return Cone.cylinder(tank.need("diameter"), tank.need("height"));
      case "cone":
        return Cone.of(diameter(tank, "bottom"), diameter(tank, "top"), tank.need("height"));
      case "lying-cylinder":
        return new LyingCylinder(tank.need("diameter"), tank.need("length"));
      case "sloping-floor":
        Size floor = rectangle(tank, "top");
        return new SlopingFloorBox(
            floor.length().value(),
            floor.width().value(),
            tank.need("height"),
            tank.get("floor_flat", taken),
            tank.need("floor_rise"));
      case "sections":
        return sections(tank, taken);
      default:
        return table(tank, taken);
    }
  }

  private static Size rectangle(Section tank, String name) {
    Size size = (Size) tank.needRaw(name);
    if (size.width() == null) {
      throw new leat.plan.Refused(leat.plan.PlanErrors.sizeOfBox(tank, name));
    }
    return size;
  }

  private static double diameter(Section tank, String name) {
    Size size = (Size) tank.needRaw(name);
    if (size.width() != null) {
      throw new leat.plan.Refused(leat.plan.PlanErrors.sizeOfCone(tank, name));
    }
    return size.length().value();
  }

  private static Tank sections(Section tank, Taken taken) {
    List<?> rows = (List<?>) tank.needRaw("sections");
    double[] levels = new double[rows.size()];
    double[] areas = new double[rows.size()];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = ((AreaAt) rows.get(i)).level().value();
      areas[i] = ((AreaAt) rows.get(i)).area().value();
    }
    return new Sections(
        levels,
        areas,
        "smooth".equals(tank.word("between", taken))
            ? Sections.Between.STRAIGHT_SIDE
            : Sections.Between.STRAIGHT_AREA);
  }

  private static Tank table(Section tank, Taken taken) {
    List<?> rows = (List<?>) tank.needRaw("table");
    double[] at = new double[rows.size()];
    double[] volumes = new double[rows.size()];
    for (int i = 0; i < at.length; i++) {
      Strap row = (Strap) rows.get(i);
      at[i] = row.level().value();
      volumes[i] = row.volume().value();
    }
    StrappingTable.Between between =
        "smooth".equals(tank.word("between", taken))
            ? StrappingTable.Between.MONOTONE_CUBIC
            : StrappingTable.Between.LINEAR;
    return new StrappingTable(at, volumes, between);
  }
}

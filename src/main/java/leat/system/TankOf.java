package leat.system;

import java.util.List;
import leat.level.Body;
import leat.level.Cone;
import leat.level.Displaced;
import leat.level.LyingCylinder;
import leat.level.StrappingTable;
import leat.level.Tank;
import leat.level.TaperedBox;
import leat.plan.Section;
import leat.quantity.Size;
import leat.quantity.Strap;

/** The tank of a plan's {@code tank} section. */
public final class TankOf {
  private TankOf() {}

  /** Whether enough is said of the tank to know its litres. */
  public static boolean isKnown(Section tank) {
    return tank.has("shape") && (tank.has("height") || tank.has("table") || tank.has("diameter"));
  }

  /** The tank, less what stands in it; refused with the key that is missing. */
  public static Tank of(Section tank) {
    String shape = (String) tank.needRaw("shape");
    Tank shell = shell(shape, tank);
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

  private static Tank shell(String shape, Section tank) {
    switch (shape) {
      case "box":
        Size box = rectangle(tank, tank.has("bottom") ? "bottom" : "top");
        return TaperedBox.box(
            box.length().value(), box.width().value(), tank.need("height"), tank.get("corner"));
      case "tapered-box":
        Size bottom = rectangle(tank, "bottom");
        Size top = rectangle(tank, "top");
        double corner = tank.get("corner");
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
      default:
        return table(tank);
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

  private static Tank table(Section tank) {
    List<?> rows = (List<?>) tank.needRaw("table");
    double[] at = new double[rows.size()];
    double[] volumes = new double[rows.size()];
    for (int i = 0; i < at.length; i++) {
      Strap row = (Strap) rows.get(i);
      at[i] = row.level().value();
      volumes[i] = row.volume().value();
    }
    StrappingTable.Between between =
        "smooth".equals(tank.word("between"))
            ? StrappingTable.Between.MONOTONE_CUBIC
            : StrappingTable.Between.LINEAR;
    return new StrappingTable(at, volumes, between);
  }
}

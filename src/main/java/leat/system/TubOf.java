package leat.system;

import leat.level.Tank;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Size;
import leat.stability.Drag;
import leat.stability.Foot;
import leat.stability.Ground;
import leat.stability.Tub;

/** The tank of a plan as wind and ground see it. */
public final class TubOf {
  private TubOf() {}

  /** The tub; refused with the key that is missing. */
  public static Tub of(Section tank, Tank inside, Taken taken) {
    double mass = tank.need("mass");
    Foot foot = foot(tank, taken);
    double walls = walls(tank);
    double length;
    double width;
    if (round(tank)) {
      double diameter = widest(tank) + walls;
      length = diameter;
      width = diameter;
    } else if ("lying-cylinder".equals(tank.text("shape"))) {
      length = tank.need("length") + walls;
      width = tank.need("diameter") + walls;
    } else {
      Size outline = outline(tank);
      length = outline == null ? foot.length() : outline.length().value() + walls;
      width = outline == null ? foot.width() : outline.width().value() + walls;
    }
    double drag = round(tank) ? Drag.ROUND_TANK : Drag.BOX_TANK;
    taken.note(round(tank) ? "a round tank's drag 0.8" : "tank's drag 1.3");
    return new Tub(mass, length, width, inside.height(), drag, tank.get("stand", taken), foot);
  }

  /** Friction of the foot on the ground, -. */
  public static double friction(Section tank, Taken taken) {
    Double measured = tank.maybe("friction");
    if (measured != null) {
      return measured;
    }
    Double known = tank.has("ground") ? Ground.friction(tank.text("ground")) : null;
    if (known == null) {
      taken.note("friction 0.3, a dry deck");
      return Ground.FRICTION;
    }
    return known;
  }

  /** What the tank stands on: its own foot, else its bottom. */
  public static Foot foot(Section tank, Taken taken) {
    Size size = (Size) tank.raw("foot");
    if (size == null) {
      taken.note("the tank's foot as large as its bottom");
      if ("cylinder".equals(tank.text("shape"))) {
        return Foot.round(tank.need("diameter"));
      }
      size = (Size) tank.raw("bottom");
      if (size == null) {
        throw tank.missing("foot");
      }
    }
    return size.width() == null
        ? Foot.round(size.length().value())
        : Foot.box(size.length().value(), size.width().value());
  }

  /** Area of the foot, m2. */
  public static double footArea(Section tank, Taken taken) {
    Size size = (Size) tank.raw("foot");
    boolean disc = size == null ? round(tank) : size.width() == null;
    return foot(tank, taken).area(disc);
  }

  private static double walls(Section tank) {
    Double thickness = tank.section("wall").maybe("thickness");
    return thickness == null ? 0 : 2 * thickness;
  }

  private static boolean round(Section tank) {
    String shape = tank.text("shape");
    return "cylinder".equals(shape) || "cone".equals(shape);
  }

  /** Diameter of a round tank at its widest, m. */
  private static double widest(Section tank) {
    if ("cylinder".equals(tank.text("shape"))) {
      return tank.need("diameter");
    }
    double top = ((Size) tank.needRaw("top")).length().value();
    return Math.max(top, ((Size) tank.needRaw("bottom")).length().value());
  }

  /** Inside of a box at its rim; null when only the foot tells its size. */
  private static Size outline(Section tank) {
    Size top = (Size) tank.raw("top");
    Size size = top != null ? top : (Size) tank.raw("bottom");
    return size == null || size.width() == null ? null : size;
  }
}

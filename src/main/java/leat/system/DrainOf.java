package leat.system;

import java.util.function.DoubleUnaryOperator;
import leat.hydraulics.Line;
import leat.hydraulics.Liquid;
import leat.hydraulics.Roughness;
import leat.hydraulics.TankDrain;
import leat.level.Tank;
import leat.plan.Section;
import leat.plan.Taken;

/** The drain of a plan's tank: a hole, or a hose on it. */
public final class DrainOf {
  /**
   * Down to so many bores over the hole's centre; below, air is drawn (common practice, no source).
   */
  private static final double AIR = 1.5;

  private static final double USUAL_CELSIUS = 20;

  private DrainOf() {}

  /** Level at which the drain begins to draw air, m. */
  public static double lowest(Section drain, Taken taken) {
    return centre(drain, taken) + AIR * drain.need("bore");
  }

  private static double centre(Section drain, Taken taken) {
    Double height = drain.maybe("height");
    if (height == null) {
      taken.note("drain at the floor");
      return drain.need("bore") / 2;
    }
    return height;
  }

  /**
   * Draining from a level until air is drawn; null when the level is not above that.
   *
   * @param level m
   * @param taken notes the defaults that are taken
   */
  public static TankDrain from(Section drain, final Tank tank, double level, Taken taken) {
    double end = lowest(drain, taken);
    if (level <= end) {
      return null;
    }
    DoubleUnaryOperator area =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double at) {
            return tank.area(at);
          }
        };
    Double length = drain.maybe("length");
    double bore = drain.need("bore");
    if (length == null) {
      taken.note("drain a sharp hole, 0.62");
      return TankDrain.throughHole(
          area, bore, centre(drain, taken), TankDrain.SHARP_HOLE, level, end);
    }
    Double drop = drain.maybe("drop");
    leat.hydraulics.PipeSection hose =
        new leat.hydraulics.PipeSection(
            length, bore, Roughness.SMOOTH_TUBE, leat.hydraulics.PipeSection.K_WHEN_NOT_NAMED);
    return TankDrain.throughHose(
        area,
        new Line(Liquid.water(USUAL_CELSIUS), hose),
        centre(drain, taken),
        drop == null ? 0 : drop,
        level,
        end);
  }
}

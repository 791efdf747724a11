package leat.hydraulics;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;

/**
 * Draining a tank by gravity through a hole, a stub or a hose.
 *
 * <pre>
 * t = integral of A(h) dh/Q(h) from the end to the start,   y = h - centre of the drain
 * hole, stub   Q = Cd a sqrt(2 g y)
 * hose         y + drop = (f L/D + sum K) v^2/2g   (K with entrance and exit; it replaces Cd)
 * </pre>
 *
 * <p>Integrated in u = sqrt(driving head), so that the end is not steep. Volume over starting flow
 * is 5 to 50 % too short. Valid to about 1.5 bores over the centre; below, air is drawn. A hose
 * must be primed and must not rise above the tank.
 *
 * <p>Source: E. Torricelli; sheet hydraulics.md section 10, hydraulics-tower.md section 5; check
 * values: hydraulics-drain.csv.
 *
 * @param seconds s
 * @param flowAtStart m3/s
 * @param flowAtEnd m3/s
 * @param volume drained, m3
 * @param volumeLeft under the final level, to be baled out, m3
 * @param naiveSeconds volume over starting flow, s, for comparison; 0 when there is nothing to
 *     drain
 * @param drawsAir the end lies within 1.5 bores of the drain's centre
 */
public record TankDrain(
    double seconds,
    double flowAtStart,
    double flowAtEnd,
    double volume,
    double volumeLeft,
    double naiveSeconds,
    boolean drawsAir) {

  /** Discharge coefficient of a sharp hole, - (0.61 to 0.62; from memory). */
  public static final double SHARP_HOLE = 0.62;

  /** Discharge coefficient of a stub 2 to 3 bores long, - (0.80 to 0.82; from memory). */
  public static final double STUB = 0.80;

  private static final double AIR_FROM = 1.5;
  private static final double ERROR = 1e-10;

  /**
   * Through a hole or a stub.
   *
   * @param area plan area of the tank, m2, of a level over its floor, m
   * @param bore of the drain, m
   * @param centre of the drain over the tank's floor, m; 0 for a hole in the floor
   * @param discharge coefficient, -; {@link #SHARP_HOLE} or {@link #STUB}
   * @param from level at the start, m
   * @param to level at the end, m, not under the centre
   * @return time and flows
   * @throws Impossible if the end lies over the start or under the drain
   */
  public static TankDrain throughHole(
      DoubleUnaryOperator area,
      double bore,
      double centre,
      double discharge,
      double from,
      double to) {
    acceptLevels(from, to);
    Impossible.unlessWithin("bore", bore, 1e-4, 10, "a drain's bore is over 0.1 mm");
    Impossible.unlessWithin(
        "discharge coefficient", discharge, 0.01, 1, "it is between 0.01 and 1");
    if (!(centre >= 0 && to >= centre && from > centre)) {
      throw new Impossible("level", "it does not run out below the drain's centre");
    }
    double perRoot = perRootHead(bore, discharge);
    DoubleUnaryOperator slice =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double u) {
            return 2 * area.applyAsDouble(centre + u * u) / perRoot;
          }
        };
    double u1 = Math.sqrt(from - centre);
    double u2 = Math.sqrt(to - centre);
    double seconds = from == to ? 0 : Quadrature.integral(slice, u2, u1, ERROR);
    boolean air = to < centre + AIR_FROM * bore;
    return result(area, seconds, perRoot * u1, perRoot * u2, from, to, air);
  }

  /**
   * Through a hose that ends lower, or level, in the open.
   *
   * @param area plan area of the tank, m2, of a level over its floor, m
   * @param hose with entrance and exit in its K
   * @param centre of the drain over the tank's floor, m
   * @param drop of the hose's end under the drain's centre, m; negative if it ends higher
   * @param from level at the start, m
   * @param to level at the end, m
   * @return time and flows
   * @throws Impossible if no head is left at the end
   */
  public static TankDrain throughHose(
      DoubleUnaryOperator area, Line hose, double centre, double drop, double from, double to) {
    acceptLevels(from, to);
    Impossible.unlessWithin("drop", drop, -1000, 1000, "a drop is under a kilometre");
    double shift = centre - drop;
    if (!(centre >= 0 && to >= centre && to > shift)) {
      throw new Impossible("drop", "no head is left to drive water through the hose");
    }
    double start = hose.flowAt(from - shift);
    DoubleUnaryOperator slice =
        new DoubleUnaryOperator() {
          private double last = start;

          @Override
          public double applyAsDouble(double u) {
            last = hose.flowAt(u * u, last, 50);
            return 2 * u * area.applyAsDouble(shift + u * u) / last;
          }
        };
    double u1 = Math.sqrt(from - shift);
    double u2 = Math.sqrt(to - shift);
    double seconds = from == to ? 0 : Quadrature.integral(slice, u2, u1, 1e-9);
    boolean air = to < centre + AIR_FROM * hose.section(0).bore();
    return result(area, seconds, start, hose.flowAt(to - shift), from, to, air);
  }

  private static TankDrain result(
      DoubleUnaryOperator area,
      double seconds,
      double start,
      double end,
      double from,
      double to,
      boolean air) {
    double volume = from == to ? 0 : Quadrature.integral(area, to, from, ERROR);
    double left = to == 0 ? 0 : Quadrature.integral(area, 0, to, ERROR);
    return new TankDrain(seconds, start, end, volume, left, volume / start, air);
  }

  private static double perRootHead(double bore, double discharge) {
    double hole = Math.PI / 4 * Impossible.unlessPositive("bore", bore) * bore;
    return discharge * hole * Math.sqrt(2 * Liquid.GRAVITY);
  }

  private static void acceptLevels(double from, double to) {
    Impossible.unlessWithin("level", from, 0, 1000, "a level is 0 or more");
    Impossible.unlessWithin("level", to, 0, from, "draining ends at or below where it starts");
  }
}

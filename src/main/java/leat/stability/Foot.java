package leat.stability;

import leat.numeric.Impossible;

/**
 * What the whole stands on: levers for wind on the long and on the short face.
 *
 * <p>The lever runs to the feet, not to the rim of a bulging tank.
 *
 * <p>Source: geometry; sheet stability-build.md section 3.
 *
 * @param length of the long side, m
 * @param width of the short side, m
 */
public record Foot(double length, double width) {
  /** Refuses a foot without size. */
  public Foot {
    Impossible.unlessPositive("foot", length);
    Impossible.unlessPositive("foot", width);
  }

  /**
   * A box's foot, sides in either order.
   *
   * @param one side, m, above 0
   * @param other side, m, above 0
   * @return the foot
   * @throws Impossible outside
   */
  public static Foot box(double one, double other) {
    return new Foot(Math.max(one, other), Math.min(one, other));
  }

  /**
   * A round foot.
   *
   * @param diameter m, above 0
   * @return the foot
   * @throws Impossible outside
   */
  public static Foot round(double diameter) {
    return new Foot(diameter, diameter);
  }

  /** Area of a rectangle, or of the disc when it is round, m2. */
  public double area(boolean disc) {
    return disc ? Math.PI / 4 * length * width : length * width;
  }

  /** Lever for wind square to the side, m. */
  public double lever(Side wind) {
    return (wind == Side.LONG_FACE ? width : length) / 2;
  }

  /** The side that the wind meets. */
  public enum Side {
    /** The long face: most area, shortest lever. */
    LONG_FACE,
    /** The short face. */
    SHORT_FACE
  }
}

package leat.level;

import leat.numeric.Impossible;

/**
 * A round upright tank: a cylinder, a bucket wider or narrower at its top, or a cone to a point;
 * the diameter is straight from bottom to top.
 *
 * <pre>A(z) = pi d(z)^2/4
 * V(z) = pi z (d0^2 + d0 d(z) + d(z)^2)/12</pre>
 *
 * <p>Source: geometry (frustum of a cone). Check values: sheets level-tank-volume.csv and
 * level-tank-shapes.csv.
 */
public final class Cone implements Tank {
  private final double bottom;
  private final double top;
  private final double height;

  private Cone(double bottom, double top, double height) {
    this.bottom = bottom;
    this.top = top;
    this.height = Accepted.size("height", height);
  }

  /**
   * An upright cylinder.
   *
   * @param diameter inside diameter, m
   * @param height inside height, m
   * @throws Impossible if a size is not above 0
   */
  public static Cone cylinder(double diameter, double height) {
    Accepted.size("diameter", diameter);
    return new Cone(diameter, diameter, height);
  }

  /**
   * A bucket or a cone.
   *
   * @param bottom inside diameter at the floor, m; 0 for a cone to a point
   * @param top inside diameter at the rim, m; 0 for a tank that closes to a point
   * @param height inside height, m
   * @throws Impossible if a diameter is negative, both are 0, or the height is not above 0
   */
  public static Cone of(double bottom, double top, double height) {
    Accepted.sizeOrZero("bottom", bottom);
    Accepted.sizeOrZero("top", top);
    if (bottom + top == 0) {
      throw new Impossible("top", "a cone needs a diameter at one end");
    }
    return new Cone(bottom, top, height);
  }

  @Override
  public double height() {
    return height;
  }

  private double diameter(double z) {
    return bottom + (top - bottom) * (z / height);
  }

  @Override
  public double area(double level) {
    double d = diameter(checkedLevel(level));
    return Math.PI * d * d / 4;
  }

  @Override
  public double volume(double level) {
    double z = checkedLevel(level);
    double d = diameter(z);
    return Math.PI * z * (bottom * bottom + bottom * d + d * d) / 12;
  }

  @Override
  public double level(double volume) {
    double v = checkedVolume(volume);
    if (bottom == top) {
      return Math.min(v / (Math.PI * top * top / 4), height);
    }
    if (bottom == 0) {
      return Math.min(Math.cbrt(12 * v * height * height / (Math.PI * top * top)), height);
    }
    return Inverse.level(this, v, 0, height);
  }
}

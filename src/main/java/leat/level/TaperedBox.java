package leat.level;

import leat.numeric.Impossible;

/**
 * A box, straight or tapered, with upright edges rounded or sharp: length, width and corner radius
 * each straight from bottom to top.
 *
 * <pre>A(z) = l(z) w(z) - (4 - pi) r(z)^2
 * V(z) = z (A(0) + 4 A(z/2) + A(z))/6        exact, A is quadratic in z</pre>
 *
 * A rounded edge between floor and wall is not modelled: with edge radius e the box holds about (1
 * - pi/4) e^2 times its perimeter less.
 *
 * <p>Source: geometry (prismatoid formula). Check values: sheet level-tank-volume.csv.
 */
public final class TaperedBox implements Tank {
  private final double height;
  private final double length0;
  private final double width0;
  private final double corner0;
  private final double length1;
  private final double width1;
  private final double corner1;

  private TaperedBox(double height, double[] bottom, double[] top) {
    this.height = Accepted.size("height", height);
    this.length0 = bottom[0];
    this.width0 = bottom[1];
    this.corner0 = bottom[2];
    this.length1 = top[0];
    this.width1 = top[1];
    this.corner1 = top[2];
  }

  /**
   * A straight box.
   *
   * @param length inside length, m
   * @param width inside width, m
   * @param height inside height, m
   * @param corner radius of the upright edges, m, 0 for sharp ones
   * @throws Impossible if a size is not above 0, or the radius is over half the smaller side
   */
  public static TaperedBox box(double length, double width, double height, double corner) {
    double[] ends = end("size", "corner", length, width, corner);
    return new TaperedBox(height, ends, ends);
  }

  /**
   * A tapered box.
   *
   * @param bottomLength inside length at the floor, m
   * @param bottomWidth inside width at the floor, m
   * @param bottomCorner radius of the upright edges at the floor, m, 0 for sharp ones
   * @param topLength inside length at the rim, m
   * @param topWidth inside width at the rim, m
   * @param topCorner radius of the upright edges at the rim, m
   * @param height inside height, m
   * @throws Impossible if a size is not above 0, or a radius is over half the smaller side
   */
  public static TaperedBox of(
      double bottomLength,
      double bottomWidth,
      double bottomCorner,
      double topLength,
      double topWidth,
      double topCorner,
      double height) {
    return new TaperedBox(
        height,
        end("bottom", "corner", bottomLength, bottomWidth, bottomCorner),
        end("top", "corner_top", topLength, topWidth, topCorner));
  }

  private static double[] end(
      String word, String cornerWord, double length, double width, double corner) {
    Accepted.size(word, length);
    Accepted.size(word, width);
    Accepted.sizeOrZero(cornerWord, corner);
    if (corner > Math.min(length, width) / 2 * (1 + ROUNDING)) {
      throw new Impossible(cornerWord, "a corner radius cannot be over half the smaller side");
    }
    return new double[] {length, width, corner};
  }

  @Override
  public double height() {
    return height;
  }

  private double section(double z) {
    double t = z / height;
    double l = length0 + (length1 - length0) * t;
    double w = width0 + (width1 - width0) * t;
    double r = corner0 + (corner1 - corner0) * t;
    return l * w - (4 - Math.PI) * r * r;
  }

  @Override
  public double area(double level) {
    return section(checkedLevel(level));
  }

  @Override
  public double volume(double level) {
    double z = checkedLevel(level);
    return z * (section(0) + 4 * section(z / 2) + section(z)) / 6;
  }

  @Override
  public double level(double volume) {
    double v = checkedVolume(volume);
    if (length0 == length1 && width0 == width1 && corner0 == corner1) {
      return Math.min(v / section(0), height);
    }
    return Inverse.level(this, v, 0, height);
  }
}

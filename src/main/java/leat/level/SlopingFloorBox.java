package leat.level;

import leat.numeric.Impossible;

/**
 * A box with upright sides whose floor is flat over a first stretch and then rises, straight, to
 * the far end.
 *
 * <pre>A(z) = w (f + (L - f) min(1, z/s))
 * V(z) = w (f z + (L - f) z^2/(2 s))     up to z = s
 * V(z) = w (L z - (L - f) s/2)           above</pre>
 *
 * with L length, w width, f the flat stretch and s the rise of the floor. The level counts from the
 * deep end.
 *
 * <p>Source: geometry (wedge and box). Check values: sheet level-tank-shapes.csv.
 */
public final class SlopingFloorBox implements Tank {
  private final double length;
  private final double width;
  private final double height;
  private final double flat;
  private final double rise;

  /**
   * @param length inside length, m
   * @param width inside width, m
   * @param height height of the rim over the deepest point, m
   * @param flat length of the flat stretch at the deep end, m; 0 for none
   * @param rise height of the floor's far end over its deep end, m
   * @throws Impossible if a size is not above 0, the flat stretch is not shorter than the box, or
   *     the floor rises to the rim
   */
  public SlopingFloorBox(double length, double width, double height, double flat, double rise) {
    this.length = Accepted.size("length", length);
    this.width = Accepted.size("width", width);
    this.height = Accepted.size("height", height);
    this.flat = Accepted.sizeOrZero("floor_flat", flat);
    this.rise = Accepted.size("floor_rise", rise);
    if (flat >= length) {
      throw new Impossible("floor_flat", "the flat stretch must be shorter than the box");
    }
    if (rise >= height) {
      throw new Impossible("floor_rise", "the floor cannot rise to the rim");
    }
  }

  @Override
  public double height() {
    return height;
  }

  @Override
  public double area(double level) {
    double z = checkedLevel(level);
    return width * (flat + (length - flat) * Math.min(1, z / rise));
  }

  @Override
  public double volume(double level) {
    double z = checkedLevel(level);
    if (z <= rise) {
      return width * z * (flat + (length - flat) * z / (2 * rise));
    }
    return width * (length * z - (length - flat) * rise / 2);
  }

  @Override
  public double level(double volume) {
    double v = checkedVolume(volume);
    double slope = length - flat;
    double wedge = width * rise * (flat + length) / 2;
    if (v >= wedge) {
      return Math.min((v / width + slope * rise / 2) / length, height);
    }
    // (s/(L-f)) (-f + sqrt(f^2 + 2 (L-f) V/(w s))) with the difference multiplied out
    double q = 2 * v / width;
    return v == 0 ? 0 : q / (flat + Math.sqrt(flat * flat + slope * q / rise));
  }
}

package leat.level;

import leat.numeric.Impossible;

/**
 * A tank known by the area of its section at several heights. Between two heights either the area
 * is straight, or its square root is (straight sides, both ways alike).
 *
 * <pre>straight area: dz (A1 + A2)/2        straight sides: dz (A1 + sqrt(A1 A2) + A2)/3</pre>
 *
 * A ledge is two sections a millimetre apart.
 *
 * <p>Source: geometry (trapezia, frusta of similar ends). Check values: sheet
 * level-tank-shapes.csv.
 */
public final class Sections implements Tank {
  /** What is straight between two heights. */
  public enum Between {
    /** The area. */
    STRAIGHT_AREA,
    /** The square root of the area. */
    STRAIGHT_SIDE
  }

  private final double[] height;
  private final double[] measure;
  private final boolean side;
  private final double[] volume;

  /**
   * @param heights heights of the sections over the floor, m, the first 0, strictly rising, at
   *     least two
   * @param areas areas there, m2, above 0
   * @param between what is straight between them
   * @throws Impossible if the heights do not rise from 0 or an area is not above 0
   */
  public Sections(double[] heights, double[] areas, Between between) {
    if (heights.length < 2 || heights.length != areas.length) {
      throw new Impossible("sections", "at least two are needed, a height and an area each");
    }
    if (heights[0] != 0) {
      throw new Impossible(
          "sections", "the first must be at height 0, the volume below it is unknown");
    }
    for (int i = 0; i < heights.length; i++) {
      if (!(areas[i] > 0)) {
        throw new Impossible("sections", "an area must be above 0");
      }
      Accepted.area("sections", areas[i]);
      if (i > 0 && !(heights[i] > heights[i - 1])) {
        throw new Impossible("sections", "the heights must rise");
      }
      if (i > 0) {
        Accepted.size("sections", heights[i]);
        Accepted.size("sections", heights[i] - heights[i - 1]);
      }
    }
    this.height = heights.clone();
    this.side = between == Between.STRAIGHT_SIDE;
    this.measure = areas.clone();
    this.volume = new double[areas.length];
    for (int i = 0; side && i < areas.length; i++) {
      measure[i] = Math.sqrt(areas[i]);
    }
    for (int i = 1; i < areas.length; i++) {
      volume[i] = volume[i - 1] + part(i - 1, height[i] - height[i - 1]);
    }
  }

  /** Volume of stretch k up to dz over its lower end, m3. */
  private double part(int k, double dz) {
    double a = measure[k];
    double b = measureAt(k, dz);
    return side ? dz * (a * a + a * b + b * b) / 3 : dz * (a + b) / 2;
  }

  private double measureAt(int k, double dz) {
    return measure[k] + (measure[k + 1] - measure[k]) * (dz / (height[k + 1] - height[k]));
  }

  @Override
  public double[] kinks() {
    return height.clone();
  }

  @Override
  public double height() {
    return height[height.length - 1];
  }

  @Override
  public double area(double level) {
    double z = checkedLevel(level);
    int k = Inverse.stretch(height, z);
    double m = measureAt(k, z - height[k]);
    return side ? m * m : m;
  }

  @Override
  public double volume(double level) {
    double z = checkedLevel(level);
    int k = Inverse.stretch(height, z);
    return volume[k] + part(k, z - height[k]);
  }

  @Override
  public double capacity() {
    return volume[volume.length - 1];
  }

  @Override
  public double level(double net) {
    double v = checkedVolume(net);
    int k = Inverse.stretch(volume, v);
    if (side) {
      return Inverse.level(this, v, height[k], height[k + 1]);
    }
    double slope = (measure[k + 1] - measure[k]) / (height[k + 1] - height[k]);
    double rest = v - volume[k];
    double root = Math.sqrt(Math.max(0, measure[k] * measure[k] + 2 * slope * rest));
    return Math.min(height[k] + 2 * rest / (measure[k] + root), height[k + 1]);
  }
}

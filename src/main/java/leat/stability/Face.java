package leat.stability;

import leat.numeric.Impossible;

/**
 * An outline that the wind meets.
 *
 * @param area as seen from windward, m2, 0 or more
 * @param height of its centre over the plane that moments count from, m, 0 or more
 * @param coefficient force coefficient on that area, -, 0 or more
 */
public record Face(double area, double height, double coefficient) {
  private static final double MOST = 1000;

  /** Refuses what no face can be. */
  public Face {
    Impossible.unlessWithin("area", area, 0, MOST, "the area of a face is 0 to 1000 m2");
    Impossible.unlessWithin("height", height, 0, MOST, "a face's centre is 0 to 1000 m up");
    Impossible.unlessWithin(
        "drag coefficient", coefficient, 0, 10, "a drag coefficient is 0 to 10");
  }

  /** Force per pressure, m2. */
  public double drag() {
    return coefficient * area;
  }

  /** Moment per pressure, m3. */
  public double moment() {
    return drag() * height;
  }
}

package leat.level;

import leat.numeric.Impossible;

/**
 * An upright body that stands in the tank and takes the liquid's place: a pump's body, the foot of
 * a column, a brick.
 *
 * <pre>takes S (min(z, to) - from)  when z > from</pre>
 *
 * <p>Source: geometry. Check values: sheet level-tank-volume.csv.
 *
 * @param area its section seen from above, m2
 * @param from level of its lower end, m over the tank's lowest point
 * @param to level of its upper end, m; may lie above the rim
 */
public record Body(double area, double from, double to) {
  /**
   * @throws Impossible if the area is not above 0 or the upper end is not above the lower
   */
  public Body {
    Accepted.area("displaced", area);
    Accepted.sizeOrZero("displaced", from);
    if (!(to > from)) {
      throw new Impossible("displaced", "the body's upper end must lie above its lower end");
    }
    Accepted.size("displaced", to);
    Accepted.size("displaced", to - from);
  }

  /**
   * What it takes when the liquid stands at a level, m3.
   *
   * @param level level, m
   */
  public double taken(double level) {
    return level <= from ? 0 : area * (Math.min(level, to) - from);
  }
}

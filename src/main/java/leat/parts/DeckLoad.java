package leat.parts;

import leat.numeric.Impossible;

/**
 * Press of the whole on the deck under its foot.
 *
 * <pre>
 * p = g m/A
 * </pre>
 *
 * <p>Water 0.4 m deep presses with 4 kPa already. A deck's own limit is for the whole floor; a
 * small foot may press more where joists carry it: somebody who knows the deck decides.
 *
 * <p>Source: definition; the usual limit from memory, not verified (EN 1991-1-1 recommends 2.5 to 4
 * kN/m2 for balconies).
 */
public final class DeckLoad {
  /** Press to look into, Pa (memory: the top of balconies' usual range). */
  public static final double USUAL = 4000;

  private static final double GRAVITY = 9.80665;

  private DeckLoad() {}

  /**
   * Press on the foot.
   *
   * @param mass of the whole, full and running, kg, 0 or more
   * @param area of the foot, m2, above 0
   * @return Pa
   * @throws Impossible outside
   */
  public static double pressure(double mass, double area) {
    Impossible.ifNegative("mass", mass);
    return GRAVITY * mass / Impossible.unlessPositive("foot", area);
  }

  /**
   * Area of a stiff board that spreads the mass.
   *
   * @param mass of the whole, kg, 0 or more
   * @param limit of the deck, Pa, above 0
   * @return m2
   * @throws Impossible outside
   */
  public static double areaFor(double mass, double limit) {
    Impossible.ifNegative("mass", mass);
    return GRAVITY * mass / Impossible.unlessPositive("deck load", limit);
  }
}

package leat.stability;

import leat.numeric.Impossible;

/**
 * Partial factors of a loss of balance.
 *
 * <pre>
 * passes when 1.5 M_over is at most 0.9 M_right, that is a safety factor of 1.667
 * </pre>
 *
 * <p>A load that may be absent counts as nought where it helps (memory): only the solution that is
 * surely there may hold a tower.
 *
 * <p>Source: EN 1990:2002, table A1.2(A), set EQU. Check values: stability-overturn.csv.
 */
public final class Equilibrium {
  /** On wind, -. */
  public static final double WIND = 1.5;

  /** On weight that holds, -. */
  public static final double WEIGHT = 0.9;

  /** Least safety factor, -: 1.667, not 1.5. */
  public static final double LEAST_SAFETY = WIND / WEIGHT;

  /** Standard gravity, m/s2. */
  public static final double GRAVITY = 9.80665;

  private Equilibrium() {}

  /**
   * What the weight leaves to lines, with the factors.
   *
   * @param overturning moment of the wind, N m, 0 or more
   * @param righting moment of the weight, N m, 0 or more
   * @return N m, 0 or more
   * @throws Impossible if negative
   */
  public static double residual(double overturning, double righting) {
    Impossible.ifNegative("overturning moment", overturning);
    Impossible.ifNegative("righting moment", righting);
    return Math.max(0, WIND * overturning - WEIGHT * righting);
  }
}

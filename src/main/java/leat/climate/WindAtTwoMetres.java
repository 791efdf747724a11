package leat.climate;

import leat.numeric.Impossible;

/**
 * Wind at 2 m from wind at another height over short grass, u2 = u 4.87/ln(67.8 z - 5.42).
 *
 * <p>Source: FAO-56 equation 47; sheet season.md section 1, check values season-fao56.csv.
 */
public final class WindAtTwoMetres {
  /** Lowest height accepted, m: the formula has no meaning within the grass. */
  public static final double LOWEST_M = 0.5;

  private static final double HIGHEST_M = 200;

  private WindAtTwoMetres() {}

  /**
   * The wind.
   *
   * @param windMs wind at the instrument, m/s, not negative
   * @param heightM height of the instrument over the ground, m
   * @return m/s; the wind itself when it was measured at 2 m
   * @throws Impossible if the wind is negative or the height outside 0.5 to 200 m
   */
  public static double ms(double windMs, double heightM) {
    Impossible.ifNegative("wind", windMs);
    Impossible.unlessWithin(
        "wind height", heightM, LOWEST_M, HIGHEST_M, "wind is measured 0.5 to 200 m up");
    return heightM == 2 ? windMs : windMs * 4.87 / Math.log(67.8 * heightM - 5.42);
  }
}

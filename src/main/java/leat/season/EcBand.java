package leat.season;

import leat.numeric.Impossible;

/**
 * The EC that the plants should see in the evening.
 *
 * @param lowMsCm the least, mS/cm; 0 for none
 * @param highMsCm the most, mS/cm; infinite for none
 */
public record EcBand(double lowMsCm, double highMsCm) {
  /** Every EC is inside. */
  public static final EcBand ANY = new EcBand(0, Double.POSITIVE_INFINITY);

  /**
   * @throws Impossible if the low end is negative or above the high one
   */
  public EcBand {
    Impossible.ifNegative("ec-low", lowMsCm);
    if (!(highMsCm >= lowMsCm)) {
      throw new Impossible("ec-high", "it must not lie under ec_low");
    }
  }
}

package leat.solution;

import leat.numeric.Impossible;

/**
 * What this package takes for a volume or an EC at all: far beyond any tower, so that a slip of the
 * unit is refused and no sum overflows.
 *
 * <p>Source: our own bounds (common sense: a swimming pool; a saturated brine is about 250 mS/cm).
 */
public final class Accepted {
  /** Largest volume taken, L. */
  public static final double LARGEST_VOLUME_L = 1e6;

  /** Largest EC taken, mS/cm. */
  static final double LARGEST_EC_MS_CM = 200;

  private Accepted() {}

  /**
   * Refuses an EC that no solution can have.
   *
   * @param quantity what it is called in a refusal
   * @param msCm EC, mS/cm
   * @throws Impossible below 0 or over {@link #LARGEST_EC_MS_CM}
   */
  public static void ec(String quantity, double msCm) {
    Impossible.ifNegative(quantity, msCm);
    Impossible.unlessWithin(
        quantity, msCm, 0, LARGEST_EC_MS_CM, "an EC over 200 mS/cm is a brine, not a solution");
  }

  /**
   * A volume from 0, taken when a home can have it.
   *
   * @param quantity what it is called in a refusal
   * @param litres volume, L
   * @return the same volume, L
   * @throws Impossible when it is not from 0 or over {@link #LARGEST_VOLUME_L}
   */
  public static double volume(String quantity, double litres) {
    Impossible.ifNegative(quantity, litres);
    return Impossible.unlessWithin(
        quantity, litres, 0, LARGEST_VOLUME_L, "it is more than a thousand cubic metres");
  }

  /**
   * A volume above 0, taken when a home can have it.
   *
   * @param quantity what it is called in a refusal
   * @param litres volume, L
   * @return the same volume, L
   * @throws Impossible when it is not above 0 or over {@link #LARGEST_VOLUME_L}
   */
  public static double someVolume(String quantity, double litres) {
    Impossible.unlessPositive(quantity, litres);
    return volume(quantity, litres);
  }
}

package leat.solution;

import leat.numeric.Impossible;

/**
 * What this package takes for a volume or an EC at all: far beyond any tower, so that a slip of the
 * unit is refused and no sum overflows.
 *
 * <p>Source: our own bounds (common sense: a swimming pool; a saturated brine is about 250 mS/cm).
 */
final class Limits {
  /** Largest volume taken, L. */
  static final double LARGEST_VOLUME_L = 1e6;

  /** Largest EC taken, mS/cm. */
  static final double LARGEST_EC_MS_CM = 200;

  private Limits() {}

  static double ec(String quantity, double msCm) {
    Impossible.ifNegative(quantity, msCm);
    return Impossible.unlessWithin(
        quantity, msCm, 0, LARGEST_EC_MS_CM, "an EC over 200 mS/cm is a brine, not a solution");
  }

  static double volume(String quantity, double litres) {
    Impossible.ifNegative(quantity, litres);
    return Impossible.unlessWithin(
        quantity, litres, 0, LARGEST_VOLUME_L, "it is more than a thousand cubic metres");
  }

  static double someVolume(String quantity, double litres) {
    Impossible.unlessPositive(quantity, litres);
    return volume(quantity, litres);
  }
}

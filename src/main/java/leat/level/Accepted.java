package leat.level;

import leat.numeric.Impossible;

/**
 * Sizes beyond which an input is a slip of the unit and sums would run out of digits: they are
 * refused.
 *
 * <p>Source: none, wide of anything that stands beside a tower.
 */
final class Accepted {
  /** Least size of a tank or a stretch of it, m. */
  private static final double LEAST_SIZE = 1e-6;

  /** Greatest, m. */
  private static final double GREATEST_SIZE = 1000;

  /** Least volume or step of volumes, m3. */
  private static final double LEAST_VOLUME = 1e-12;

  /** Greatest, m3. */
  private static final double GREATEST_VOLUME = 1e9;

  /** Greatest resistance that is not open, ohm. */
  private static final double GREATEST_OHM = 1e9;

  private Accepted() {}

  /** A size above 0 of a believable length, m. */
  static double size(String word, double value) {
    Impossible.unlessPositive(word, value);
    return Impossible.unlessWithin(
        word, value, LEAST_SIZE, GREATEST_SIZE, "it must lie from a thousandth of a mm to 1 km");
  }

  /** A size that may be 0, m. */
  static double sizeOrZero(String word, double value) {
    Impossible.ifNegative(word, value);
    return Impossible.unlessWithin(word, value, 0, GREATEST_SIZE, "it must lie from 0 to 1 km");
  }

  /** An area, m2. */
  static void area(String word, double value) {
    Impossible.unlessPositive(word, value);
    Impossible.unlessWithin(
        word,
        value,
        LEAST_SIZE * LEAST_SIZE,
        GREATEST_SIZE * GREATEST_SIZE,
        "it must lie from a millionth of a mm2 to 1 km2");
  }

  /** A volume above 0, m3. */
  static double volume(String word, double value) {
    Impossible.unlessPositive(word, value);
    return Impossible.unlessWithin(
        word, value, LEAST_VOLUME, GREATEST_VOLUME, "it must lie from 0.001 mm3 to 1 km3");
  }

  /** A volume that may be 0, m3. */
  static double volumeOrZero(String word, double value) {
    Impossible.ifNegative(word, value);
    return Impossible.unlessWithin(word, value, 0, GREATEST_VOLUME, "it must lie from 0 to 1 km3");
  }

  /** A resistance that may be 0, ohm. */
  static void ohm(String word, double value) {
    Impossible.ifNegative(word, value);
    Impossible.unlessWithin(
        word, value, 0, GREATEST_OHM, "more than a thousand million ohm is no resistor");
  }
}

package leat.season;

import leat.numeric.Impossible;

/**
 * What no home's tower has: typing mistakes, and what would make sums overflow.
 *
 * <p>Source: none; wide of any home system, our own bounds.
 */
final class Accepted {
  private static final double MOST_L = 1e6;
  private static final double MOST_MS_CM = 1000;
  private static final double MOST_M2 = 1e4;
  private static final double MOST_MM = 2000;
  private static final double MOST_THIRST = 100;

  private Accepted() {}

  static double litres(String what, double value) {
    return Impossible.unlessWithin(what, value, 0, MOST_L, "it must lie between 0 and 1000000 L");
  }

  static double ec(String what, double value) {
    return Impossible.unlessWithin(
        what, value, 0, MOST_MS_CM, "an EC lies between 0 and 1000 mS/cm");
  }

  static void area(String what, double value) {
    Impossible.unlessWithin(what, value, 0, MOST_M2, "it must lie between 0 and 10000 m2");
  }

  static void rain(double value) {
    Impossible.unlessWithin("rain", value, 0, MOST_MM, "a day's rain lies between 0 and 2000 mm");
  }

  static void thirst(double value) {
    Impossible.unlessWithin(
        "thirst", value, 0, MOST_THIRST, "the factor must lie between 0 and 100");
  }
}

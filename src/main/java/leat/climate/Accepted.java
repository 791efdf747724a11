package leat.climate;

import leat.numeric.Impossible;

/**
 * What this package accepts as input; the limits are refusals, not ranges of validity.
 *
 * <p>Source: none; wide of any place where people grow food, our own bounds.
 */
final class Accepted {
  /** Coldest and hottest air a weather file may hold, C (the sheet's own choice). */
  static final double COLDEST_CELSIUS = -60;

  static final double HOTTEST_CELSIUS = 60;

  /** Lowest and highest site, m: the shore of the lowest lake to the highest summit. */
  private static final double LOWEST_M = -450;

  private static final double HIGHEST_M = 9000;

  private Accepted() {}

  static void celsius(String quantity, double celsius) {
    Impossible.unlessWithin(
        quantity, celsius, COLDEST_CELSIUS, HOTTEST_CELSIUS, "air lies between -60 and 60 C");
  }

  static void range(double tminCelsius, double tmaxCelsius) {
    if (!(tmaxCelsius >= tminCelsius)) {
      throw new Impossible("tmax", "the day's highest temperature lies under its lowest");
    }
  }

  static double latitude(double degrees) {
    return Impossible.unlessWithin(
        "latitude", degrees, -90, 90, "it lies between -90 and 90 degrees, south negative");
  }

  static double altitude(double m) {
    return Impossible.unlessWithin(
        "altitude", m, LOWEST_M, HIGHEST_M, "it lies between -450 and 9000 m");
  }

  static int dayOfYear(int day) {
    if (day < 1 || day > 366) {
      throw new Impossible("date", "the day of the year lies between 1 and 366");
    }
    return day;
  }

  static double percent(String quantity, double percent) {
    return Impossible.unlessWithin(quantity, percent, 0, 100, "it lies between 0 and 100 per cent");
  }

  static double share(String quantity, double share) {
    return Impossible.unlessWithin(quantity, share, 0, 1, "it lies between 0 and 100 per cent");
  }

  static double size(String quantity, double value) {
    return Impossible.ifNegative(quantity, value);
  }
}

package leat.energy;

import leat.numeric.Impossible;

/**
 * What this package accepts as input, so that no answer overflows. The limits lie far outside
 * anything a home tower has; they are refusals, not ranges of validity.
 *
 * <p>Source: none; wide of anything at home, our own bounds.
 */
final class Accepted {
  static final double DAY_S = 86_400;

  /** Highest power accepted, W. */
  private static final double MOST_W = 1e6;

  /** Longest run, rest or other time accepted, s: about a hundred years. */
  private static final double MOST_S = 36_525 * DAY_S;

  /** Shortest run accepted, s: no relay and no pump follows a millisecond. */
  private static final double LEAST_RUN_S = 1e-3;

  /** Shortest time accepted where there must be one, s. */
  private static final double LEAST_S = 1e-9;

  /** Shortest period accepted, days: a second. */
  private static final double LEAST_DAYS = 1 / DAY_S;

  /** Longest period accepted, days. */
  static final double MOST_DAYS = 36_525;

  /** Highest price accepted, money per joule: a million per kWh. */
  private static final double MOST_PRICE = 1e6 / 3.6e6;

  /** Least mean number of starts or cycles that is not none: less than one in any lifetime. */
  private static final double LEAST_COUNT = 1e-10;

  /** Most starts or cycles accepted. */
  private static final double MOST_COUNT = 1e15;

  private Accepted() {}

  static double power(String quantity, double watts) {
    Impossible.ifNegative(quantity, watts);
    return Impossible.unlessWithin(quantity, watts, 0, MOST_W, "it cannot be over a megawatt");
  }

  static double run(double seconds) {
    Impossible.unlessPositive("run", seconds);
    return Impossible.unlessWithin(
        "run", seconds, LEAST_RUN_S, MOST_S, "it must lie between 1 ms and 100 years");
  }

  static double time(String quantity, double seconds) {
    Impossible.ifNegative(quantity, seconds);
    return Impossible.unlessWithin(
        quantity, seconds, 0, MOST_S, "it cannot be longer than 100 years");
  }

  static double someTime(String quantity, double seconds) {
    Impossible.unlessPositive(quantity, seconds);
    return Impossible.unlessWithin(
        quantity, seconds, LEAST_S, MOST_S, "it must lie between a nanosecond and 100 years");
  }

  static double days(double days) {
    Impossible.unlessPositive("days", days);
    return Impossible.unlessWithin(
        "days", days, LEAST_DAYS, MOST_DAYS, "a period lasts between a second and 100 years");
  }

  static double price(double perJoule) {
    Impossible.ifNegative("price", perJoule);
    return Impossible.unlessWithin(
        "price", perJoule, 0, MOST_PRICE, "it cannot be over a million a kWh");
  }

  static double standing(double perDay, double share) {
    Impossible.ifNegative("standing charge", perDay);
    Impossible.unlessWithin("standing charge", perDay, 0, 1e9, "it cannot be that high");
    share("standing share", share);
    return perDay * share;
  }

  static double share(String quantity, double share) {
    return Impossible.unlessWithin(
        quantity, share, 0, 1, "a share lies between 0 and 100 per cent");
  }

  static double someShare(String quantity, double share) {
    Impossible.unlessPositive(quantity, share);
    return share(quantity, share);
  }

  static double volts(String quantity, double volts) {
    Impossible.unlessPositive(quantity, volts);
    return Impossible.unlessWithin(
        quantity, volts, 0.1, 1000, "it must lie between 0.1 V and 1000 V");
  }

  static double amperes(String quantity, double amperes) {
    Impossible.unlessPositive(quantity, amperes);
    return Impossible.unlessWithin(quantity, amperes, 1e-3, 1e5, "no contact carries that");
  }

  static double count(String quantity, double count) {
    Impossible.ifNegative(quantity, count);
    if (count == 0) {
      return 0;
    }
    return Impossible.unlessWithin(
        quantity, count, LEAST_COUNT, MOST_COUNT, "it is too small or too large to count");
  }

  static double energy(double joules) {
    Impossible.ifNegative("energy", joules);
    return Impossible.unlessWithin("energy", joules, 0, MOST_W * MOST_S, "no tower uses that");
  }
}

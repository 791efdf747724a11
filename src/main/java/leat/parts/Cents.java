package leat.parts;

/** Money in whole hundredths, so that a list adds up. */
final class Cents {
  private static final double PER_UNIT = 100;

  private Cents() {}

  static long of(double money) {
    return Math.round(money * PER_UNIT);
  }

  static double money(long cents) {
    return cents / PER_UNIT;
  }

  /** Splits {@code whole} by shares, in hundredths that add up: the largest remainders round up. */
  static long[] split(long whole, double[] shares) {
    double sum = 0;
    for (double one : shares) {
      sum += one;
    }
    long[] parts = new long[shares.length];
    double[] left = new double[shares.length];
    long given = 0;
    for (int i = 0; i < shares.length; i++) {
      double exact = sum > 0 ? whole * shares[i] / sum : (double) whole / shares.length;
      parts[i] = (long) Math.floor(exact);
      left[i] = exact - parts[i];
      given += parts[i];
    }
    for (long missing = whole - given; missing > 0; missing--) {
      int most = 0;
      for (int i = 1; i < left.length; i++) {
        most = left[i] > left[most] ? i : most;
      }
      parts[most]++;
      left[most] -= 1;
    }
    return parts;
  }
}

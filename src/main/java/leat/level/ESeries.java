package leat.level;

/**
 * The preferred values of resistors.
 *
 * <p>E48 and E96 are 10^(i/N) rounded to three figures; of E24 eight values (2.7 3.0 3.3 3.6 3.9
 * 4.3 4.7 8.2) are historical, E6 and E12 are every fourth and second of it. E24 and E96 are
 * different lists: 33 is not in E96.
 *
 * <p>Source: IEC 60063. Check values: sheet level-eseries.csv.
 */
public enum ESeries {
  /** 6 values a decade, 20 % parts. */
  E6(6),
  /** 12 values a decade, 10 % parts. */
  E12(12),
  /** 24 values a decade, 5 % parts. */
  E24(24),
  /** 48 values a decade, 2 % parts. */
  E48(48),
  /** 96 values a decade, 1 % parts. */
  E96(96);

  /** Mantissas of E24, tenths of an ohm. Source: IEC 60063, table. */
  private static final int[] TENTHS = {
    10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91
  };

  /** Least resistor considered, ohm. */
  public static final double LEAST = 0.1;

  /** Greatest resistor considered, ohm. */
  public static final double GREATEST = 9.76e6;

  private final int count;

  ESeries(int count) {
    this.count = count;
  }

  /**
   * A value of the first decade, from 1 to under 10 ohm, in hundredths of an ohm, exact.
   *
   * @param i which, from 0
   */
  int hundredths(int i) {
    if (count <= TENTHS.length) {
      return TENTHS[i * (TENTHS.length / count)] * 10;
    }
    return (int) Math.round(100 * Math.pow(10, (double) i / count));
  }

  /** All values from 0.1 ohm to under 10 Mohm, rising, in thousandths of an ohm, exact. */
  long[] milliohms() {
    int decades = 8;
    long[] all = new long[count * decades];
    long factor = 1;
    for (int d = 0; d < decades; d++) {
      for (int i = 0; i < count; i++) {
        all[d * count + i] = hundredths(i) * factor;
      }
      factor *= 10;
    }
    return all;
  }

  static long nearest(long[] sorted, double wanted) {
    int low = 0;
    int high = sorted.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] <= wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    // a hair's breadth of rounding must not break a tie upwards
    double below = wanted - sorted[low];
    double above = sorted[high] - wanted;
    return below <= above * (1 + 1e-12) ? sorted[low] : sorted[high];
  }
}

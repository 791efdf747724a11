package leat.stability;

import leat.numeric.Impossible;

/**
 * Beaufort's number of a 10-minute mean at 10 m in open country: never of a gust.
 *
 * <p>The bands have gaps of 0.1 m/s: a speed is rounded to one decimal, half up, and belongs to the
 * highest band whose lower end it reaches. By rule v = 0.836 B^1.5.
 *
 * <p>Source: public tables of the WMO's bands in m/s. Check values: stability-beaufort-table.csv,
 * stability-beaufort-class.csv.
 */
public final class Beaufort {
  /** The highest number. */
  public static final int MOST = 12;

  /** Lower ends in tenths of m/s. */
  private static final int[] FROM = {0, 3, 16, 34, 55, 80, 108, 139, 172, 208, 245, 285, 327};

  private Beaufort() {}

  /**
   * Number of a mean wind.
   *
   * @param mean 10-minute mean at 10 m in open country, m/s, 0 or more
   * @return 0 to 12
   * @throws Impossible if negative or not finite
   */
  public static int of(double mean) {
    long tenths = Math.round(10 * Impossible.ifNegative("wind", mean));
    int number = MOST;
    while (tenths < FROM[number]) {
      number--;
    }
    return number;
  }
}

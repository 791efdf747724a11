package leat.season;

import java.util.Arrays;

/**
 * A quantile by straight lines between order statistics: h = (n - 1) q.
 *
 * <p>Source: R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361, type 7. Check
 * values: season-quantile.csv (NumPy agrees).
 */
public final class Quantile {
  private Quantile() {}

  /**
   * @param values the sample, in any unit and order; it is not changed
   * @param q the share below, 0 to 1, -
   * @return the quantile, in the unit of the values
   * @throws IllegalArgumentException if there is no value, or q is outside 0 to 1
   */
  public static double of(double[] values, double q) {
    if (values.length == 0 || !(q >= 0 && q <= 1)) {
      throw new IllegalArgumentException("no such quantile: " + q + " of " + values.length);
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double h = (sorted.length - 1) * q;
    int below = (int) Math.min(Math.floor(h), Math.max(0, sorted.length - 2));
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (h - below) * (sorted[above] - sorted[below]);
  }
}

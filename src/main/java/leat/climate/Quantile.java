package leat.climate;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * A quantile, linear between the values in order: h = (n - 1) q.
 *
 * <p>Source: definition 7 of Hyndman and Fan, The American Statistician 50 (1996) 361; sheet
 * season.md section 9, check values season-quantile.csv, computed with NumPy.
 */
public final class Quantile {
  /** Under so many years the range is told in the place of quantiles. */
  public static final int FEWEST_YEARS = 5;

  /** Quantiles that are told. */
  public static final double LOW = 0.1;

  public static final double HIGH = 0.9;

  private Quantile() {}

  /**
   * The quantile.
   *
   * @param values values in any order and unit, left as they are
   * @param q share that lies below, 0 to 1
   * @return in the values' unit
   * @throws Impossible if there is no value, one is not a number, or q is outside 0 to 1
   */
  public static double of(double[] values, double q) {
    Accepted.share("quantile", q);
    if (values.length == 0) {
      throw new Impossible("values", "there is none");
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    if (Double.isNaN(sorted[n - 1])) {
      throw new Impossible("values", "one is not a number");
    }
    double h = (n - 1) * q;
    int below = (int) Math.floor(h);
    int above = Math.min(n - 1, below + 1);
    return sorted[below] + (h - below) * (sorted[above] - sorted[below]);
  }
}

package leat.level;

import java.util.Arrays;

/**
 * Isotonic least squares, equal weights: the rising (or falling) values nearest to given ones.
 *
 * <p>Source: pool adjacent violators, R. E. Barlow and others, Statistical Inference under Order
 * Restrictions, 1972 (from memory). Check values: sheet level-fit.csv.
 */
final class Isotonic {
  private Isotonic() {}

  /** Pool adjacent violators, equal weights. */
  static double[] fit(double[] y, boolean falls) {
    int n = y.length;
    double[] sum = new double[n];
    int[] size = new int[n];
    int blocks = 0;
    for (double value : y) {
      sum[blocks] = falls ? -value : value;
      size[blocks] = 1;
      blocks++;
      while (blocks > 1
          && sum[blocks - 2] / size[blocks - 2] > sum[blocks - 1] / size[blocks - 1]) {
        sum[blocks - 2] += sum[blocks - 1];
        size[blocks - 2] += size[blocks - 1];
        blocks--;
      }
    }
    double[] fit = new double[n];
    int at = 0;
    for (int b = 0; b < blocks; b++) {
      double mean = sum[b] / size[b];
      Arrays.fill(fit, at, at + size[b], falls ? -mean : mean);
      at += size[b];
    }
    return fit;
  }

  static double residual(double[] y, double[] fit) {
    double sum = 0;
    for (int i = 0; i < y.length; i++) {
      sum += (y[i] - fit[i]) * (y[i] - fit[i]);
    }
    return sum;
  }

  static double greatest(double[] y, double[] fit) {
    double most = 0;
    for (int i = 0; i < y.length; i++) {
      most = Math.max(most, Math.abs(y[i] - fit[i]));
    }
    return most;
  }

  static int violations(double[] y, boolean falls) {
    int n = 0;
    for (int i = 1; i < y.length; i++) {
      n += (falls ? y[i] > y[i - 1] : y[i] < y[i - 1]) ? 1 : 0;
    }
    return n;
  }
}

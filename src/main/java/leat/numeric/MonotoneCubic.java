package leat.numeric;

/**
 * Monotone piecewise cubic Hermite interpolation (PCHIP): it never overshoots the points it passes
 * through.
 *
 * <p>Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300, with the
 * three-point end slopes described in hydraulics.md section 5. Check values:
 * hydraulics-pump-curve.csv and level-tank-volume.csv, computed with SciPy.
 */
public final class MonotoneCubic {
  private final double[] x;
  private final double[] y;
  private final double[] slope;

  /**
   * @param x abscissae, strictly rising, at least two
   * @param y ordinates, as many
   */
  public MonotoneCubic(double[] x, double[] y) {
    if (x.length < 2 || x.length != y.length) {
      throw new IllegalArgumentException("at least two points are needed");
    }
    for (int i = 1; i < x.length; i++) {
      if (!(x[i] > x[i - 1])) {
        throw new IllegalArgumentException("abscissae must rise");
      }
    }
    this.x = x.clone();
    this.y = y.clone();
    this.slope = slopes(this.x, this.y);
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] h = new double[n - 1];
    double[] s = new double[n - 1];
    for (int k = 0; k < n - 1; k++) {
      h[k] = x[k + 1] - x[k];
      s[k] = (y[k + 1] - y[k]) / h[k];
    }
    double[] d = new double[n];
    if (n == 2) {
      d[0] = s[0];
      d[1] = s[0];
      return d;
    }
    for (int k = 1; k < n - 1; k++) {
      if (s[k - 1] * s[k] > 0) {
        double w1 = 2 * h[k] + h[k - 1];
        double w2 = h[k] + 2 * h[k - 1];
        d[k] = (w1 + w2) / (w1 / s[k - 1] + w2 / s[k]);
      }
    }
    d[0] = endSlope(h[0], h[1], s[0], s[1]);
    d[n - 1] = endSlope(h[n - 2], h[n - 3], s[n - 2], s[n - 3]);
    return d;
  }

  private static double endSlope(double h0, double h1, double s0, double s1) {
    double d = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
    if (d * s0 <= 0) {
      return 0;
    }
    if (s0 * s1 < 0 && Math.abs(d) > 3 * Math.abs(s0)) {
      return 3 * s0;
    }
    return d;
  }

  private int stretch(double at) {
    int low = 0;
    int high = x.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (x[middle] <= at) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Value at {@code at}, which must lie between the first and the last abscissa. */
  public double value(double at) {
    int k = stretch(at);
    double h = x[k + 1] - x[k];
    double t = (at - x[k]) / h;
    double t2 = t * t;
    double t3 = t2 * t;
    return (2 * t3 - 3 * t2 + 1) * y[k]
        + (t3 - 2 * t2 + t) * h * slope[k]
        + (3 * t2 - 2 * t3) * y[k + 1]
        + (t3 - t2) * h * slope[k + 1];
  }

  /** Slope at {@code at}, which must lie between the first and the last abscissa. */
  public double slope(double at) {
    int k = stretch(at);
    double h = x[k + 1] - x[k];
    double t = (at - x[k]) / h;
    double t2 = t * t;
    return (6 * t2 - 6 * t) * (y[k] - y[k + 1]) / h
        + (3 * t2 - 4 * t + 1) * slope[k]
        + (3 * t2 - 2 * t) * slope[k + 1];
  }
}

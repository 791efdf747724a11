package leat.stability;

/**
 * How the ends of a body let wind round it: EN 1991-1-4, table 7.16 and figure 7.36, solid.
 *
 * <p>Source: EN 1991-1-4:2005, figure 7.36 and table 7.16, as {@link EnBoxDrag}.
 */
final class Slenderness {
  private static final double SHORT = 15;
  private static final double LONG = 50;
  private static final double LONG_SHARE = 0.7;
  private static final double MOST = 70;

  /** log10 of the slenderness and the end factor, as read from the figure. */
  private static final double[] LOG = {0, 1, Math.log10(70), Math.log10(200)};

  private static final double[] FACTOR = {0.60, 0.70, 0.91, 1.00};

  private Slenderness() {}

  /** lambda; {@code shortRatio} holds under 15 m, 0.7 of it from 50 m. */
  static double of(double shortRatio, double length) {
    double between = Math.min(1, Math.max(0, (length - SHORT) / (LONG - SHORT)));
    return Math.min(MOST, shortRatio * (1 - between * (1 - LONG_SHARE)));
  }

  static double endFactor(double lambda) {
    return onLine(LOG, FACTOR, Math.log10(lambda));
  }

  /** Straight between the points, held outside. */
  static double onLine(double[] x, double[] y, double at) {
    if (at <= x[0]) {
      return y[0];
    }
    for (int i = 1; i < x.length; i++) {
      if (at <= x[i]) {
        return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
      }
    }
    return y[y.length - 1];
  }
}

package leat.stability;

import leat.numeric.Impossible;

/**
 * Force coefficient of a box, wind square to a face, for the number that the program takes.
 *
 * <pre>
 * cf = cf0(d/b) psi_r(r/b) psi(lambda);   lambda = 2 l/b;   psi_r from 1 straight to 0.5 at r/b 0.2
 * </pre>
 *
 * <p>Readings of a figure, good to 3 %. Squat tanks come out at 1.0 to 1.5; a cube face-on is 1.05
 * in texts on fluid mechanics.
 *
 * <p>Source: EN 1991-1-4:2005, 7.6, figures 7.23, 7.24, 7.36, table 7.16. Check values:
 * stability-rect-cf.csv.
 */
final class EnBoxDrag {
  /** d/b as logarithms, and cf0 there. */
  private static final double[] LOG_DEPTH = logs(0.2, 0.6, 0.7, 1, 2, 5, 10);

  private static final double[] SHARP = {2.0, 2.35, 2.4, 2.1, 1.65, 1.0, 0.9};
  private static final double ROUNDED = 0.5;
  private static final double ROUNDED_FROM = 0.2;

  private EnBoxDrag() {}

  private static double[] logs(double... values) {
    double[] logs = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      logs[i] = Math.log(values[i]);
    }
    return logs;
  }

  /**
   * Coefficient on breadth times height.
   *
   * @param depth along the wind, m, above 0
   * @param breadth across the wind, m, above 0
   * @param height m, above 0
   * @param corner radius of the upright edges, m, 0 to half the breadth
   * @return -
   * @throws Impossible outside
   */
  public static double coefficient(double depth, double breadth, double height, double corner) {
    Impossible.unlessPositive("depth", depth);
    Impossible.unlessPositive("breadth", breadth);
    Impossible.unlessPositive("height", height);
    Impossible.unlessWithin(
        "corner", corner, 0, breadth / 2, "a corner's radius is 0 to half the breadth");
    double sharp = Slenderness.onLine(LOG_DEPTH, SHARP, Math.log(depth / breadth));
    double rounding = 1 - (1 - ROUNDED) * Math.min(1, corner / breadth / ROUNDED_FROM);
    double lambda = Slenderness.of(2 * height / breadth, height);
    return sharp * rounding * Slenderness.endFactor(lambda);
  }
}

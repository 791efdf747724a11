package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Screens across a flow by their open share a; K on the approach velocity. For the woven strainer
 * of a plan see {@link Strainer}, whose coefficient follows the Reynolds number.
 *
 * <pre>woven 1.3 (1 - a) + (1/a - 1)^2   (Idelchik, from memory);   sharp edges: table of Blevins
 * </pre>
 *
 * <p>Source: I. E. Idelchik (memory); R. D. Blevins, Applied Fluid Dynamics Handbook, 1984. Check
 * values: hydraulics-fittings.csv.
 */
public final class Screen {
  private static final double[] SHARE = {0.3, 0.4, 0.5, 0.6, 0.7};
  private static final double[] SHARP_K = {17, 7.7, 3.8, 2.0, 1.1};

  private Screen() {}

  /**
   * Woven wire.
   *
   * @param openShare a, -, 0.01 to 1
   * @return K, -
   * @throws Impossible outside
   */
  public static double woven(double openShare) {
    double a =
        Impossible.unlessWithin("open share", openShare, 0.01, 1, "it is between 1 and 100 %");
    return 1.3 * (1 - a) + (1 / a - 1) * (1 / a - 1);
  }

  /**
   * Punched plate with sharp edges, straight on log K between the table's points.
   *
   * @param openShare a, -, 0.3 to 0.7
   * @return K, -
   * @throws Impossible outside
   */
  public static double sharp(double openShare) {
    Impossible.unlessWithin(
        "open share", openShare, 0.3, 0.7, "the table runs from 30 to 70 % open");
    int i = 1;
    while (openShare > SHARE[i]) {
      i++;
    }
    double part = (openShare - SHARE[i - 1]) / (SHARE[i] - SHARE[i - 1]);
    return SHARP_K[i - 1] * Math.pow(SHARP_K[i] / SHARP_K[i - 1], part);
  }
}

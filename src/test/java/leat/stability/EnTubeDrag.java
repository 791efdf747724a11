package leat.stability;

import leat.numeric.Impossible;

/**
 * Force coefficient of a bare round tube across the wind, for the number that the program takes.
 *
 * <pre>
 * Re = b v/nu;   smooth = 0.11/(Re/1e6)^1.4, within 0.4 to 1.2
 * rough = 1.2 + 0.18 log10(10 k/b)/(1 + 0.4 log10(Re/1e6)), k/b at least 1e-5
 * cf0 = min(1.2, max(smooth, rough)), 1.2 under Re 1e5;   cf = cf0 psi(lambda)
 * </pre>
 *
 * <p>The figure starts at Re 1e5.
 *
 * <p>Source: EN 1991-1-4:2005, 7.9.2, figures 7.28 and 7.36, table 7.16. Check values:
 * stability-cylinder-cf.csv, two rows of it published runs.
 */
final class EnTubeDrag {
  /** Kinematic viscosity of air, m2/s (EN 1991-1-4, 7.9.1). */
  public static final double VISCOSITY = 15e-6;

  private static final double FIGURE_FROM = 1e5;
  private static final double MOST = 1.2;
  private static final double LEAST_SMOOTH = 0.4;
  private static final double LEAST_ROUGHNESS = 1e-5;

  private EnTubeDrag() {}

  /**
   * Reynolds number.
   *
   * @param diameter m, above 0
   * @param speed peak wind, m/s, 0 to 150
   * @return -
   * @throws Impossible outside
   */
  public static double reynolds(double diameter, double speed) {
    return Impossible.unlessPositive("diameter", diameter) * Air.checkedSpeed(speed) / VISCOSITY;
  }

  /**
   * Coefficient of a tube without ends.
   *
   * @param reynolds -, 0 or more
   * @param roughness k/b, -, 0 or more
   * @return -
   * @throws Impossible outside
   */
  public static double endless(double reynolds, double roughness) {
    Impossible.ifNegative("roughness", roughness);
    if (Impossible.ifNegative("wind", reynolds) < FIGURE_FROM) {
      return MOST;
    }
    double smooth = Math.max(LEAST_SMOOTH, 0.11 / Math.pow(reynolds / 1e6, 1.4));
    double rough =
        1.2
            + 0.18
                * Math.log10(10 * Math.max(LEAST_ROUGHNESS, roughness))
                / (1 + 0.4 * Math.log10(reynolds / 1e6));
    return Math.min(MOST, Math.max(smooth, rough));
  }

  /**
   * Coefficient of a bare tube with free ends.
   *
   * @param diameter m, above 0
   * @param length m, above 0
   * @param roughness equivalent roughness of its wall, m; printed 0.0001 to 0.0003 (practice)
   * @param speed peak wind, m/s
   * @return -
   * @throws Impossible outside
   */
  public static double coefficient(double diameter, double length, double roughness, double speed) {
    Impossible.unlessPositive("length", length);
    return endless(reynolds(diameter, speed), roughness / diameter)
        * Slenderness.endFactor(Slenderness.of(length / diameter, length));
  }
}

package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Properties of pure water at 0.1 MPa. A working nutrient solution (1 to 2 g/L of salts) differs by
 * less than 0.3 % in head, so nothing is added for it.
 *
 * <pre>
 * density, 0 to 40 C   rho = 999.974950 (1 - (t - 3.983035)^2 (t + 301.797) / (522528.9 (t + 69.34881)))
 * density above        Kell's rational polynomial
 * viscosity            mu = 1E-6 (280.68 T^-1.9 + 511.45 T^-7.7 + 61.131 T^-19.6 + 0.45903 T^-40),  T = (t + 273.15)/300
 * </pre>
 *
 * <p>Source: M. Tanaka et al., Metrologia 38 (2001) 301 (density to 40 C); G. S. Kell, J. Chem.
 * Eng. Data 20 (1975) 97 (density above); IAPWS SR6-08(2011) equation 7 (viscosity); IAPWS R1-76
 * (surface tension). Check values: hydraulics-water.csv.
 */
public final class Water {
  /** Where nothing is said of the water, C (our choice). */
  public static final double USUAL_CELSIUS = 20;

  /** Where the sheets checked the sums of a tower; a plan outside gets a caution. */
  public static final Validity USUAL = Validity.of("temperature, C", 5, 35);

  /** Where water is accepted at all: below is ice, above is no nutrient solution. */
  public static final Validity ACCEPTED = Validity.of("temperature, C", 0, 60);

  /** Highest temperature of Tanaka's density, C. */
  private static final double TANAKA_TOP = 40;

  /** Kelvin at 0 C. */
  private static final double KELVIN = 273.15;

  /** Critical temperature of water, K (IAPWS R1-76). */
  private static final double CRITICAL = 647.096;

  private Water() {}

  /**
   * Density: Tanaka 2001 to 40 C, Kell 1975 above.
   *
   * @param celsius temperature, C, 0 to 60
   * @return density, kg/m3
   * @throws Impossible outside 0 to 60 C
   */
  public static double density(double celsius) {
    accept(celsius);
    return celsius <= TANAKA_TOP ? densityTanaka(celsius) : densityKell(celsius);
  }

  /**
   * Density by Tanaka 2001, air-free water at 101.325 kPa.
   *
   * @param celsius temperature, C, 0 to 40 by its authors
   * @return density, kg/m3
   * @throws Impossible outside 0 to 60 C
   */
  public static double densityTanaka(double celsius) {
    double t = accept(celsius);
    double off = t - 3.983035; // C from the temperature of greatest density
    return 999.974950 * (1 - off * off * (t + 301.797) / (522528.9 * (t + 69.34881)));
  }

  /**
   * Density by Kell 1975.
   *
   * @param celsius temperature, C, 0 to 60 (its authors: 0 to 150)
   * @return density, kg/m3
   * @throws Impossible outside 0 to 60 C
   */
  public static double densityKell(double celsius) {
    double t = accept(celsius);
    double above =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401E-3
                            + t * (-46.170461E-6 + t * (105.56302E-9 - t * 280.54253E-12))));
    return above / (1 + 16.879850E-3 * t);
  }

  /**
   * Dynamic viscosity, stated uncertainty 1 %.
   *
   * @param celsius temperature, C, 0 to 60
   * @return viscosity, Pa s
   * @throws Impossible outside 0 to 60 C
   */
  public static double viscosity(double celsius) {
    double ln = Math.log((accept(celsius) + KELVIN) / 300);
    return 1E-6
        * (280.68 * Math.exp(-1.9 * ln)
            + 511.45 * Math.exp(-7.7 * ln)
            + 61.131 * Math.exp(-19.6 * ln)
            + 0.45903 * Math.exp(-40 * ln));
  }

  /**
   * Surface tension against air.
   *
   * @param celsius temperature, C, 0 to 60
   * @return surface tension, N/m
   * @throws Impossible outside 0 to 60 C
   */
  public static double surfaceTension(double celsius) {
    double x = 1 - (accept(celsius) + KELVIN) / CRITICAL;
    return 0.2358 * Math.pow(x, 1.256) * (1 - 0.625 * x);
  }

  private static double accept(double celsius) {
    return Impossible.unlessWithin(
        "temperature", celsius, 0, 60, "water for a tower is between 0 C (ice) and 60 C");
  }
}

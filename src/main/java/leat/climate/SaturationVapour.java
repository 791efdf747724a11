package leat.climate;

/**
 * Vapour pressure of saturated air.
 *
 * <pre>e0(T) = 0.6108 exp(17.27 T/(T + 237.3));  Delta = 4098 e0/(T + 237.3)^2</pre>
 *
 * <p>The mean of a day is the mean of the pressures at both ends, not the pressure at the mean.
 *
 * <p>Source: FAO-56 (Allen and others 1998), equations 11, 12, 13; sheet season.md section 1, check
 * values season-fao56.csv.
 */
public final class SaturationVapour {
  /** Pressure at 0 C, kPa (FAO-56 equation 11). */
  static final double AT_ZERO_KPA = 0.6108;

  /** Factor of the exponent, - (FAO-56 equation 11). */
  static final double FACTOR = 17.27;

  /** Shift of the temperature, C (FAO-56 equation 11). */
  static final double SHIFT_CELSIUS = 237.3;

  /** FACTOR times SHIFT, rounded by the source, C (FAO-56 equation 13). */
  private static final double SLOPE_CELSIUS = 4098;

  private SaturationVapour() {}

  /**
   * At one temperature.
   *
   * @param celsius air temperature, C
   * @return kPa
   */
  public static double kPa(double celsius) {
    return AT_ZERO_KPA * Math.exp(FACTOR * celsius / (celsius + SHIFT_CELSIUS));
  }

  /**
   * Mean of a day.
   *
   * @param tminCelsius lowest temperature of the day, C
   * @param tmaxCelsius highest temperature of the day, C
   * @return kPa
   */
  public static double meanKPa(double tminCelsius, double tmaxCelsius) {
    return (kPa(tmaxCelsius) + kPa(tminCelsius)) / 2;
  }

  /**
   * Slope against temperature.
   *
   * @param celsius air temperature, C
   * @return kPa/C
   */
  public static double slopeKPaPerC(double celsius) {
    double shifted = celsius + SHIFT_CELSIUS;
    return SLOPE_CELSIUS * kPa(celsius) / (shifted * shifted);
  }
}

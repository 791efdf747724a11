package leat.climate;

import leat.numeric.Impossible;

/**
 * Mean air pressure at an altitude.
 *
 * <pre>P = 101.3 ((293 - 0.0065 z)/293)^5.26</pre>
 *
 * <p>Source: FAO-56 equation 7; sheet season.md section 1, check values season-fao56.csv.
 */
public final class AirPressure {
  private static final double SEA_LEVEL_KPA = 101.3;
  private static final double SEA_LEVEL_K = 293;

  /** Fall of temperature with height, K/m. */
  private static final double LAPSE_K_M = 0.0065;

  private static final double EXPONENT = 5.26;

  private AirPressure() {}

  /**
   * The pressure.
   *
   * @param altitudeM height over the sea, m
   * @return kPa
   * @throws Impossible outside -450 to 9000 m
   */
  public static double kPa(double altitudeM) {
    Accepted.altitude(altitudeM);
    return SEA_LEVEL_KPA * Math.pow((SEA_LEVEL_K - LAPSE_K_M * altitudeM) / SEA_LEVEL_K, EXPONENT);
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Radiation on the ground under a clear sky, Rso = (0.75 + 2E-5 z) Ra: the brightest possible day,
 * never a forecast.
 *
 * <p>Source: FAO-56 equation 37; sheet season.md section 1, check values season-fao56.csv.
 */
public final class ClearSkyRadiation {
  private static final double SHARE = 0.75;

  /** Gain with height, 1/m. */
  private static final double PER_M = 2e-5;

  private ClearSkyRadiation() {}

  /**
   * The radiation.
   *
   * @param altitudeM height over the sea, m
   * @param raMjM2 radiation above the air, MJ/m2 a day
   * @return MJ/m2 a day
   * @throws Impossible if the altitude is outside its range
   */
  public static double mjM2(double altitudeM, double raMjM2) {
    return (SHARE + PER_M * Accepted.altitude(altitudeM)) * raMjM2;
  }
}

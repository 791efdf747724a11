package leat.climate;

import leat.numeric.Impossible;

/**
 * Radiation on the ground from the day's span of temperature, kRs sqrt(Tmax - Tmin) Ra, not above
 * the clear sky.
 *
 * <p>Source: FAO-56 equation 50 with its factors; sheet season.md section 1, check values
 * season-fao56.csv and season-light.csv.
 */
public final class TemperatureRadiation {
  /** Factor inland, 1/sqrt(C) (FAO-56). */
  public static final double INLAND = 0.16;

  /** Factor on a coast, 1/sqrt(C) (FAO-56). */
  public static final double COAST = 0.19;

  private TemperatureRadiation() {}

  /**
   * The radiation.
   *
   * @param factor kRs, 1/sqrt(C): {@link #INLAND} or {@link #COAST}
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param raMjM2 radiation above the air, MJ/m2 a day
   * @param clearMjM2 radiation of a clear sky, MJ/m2 a day
   * @return MJ/m2 a day
   * @throws Impossible if the highest lies under the lowest
   */
  public static double mjM2(
      double factor, double tminCelsius, double tmaxCelsius, double raMjM2, double clearMjM2) {
    Accepted.range(tminCelsius, tmaxCelsius);
    return Math.min(clearMjM2, factor * Math.sqrt(tmaxCelsius - tminCelsius) * raMjM2);
  }
}

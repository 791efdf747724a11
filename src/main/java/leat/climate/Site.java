package leat.climate;

import leat.numeric.Impossible;

/**
 * The place, as the formulas need it.
 *
 * <p>Source: the plan.
 *
 * @param latitudeDegrees north positive, degrees
 * @param altitudeM height over the sea, m
 * @param coast on a coast, for radiation from temperature
 * @param windHeightM height at which the wind is measured, m
 */
public record Site(double latitudeDegrees, double altitudeM, boolean coast, double windHeightM) {
  /** Usual height of wind in a weather file, m (FAO-56's own height). */
  public static final double USUAL_WIND_HEIGHT_M = 2;

  /**
   * @throws Impossible if latitude, altitude or height of the wind is outside its range
   */
  public Site {
    Accepted.latitude(latitudeDegrees);
    Accepted.altitude(altitudeM);
    WindAtTwoMetres.ms(0, windHeightM);
  }

  /**
   * A site inland with wind at 2 m.
   *
   * @param latitudeDegrees north positive, degrees
   * @param altitudeM height over the sea, m
   * @throws Impossible if one is outside its range
   */
  public static Site of(double latitudeDegrees, double altitudeM) {
    return new Site(latitudeDegrees, altitudeM, false, USUAL_WIND_HEIGHT_M);
  }

  /** Factor of radiation from temperature, 1/sqrt(C). */
  public double radiationFactor() {
    return coast ? TemperatureRadiation.COAST : TemperatureRadiation.INLAND;
  }
}

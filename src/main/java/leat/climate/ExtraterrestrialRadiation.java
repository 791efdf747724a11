package leat.climate;

import leat.numeric.Impossible;

/**
 * Radiation on a level plane above the air, a day.
 *
 * <pre>Ra = (1440/pi) 0.0820 dr (ws sin phi sin delta + cos phi cos delta sin ws)</pre>
 *
 * <p>Source: FAO-56 equation 21; sheet season.md section 1, check values season-fao56.csv; second
 * route: the sun stepped through the day.
 */
public final class ExtraterrestrialRadiation {
  /** Solar constant, MJ/m2 a minute (FAO-56 equation 21). */
  static final double SOLAR_CONSTANT = 0.0820;

  private static final double MINUTES_A_DAY = 1440;

  private ExtraterrestrialRadiation() {}

  /**
   * The radiation of a day.
   *
   * @param latitudeDegrees north positive, degrees
   * @param dayOfYear 1 to 366
   * @return MJ/m2 a day, 0 in polar night
   * @throws Impossible if the latitude or the day is outside its range
   */
  public static double mjM2(double latitudeDegrees, int dayOfYear) {
    double delta = SunPosition.declinationRad(Accepted.dayOfYear(dayOfYear));
    double ws = SunPosition.sunsetRad(latitudeDegrees, delta);
    double phi = Math.toRadians(latitudeDegrees);
    double sun =
        ws * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(ws);
    return MINUTES_A_DAY
        / Math.PI
        * SOLAR_CONSTANT
        * SunPosition.inverseDistance(dayOfYear)
        * Math.max(0, sun);
  }
}

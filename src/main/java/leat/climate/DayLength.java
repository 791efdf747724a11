package leat.climate;

import leat.numeric.Impossible;

/**
 * Hours of daylight as FAO-56 counts them: the sun's centre over a flat horizon, no refraction. N =
 * 24 ws/pi.
 *
 * <p>Source: FAO-56 equation 34; sheet season.md section 1, check values season-fao56.csv and
 * season-daylength.csv.
 */
public final class DayLength {
  private DayLength() {}

  /**
   * The hours.
   *
   * @param latitudeDegrees north positive, degrees
   * @param dayOfYear 1 to 366
   * @return h, 0 to 24
   * @throws Impossible if the latitude or the day is outside its range
   */
  public static double hours(double latitudeDegrees, int dayOfYear) {
    double delta = SunPosition.declinationRad(Accepted.dayOfYear(dayOfYear));
    return 24 / Math.PI * SunPosition.sunsetRad(latitudeDegrees, delta);
  }
}

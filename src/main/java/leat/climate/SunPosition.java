package leat.climate;

import leat.numeric.Impossible;

/**
 * Where the sun stands on a day of the year: relative distance, declination, sunset angle. The year
 * has 365 days here, in leap years too.
 *
 * <pre>dr = 1 + 0.033 cos(2 pi J/365);  delta = 0.409 sin(2 pi J/365 - 1.39)
 * ws = arccos(-tan phi tan delta), held in 0 to pi where the sun does not rise or set</pre>
 *
 * <p>Source: FAO-56 equations 23, 24, 25; the holding is ours; sheet season.md section 1, check
 * values season-fao56.csv and season-daylength.csv. The declination is up to 1.2 degrees off the
 * true one.
 */
public final class SunPosition {
  private static final double PER_DAY = 2 * Math.PI / 365;
  private static final double DISTANCE_SWING = 0.033;

  /** Swing of the declination, rad. */
  private static final double DECLINATION_RAD = 0.409;

  /** Phase of the declination, rad. */
  private static final double PHASE_RAD = 1.39;

  private SunPosition() {}

  /**
   * Inverse relative distance of the sun, -.
   *
   * @param dayOfYear 1 to 366
   */
  public static double inverseDistance(int dayOfYear) {
    return 1 + DISTANCE_SWING * Math.cos(PER_DAY * dayOfYear);
  }

  /**
   * Declination of the sun, rad.
   *
   * @param dayOfYear 1 to 366
   */
  public static double declinationRad(int dayOfYear) {
    return DECLINATION_RAD * Math.sin(PER_DAY * dayOfYear - PHASE_RAD);
  }

  /**
   * Hour angle of sunset: 0 in polar night, pi under the midnight sun.
   *
   * @param latitudeDegrees north positive, degrees
   * @param declinationRad declination of the sun, rad
   * @return rad
   * @throws Impossible if the latitude lies outside -90 to 90
   */
  public static double sunsetRad(double latitudeDegrees, double declinationRad) {
    double phi = Math.toRadians(Accepted.latitude(latitudeDegrees));
    double cosine = -Math.tan(phi) * Math.tan(declinationRad);
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }
}

package leat.climate;

import java.time.LocalDate;
import leat.numeric.Impossible;

/**
 * Hours from sunrise to sunset: the upper edge of the sun on a flat horizon, refraction included
 * (-0.833 degrees), with the sun of 12 UT. Within 0.02 h of a full almanac up to 60 degrees.
 *
 * <p>Source: low-precision sun of J. Meeus, Astronomical Algorithms, chapter 25, as on the public
 * NOAA solar calculator page; sheet season.md section 1, check values season-daylength.csv.
 */
public final class SunriseToSunset {
  /** Height of the sun's centre when its upper edge stands on the horizon, degrees. */
  public static final double HORIZON_DEGREES = -0.833;

  /** Julian day of 1970-01-01, 12 UT. */
  private static final double EPOCH_JD = 2_440_588;

  /** Julian day of 2000-01-01, 12 UT. */
  private static final double J2000_JD = 2_451_545;

  private static final double DAYS_A_CENTURY = 36_525;

  private SunriseToSunset() {}

  /**
   * Declination of the sun at 12 UT, degrees. Coefficients in degrees, by Julian centuries since
   * 2000.
   */
  public static double declinationDegrees(LocalDate date) {
    double t = (date.toEpochDay() + EPOCH_JD - J2000_JD) / DAYS_A_CENTURY;
    double meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
    double anomaly = Math.toRadians(357.52911 + t * (35999.05029 - t * 0.0001537));
    double centre =
        Math.sin(anomaly) * (1.914602 - t * (0.004817 + t * 0.000014))
            + Math.sin(2 * anomaly) * (0.019993 - t * 0.000101)
            + Math.sin(3 * anomaly) * 0.000289;
    double node = Math.toRadians(125.04 - 1934.136 * t);
    double apparent = meanLongitude + centre - 0.00569 - 0.00478 * Math.sin(node);
    double seconds = 21.448 - t * (46.815 + t * (0.00059 - t * 0.001813));
    double obliquity = 23 + (26 + seconds / 60) / 60 + 0.00256 * Math.cos(node);
    return Math.toDegrees(
        Math.asin(Math.sin(Math.toRadians(obliquity)) * Math.sin(Math.toRadians(apparent))));
  }

  /**
   * Hours from sunrise to sunset.
   *
   * @param latitudeDegrees north positive, degrees
   * @param date the day
   * @return h, 0 to 24
   * @throws Impossible if the latitude lies outside -90 to 90
   */
  public static double hours(double latitudeDegrees, LocalDate date) {
    return hoursAbove(latitudeDegrees, date, HORIZON_DEGREES);
  }

  /**
   * Hours the sun's centre is above a height.
   *
   * @param latitudeDegrees north positive, degrees
   * @param date the day
   * @param heightDegrees height over the horizon, degrees
   * @return h, 0 to 24
   * @throws Impossible if the latitude lies outside -90 to 90
   */
  public static double hoursAbove(double latitudeDegrees, LocalDate date, double heightDegrees) {
    double phi = Math.toRadians(Accepted.latitude(latitudeDegrees));
    double delta = Math.toRadians(declinationDegrees(date));
    double cosine =
        Math.sin(Math.toRadians(heightDegrees)) / (Math.cos(phi) * Math.cos(delta))
            - Math.tan(phi) * Math.tan(delta);
    return 24 / Math.PI * Math.acos(Math.max(-1, Math.min(1, cosine)));
  }
}

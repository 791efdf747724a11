package leat.stability;

import leat.numeric.Impossible;

/**
 * The wind a tower has to bear: one gust, and how it hangs on the mean of open country.
 *
 * <p>A mean is turned into a gust once, by terrain, height and shelter; a gust is taken as it is.
 *
 * <p>Source: {@link WindProfile}; shelter is the grower's own factor (practice).
 *
 * @param gust at the tower, m/s
 * @param mean 10-minute mean at 10 m in open country, m/s; null when the ground is not known
 * @param gustOverMean gust at the tower over that mean, -; null when the ground is not known
 */
public record SiteWind(double gust, Double mean, Double gustOverMean) {
  /** Shelter unless the plan says otherwise, -: all of the wind arrives. */
  public static final double SHELTER = 1.0;

  private static final double MOST_SHELTER = 3;

  /** A place as the wind sees it. */
  private static double ratio(Terrain terrain, double height, double shelter, Double gustFactor) {
    Impossible.unlessPositive("shelter", shelter);
    Impossible.unlessWithin(
        "shelter", shelter, 0, MOST_SHELTER, "shelter is a share of the wind, 3 at most");
    double gusts =
        gustFactor == null ? WindProfile.gustFactor(terrain, height) : checkedFactor(gustFactor);
    return WindProfile.roughnessFactor(terrain, height) * gusts * shelter;
  }

  private static double checkedFactor(double factor) {
    return Impossible.unlessWithin(
        "gust factor", factor, 1, 5, "a gust is 1 to 5 times the mean wind");
  }

  /**
   * From a mean wind: the gust factor is applied here and nowhere else.
   *
   * @param mean 10-minute mean at 10 m in open country, m/s, 0 to 150
   * @param terrain the ground around
   * @param height of the place above the ground, m, above 0 to 200
   * @param shelter share of the wind that reaches the tower, -, above 0
   * @param gustFactor gust over mean, -, 1 to 5; null to take it from the terrain
   * @return the wind
   * @throws Impossible outside
   */
  public static SiteWind ofMean(
      double mean, Terrain terrain, double height, double shelter, Double gustFactor) {
    Air.checkedSpeed(mean);
    double ratio = ratio(terrain, height, shelter, gustFactor);
    return new SiteWind(Air.checkedSpeed(mean * ratio), mean, ratio);
  }

  /**
   * From a gust at the tower itself; shelter is in it already and only tells which mean belongs to
   * it.
   *
   * @param gust at the tower, m/s, 0 to 150
   * @param terrain the ground around
   * @param height of the place above the ground, m, above 0 to 200
   * @param shelter share of the wind that reaches the tower, -, above 0
   * @param gustFactor gust over mean, -, 1 to 5; null to take it from the terrain
   * @return the wind
   * @throws Impossible outside
   */
  public static SiteWind ofGust(
      double gust, Terrain terrain, double height, double shelter, Double gustFactor) {
    double ratio = ratio(terrain, height, shelter, gustFactor);
    return new SiteWind(Air.checkedSpeed(gust), gust / ratio, ratio);
  }

  /**
   * From a gust at the tower, the ground not known: no mean, no Beaufort.
   *
   * @param gust at the tower, m/s, 0 to 150
   * @return the wind
   * @throws Impossible outside
   */
  public static SiteWind gustAlone(double gust) {
    return new SiteWind(Air.checkedSpeed(gust), null, null);
  }

  /** The mean of open country that brings {@code other} gust here, m/s; null when not known. */
  public Double meanFor(Double other) {
    return other == null || gustOverMean == null ? null : Double.valueOf(other / gustOverMean);
  }

  /** Beaufort's number of the mean that brings {@code other} gust here; null when not known. */
  public Integer beaufortFor(Double other) {
    Double open = meanFor(other);
    return open == null ? null : Integer.valueOf(Beaufort.of(open));
  }

  /**
   * Pressure of the gust, Pa.
   *
   * @param density of air, kg/m3
   */
  public double pressure(double density) {
    return Air.pressure(density, gust);
  }
}

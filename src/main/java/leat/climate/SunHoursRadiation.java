package leat.climate;

import leat.numeric.Impossible;

/**
 * Radiation on the ground from hours of sunshine, Rs = (0.25 + 0.50 n/N) Ra. Hours beyond the day
 * length N count as N: a recorder may see the sun's edge a little longer than the formula.
 *
 * <p>Source: FAO-56 equation 35 with its usual coefficients; sheet season.md section 1, check
 * values season-fao56.csv.
 */
public final class SunHoursRadiation {
  /** Share of Ra under a closed sky, - (FAO-56). */
  public static final double OVERCAST = 0.25;

  /** Further share on a day of full sun, - (FAO-56). */
  public static final double SUN = 0.50;

  private SunHoursRadiation() {}

  /**
   * The radiation.
   *
   * @param sunHours hours of sunshine, h, 0 to 24
   * @param dayLengthHours day length, h
   * @param raMjM2 radiation above the air, MJ/m2 a day
   * @return MJ/m2 a day
   * @throws Impossible if the hours lie outside 0 to 24
   */
  public static double mjM2(double sunHours, double dayLengthHours, double raMjM2) {
    Impossible.unlessWithin("sun", sunHours, 0, 24, "a day has 0 to 24 hours of sun");
    double share = dayLengthHours > 0 ? Math.min(1, sunHours / dayLengthHours) : 0;
    return (OVERCAST + SUN * share) * raMjM2;
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Litres that leave uncovered wet surfaces: 1.05 ET0 A f.
 *
 * <p>Source: coefficient of shallow open water, FAO-56 Table 12 (from memory); areas are common
 * practice; sheet season.md section 2, check values season-balance-crops.csv with
 * season-balance-daily.csv.
 */
public final class OpenWater {
  /** Coefficient of shallow open water, -. */
  public static final double COEFFICIENT = 1.05;

  /** Wet surface of a tower whose lid is closed, m2 (common practice). */
  public static final double CLOSED_TOWER_M2 = 0.005;

  /** Share of an open pan's loss that is ET0, - (FAO-56, from memory; 0.35 to 0.85). */
  public static final double PAN_FACTOR = 0.7;

  private OpenWater() {}

  /**
   * One day.
   *
   * @param et0Mm reference evapotranspiration, mm a day
   * @param wetM2 uncovered wet surface, m2
   * @param exposure factor of the place, -
   * @return L a day
   */
  public static double litresDay(double et0Mm, double wetM2, double exposure) {
    return COEFFICIENT * et0Mm * wetM2 * exposure;
  }

  /**
   * Every day of a season.
   *
   * @param et0Mm reference evapotranspiration of each day, mm a day
   * @param wetM2 uncovered wet surface, m2
   * @param exposure factor of the place, -
   * @return L a day
   * @throws Impossible if the surface is negative
   */
  public static double[] litres(double[] et0Mm, double wetM2, double exposure) {
    Impossible.ifNegative("open area", wetM2);
    double[] litres = new double[et0Mm.length];
    for (int i = 0; i < litres.length; i++) {
      litres[i] = litresDay(et0Mm[i], wetM2, exposure);
    }
    return litres;
  }

  /** Wet surface of so many towers whose lids are closed, m2. */
  public static double closedTowersM2(int towers) {
    return towers * CLOSED_TOWER_M2;
  }
}

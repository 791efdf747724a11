package leat.climate;

/**
 * Heat that goes into the soil over a month, by the change of the mean temperature: for the
 * examples of FAO-56 by months. Over a day it is 0, as the program takes it.
 *
 * <p>Source: FAO-56 equations 42, 43, 44; sheet season.md section 1, check values season-fao56.csv.
 */
final class MonthsSoilHeat {
  /** Factor between the months before and after, MJ/m2 d C (FAO-56 equation 43). */
  private static final double OVER_TWO_MONTHS = 0.07;

  /** Factor from the month before, MJ/m2 d C (FAO-56 equation 44). */
  private static final double OVER_ONE_MONTH = 0.14;

  private MonthsSoilHeat() {}

  /**
   * Of a month whose neighbours are both known.
   *
   * @param beforeCelsius mean temperature of the month before, C
   * @param afterCelsius mean temperature of the month after, C
   * @return MJ/m2 a day
   */
  static double ofMonthMjM2(double beforeCelsius, double afterCelsius) {
    return OVER_TWO_MONTHS * (afterCelsius - beforeCelsius);
  }

  /**
   * Of a month whose next is not known.
   *
   * @param beforeCelsius mean temperature of the month before, C
   * @param thisCelsius mean temperature of this month, C
   * @return MJ/m2 a day
   */
  static double sinceMonthMjM2(double beforeCelsius, double thisCelsius) {
    return OVER_ONE_MONTH * (thisCelsius - beforeCelsius);
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Dew point from the vapour pressure, 237.3 x/(17.27 - x) with x = ln(ea/0.6108).
 *
 * <p>Source: FAO-56 equation 11 turned round; sheet season.md section 7, check values
 * season-vpd.csv.
 */
public final class DewPoint {
  private DewPoint() {}

  /**
   * The dew point.
   *
   * @param eaKPa actual vapour pressure, kPa, above 0
   * @return C
   * @throws Impossible if the pressure is not above 0
   */
  public static double celsius(double eaKPa) {
    Impossible.unlessPositive("vapour pressure", eaKPa);
    double x = Math.log(eaKPa / SaturationVapour.AT_ZERO_KPA);
    return SaturationVapour.SHIFT_CELSIUS * x / (SaturationVapour.FACTOR - x);
  }
}

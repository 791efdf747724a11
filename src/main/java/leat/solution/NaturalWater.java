package leat.solution;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Non-linear temperature function of conductivity for natural, bicarbonate waters.
 *
 * <pre>
 * f25 = p(T) / p(25)
 * p = 1.91755 - 0.0617439 T + 1.50625E-3 T^2 - 2.51937E-5 T^3 + 2.00481E-7 T^4
 * </pre>
 *
 * <p>The polynomial is a fit to the table of the norm, within 0.0006 at whole degrees. The norm is
 * made for waters of about 60 to 1000 uS/cm ({@link #WATERS}); a nutrient solution is neither that
 * weak nor that rich in bicarbonate.
 *
 * <p>Source: ISO 7888:1985 (EN 27888:1993), table of f25. Check values: sheets
 * solution-ec-f25-table.csv, solution-ec-temperature.csv.
 */
public final class NaturalWater {
  /** Temperatures of the norm's table, C. */
  public static final Validity VALID = Validity.of("temperature, C", 0, 35.9);

  /** Conductivities at 25 C the norm is made for, mS/cm. */
  public static final Validity WATERS = Validity.of("EC at 25 C, mS/cm", 0.06, 1.0);

  // fit to the table of the norm; units 1, 1/K, 1/K^2, 1/K^3, 1/K^4
  private static final double P0 = 1.91755;
  private static final double P1 = -0.0617439;
  private static final double P2 = 1.50625e-3;
  private static final double P3 = -2.51937e-5;
  private static final double P4 = 2.00481e-7;
  private static final double REFERENCE_CELSIUS = 25;

  private NaturalWater() {}

  /**
   * The factor from a raw reading to 25 C.
   *
   * @param celsius temperature of the water, C, 0 to 35.9
   * @return f25, -
   * @throws Impossible outside the norm's table
   */
  public static double f25(double celsius) {
    Impossible.unlessWithin(
        "temperature",
        celsius,
        VALID.low(0),
        VALID.high(0),
        "the natural-water function of ISO 7888 ends at 0 and 35.9 C; use the linear one");
    return polynomial(celsius) / polynomial(REFERENCE_CELSIUS);
  }

  private static double polynomial(double t) {
    return P0 + t * (P1 + t * (P2 + t * (P3 + t * P4)));
  }
}

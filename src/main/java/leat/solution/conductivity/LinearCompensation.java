package leat.solution.conductivity;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Linear temperature function of conductivity.
 *
 * <pre>f25 = 1 / (1 + a (T - 25)/100)        EC25 = f25 EC(T)</pre>
 *
 * <p>The usual function of hand-held meters. With a = 1.91 %/K it agrees at 18 C within 0.1 % with
 * a full-strength nutrient solution computed from ionic conductivities at 18 and 25 C; at 0 C it
 * reads 3 to 4 % high, so below {@link #COLD_CELSIUS} the answer deserves a caution.
 *
 * <p>Source: common instrument practice; 1.91 %/K is the coefficient printed for freshwater meters.
 * Check values: sheet solution-ec-temperature.csv.
 */
public final class LinearCompensation {
  /** Default coefficient, %/K; also printed on meters as 1.9, 2.0 or 2.1. */
  public static final double DEFAULT_PCT_PER_K = 1.91;

  /** Temperatures it is offered for, C: common practice. */
  public static final Validity VALID = Validity.of("temperature, C", 0, 60);

  /** Coefficients found on meters and for nutrient solutions, %/K. */
  public static final Validity USUAL = Validity.of("coefficient, %/K", 1.8, 2.2);

  /** Below this temperature, C, a compensated nutrient solution reads up to 4 % high. */
  public static final double COLD_CELSIUS = 10;

  private static final double REFERENCE_CELSIUS = 25;
  private static final double LARGEST_PCT_PER_K = 3.5; // the denominator at 0 C would vanish at 4

  private LinearCompensation() {}

  /**
   * The factor from a raw reading to 25 C.
   *
   * @param pctPerK coefficient, %/K, 0 to 3.5
   * @param celsius temperature of the solution, C, 0 to 60
   * @return f25, -
   * @throws Impossible outside those ranges
   */
  public static double f25(double pctPerK, double celsius) {
    Impossible.unlessWithin(
        "coefficient", pctPerK, 0, LARGEST_PCT_PER_K, "it must lie between 0 and 3.5 % a degree");
    Impossible.unlessWithin(
        "temperature",
        celsius,
        VALID.low(0),
        VALID.high(0),
        "a solution between 0 and 60 C is needed");
    return 1 / (1 + pctPerK / 100 * (celsius - REFERENCE_CELSIUS));
  }
}

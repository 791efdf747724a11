package leat.solution.conductivity;

import leat.numeric.Impossible;
import leat.solution.NaturalWater;

/**
 * The temperature function by which a meter, or the grower, brings a reading to 25 C: {@link
 * LinearCompensation} with a coefficient, or {@link NaturalWater}.
 *
 * <p>Source: see those two classes. Check values: sheet solution-ec-temperature.csv.
 */
public final class Compensation {
  /** Linear, 1.91 %/K. */
  public static final Compensation DEFAULT =
      new Compensation(false, LinearCompensation.DEFAULT_PCT_PER_K);

  /** The function of ISO 7888. */
  public static final Compensation NATURAL_WATER = new Compensation(true, 0);

  private final boolean naturalWater;
  private final double pctPerK;

  private Compensation(boolean naturalWater, double pctPerK) {
    this.naturalWater = naturalWater;
    this.pctPerK = pctPerK;
  }

  /**
   * Linear with a coefficient of one's own.
   *
   * @param pctPerK coefficient, %/K, 0 to 3.5
   * @throws Impossible outside that range
   */
  public static Compensation linear(double pctPerK) {
    LinearCompensation.f25(pctPerK, 25);
    return new Compensation(false, pctPerK);
  }

  /** Whether this is the function of ISO 7888. */
  public boolean isNaturalWater() {
    return naturalWater;
  }

  /**
   * The same coefficient for another step of temperature, such as a degree Fahrenheit.
   *
   * @param kelvin the step, K
   * @return % a step
   */
  public double pctPer(double kelvin) {
    return pctPerK * kelvin;
  }

  /**
   * Least coefficient of meters and nutrient solutions for a step of temperature.
   *
   * @param kelvin the step, K
   * @return % a step
   */
  public static double leastPctPer(double kelvin) {
    return LinearCompensation.USUAL.low(0) * kelvin;
  }

  /**
   * Greatest coefficient of meters and nutrient solutions for a step of temperature.
   *
   * @param kelvin the step, K
   * @return % a step
   */
  public static double mostPctPer(double kelvin) {
    return LinearCompensation.USUAL.high(0) * kelvin;
  }

  /**
   * The factor from a raw reading to 25 C.
   *
   * @param celsius temperature of the solution, C
   * @return f25, -
   * @throws Impossible outside the function's range
   */
  public double f25(double celsius) {
    return naturalWater ? NaturalWater.f25(celsius) : LinearCompensation.f25(pctPerK, celsius);
  }

  /**
   * A raw reading brought to 25 C.
   *
   * @param rawEc reading without compensation, mS/cm
   * @param celsius temperature of the solution, C
   * @return EC at 25 C, mS/cm
   * @throws Impossible if the reading is not 0 to 1000 mS/cm or the temperature outside the
   *     function's range
   */
  public double to25(double rawEc, double celsius) {
    return EcReading.checked(rawEc) * f25(celsius);
  }

  /**
   * What a meter without compensation shows.
   *
   * @param ec25 EC at 25 C, mS/cm
   * @param celsius temperature of the solution, C
   * @return raw reading, mS/cm
   * @throws Impossible if the EC is not 0 to 1000 mS/cm or the temperature outside the function's
   *     range
   */
  public double rawAt(double ec25, double celsius) {
    return EcReading.checked(ec25) / f25(celsius);
  }

  /** Whether it is linear with a coefficient that no meter or feed has. */
  public boolean isOdd() {
    return !naturalWater && !LinearCompensation.USUAL.holds(pctPerK);
  }

  /** Lowest temperature it is made for, C. */
  public double coldest() {
    return naturalWater ? NaturalWater.VALID.low(0) : LinearCompensation.VALID.low(0);
  }

  /** Highest temperature it is made for, C. */
  public double warmest() {
    return naturalWater ? NaturalWater.VALID.high(0) : LinearCompensation.VALID.high(0);
  }

  /**
   * Whether it is so cold that a compensated nutrient solution reads up to 4 % high.
   *
   * @param celsius temperature of the solution, C
   */
  public static boolean isCold(double celsius) {
    return celsius < LinearCompensation.COLD_CELSIUS;
  }
}

package leat.solution.conductivity;

import leat.numeric.Impossible;
import leat.solution.NaturalWater;

/**
 * A conductivity reading in every form a meter shows it.
 *
 * <p>Source: {@link Compensation}, {@link PpmScale}. Check values: sheet
 * solution-ec-temperature.csv.
 *
 * @param ec EC as read, mS/cm: raw at {@code celsius}, or at 25 C
 * @param celsius temperature at which it was read raw, C; 25 when the reading is already at 25 C
 * @param f25 factor between the two, -
 * @param ec25 EC at 25 C, mS/cm
 * @param ppm500 ppm on the scale of 500
 * @param ppm640 ppm on the scale of 640
 * @param ppm700 ppm on the scale of 700
 */
public record EcReading(
    double ec,
    double celsius,
    double f25,
    double ec25,
    double ppm500,
    double ppm640,
    double ppm700) {
  /** Temperature that every target and label means, C. */
  public static final double REFERENCE_CELSIUS = 25;

  /** EC over which no plant lives, mS/cm (common practice). */
  public static final double MOST_FOR_PLANTS = 10;

  /** More than the best conducting acid, mS/cm (sulfuric acid of 30 %: about 830). */
  private static final double LARGEST_EC = 1000;

  /**
   * A reading that is already at 25 C.
   *
   * @param ec25 EC at 25 C, mS/cm
   * @throws Impossible if negative or over 1000 mS/cm
   */
  public static EcReading at25(double ec25) {
    return of(ec25, REFERENCE_CELSIUS, 1);
  }

  /**
   * A reading without compensation.
   *
   * @param rawEc EC as read, mS/cm
   * @param celsius temperature of the solution, C
   * @param by temperature function
   * @throws Impossible if negative or over 1000 mS/cm, or outside the function's temperatures
   */
  public static EcReading raw(double rawEc, double celsius, Compensation by) {
    return of(rawEc, celsius, by.f25(celsius));
  }

  /** Whether no plant lives in it: a stock bottle, or a slip of the unit. */
  public boolean tooStrong() {
    return ec25 > MOST_FOR_PLANTS;
  }

  /** Whether it is a water that the norm of natural waters is made for. */
  public boolean naturalWater() {
    return NaturalWater.WATERS.holds(ec25);
  }

  /**
   * Returns the EC if a water solution can have it.
   *
   * @param ec mS/cm, raw or at 25 C
   * @throws Impossible if negative or over 1000 mS/cm
   */
  static double checked(double ec) {
    Impossible.ifNegative("EC", ec);
    return Impossible.unlessWithin(
        "EC", ec, 0, LARGEST_EC, "no water conducts over 1000 mS/cm; 1.4 mS/cm is 1400 uS/cm");
  }

  private static EcReading of(double ec, double celsius, double f25) {
    double ec25 = checked(ec) * f25;
    return new EcReading(
        ec,
        celsius,
        f25,
        ec25,
        PpmScale.PPM500.ppm(ec25),
        PpmScale.PPM640.ppm(ec25),
        PpmScale.PPM700.ppm(ec25));
  }
}

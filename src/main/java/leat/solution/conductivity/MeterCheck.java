package leat.solution.conductivity;

import leat.numeric.Impossible;

/**
 * A meter held into a standard: the factor by which to multiply its readings.
 *
 * <pre>
 * slope = expected / shown
 * expected = true EC at the bottle's temperature           (meter without compensation)
 *          = that, brought to 25 C by the meter's function (meter with compensation)
 * </pre>
 *
 * <p>A compensated reading must not be compared with the label outright: at 10 C a true meter shows
 * 1 % more than the label, at 0 C 5 %.
 *
 * <p>Source: {@link KclStandard}; beyond 10 % clean or replace the probe: common practice. Check
 * values: sheet solution-ec-standards.csv.
 *
 * @param standard the bottle
 * @param celsius temperature of the standard, C
 * @param shown what the meter showed, mS/cm
 * @param trueEc true EC at that temperature, mS/cm
 * @param compensatedShows what a true meter with compensation shows, mS/cm
 * @param compensates whether the meter was taken to compensate
 * @param certain whether that was told, or is plain from the reading; false near 25 C when not told
 * @param expected what this meter should have shown, mS/cm
 * @param slope factor for its readings, -
 * @param errorPct how much too high it reads, per cent: 100 (shown/expected - 1)
 * @param faulty whether the slope is beyond 10 %: clean or replace the probe, do not correct
 */
public record MeterCheck(
    KclStandard standard,
    double celsius,
    double shown,
    double trueEc,
    double compensatedShows,
    boolean compensates,
    boolean certain,
    double expected,
    double slope,
    double errorPct,
    boolean faulty) {

  /** Largest error, per cent, that a factor may correct. */
  public static final double LARGEST_ERROR_PCT = 10;

  /** Errors under this, per cent, are finer than a hand-held meter (common practice). */
  private static final double TRUE_PCT = 0.5;

  private static final double LEAST_SHOWN = 1e-3; // mS/cm
  private static final double LEAST_SLOPE = 0.1;
  private static final double MOST_SLOPE = 10;

  /** The two ways of reading the meter must differ by this much, per cent, to be told apart. */
  private static final double TELLS_APART_PCT = 6;

  /**
   * Check of a meter known to compensate.
   *
   * @param shown reading, mS/cm
   * @param standard the bottle
   * @param celsius temperature of the standard, C
   * @param by the meter's temperature function
   * @throws Impossible if the reading is under 0.001 or over 1000 mS/cm, or the temperature outside
   *     the tables
   */
  public static MeterCheck compensated(
      double shown, KclStandard standard, double celsius, Compensation by) {
    return of(shown, standard, celsius, by, true, true);
  }

  /**
   * Check of a meter known not to compensate.
   *
   * @param shown reading, mS/cm
   * @param standard the bottle
   * @param celsius temperature of the standard, C
   * @param by function with which {@link #compensatedShows} is told
   * @throws Impossible if the reading is under 0.001 or over 1000 mS/cm, or the temperature outside
   *     the tables
   */
  public static MeterCheck raw(
      double shown, KclStandard standard, double celsius, Compensation by) {
    return of(shown, standard, celsius, by, false, true);
  }

  /**
   * Check of a meter of which nobody knows whether it compensates: the nearer of the two is taken.
   *
   * @param shown reading, mS/cm
   * @param standard the bottle
   * @param celsius temperature of the standard, C
   * @param by temperature function it would have
   * @throws Impossible if the reading is under 0.001 or over 1000 mS/cm, or the temperature outside
   *     the tables
   */
  public static MeterCheck unknown(
      double shown, KclStandard standard, double celsius, Compensation by) {
    MeterCheck with = of(shown, standard, celsius, by, true, false);
    MeterCheck without = of(shown, standard, celsius, by, false, false);
    double offWith = Math.abs(with.errorPct);
    double offWithout = Math.abs(without.errorPct);
    boolean compensates = offWith <= offWithout;
    boolean plain =
        Math.min(offWith, offWithout) <= LARGEST_ERROR_PCT
            && Math.abs(offWith - offWithout) >= TELLS_APART_PCT;
    return of(shown, standard, celsius, by, compensates, plain);
  }

  private static MeterCheck of(
      double shown,
      KclStandard standard,
      double celsius,
      Compensation by,
      boolean compensates,
      boolean certain) {
    EcReading.checked(shown);
    Impossible.unlessWithin(
        "EC", shown, LEAST_SHOWN, Double.MAX_VALUE, "the meter shows next to nothing");
    double trueEc = standard.ecAt(celsius);
    double after = by.to25(trueEc, celsius);
    double expected = compensates ? after : trueEc;
    double errorPct = 100 * (shown / expected - 1);
    double slope = expected / shown;
    boolean faulty = !isCorrectable(slope);
    return new MeterCheck(
        standard,
        celsius,
        shown,
        trueEc,
        after,
        compensates,
        certain,
        expected,
        slope,
        errorPct,
        faulty);
  }

  /** Whether the meter reads true, as far as one can tell. */
  public boolean readsTrue() {
    return offPct() < TRUE_PCT;
  }

  /** How far off it reads, per cent without sign. */
  public double offPct() {
    return Math.abs(errorPct);
  }

  /** Whether it reads too high. */
  public boolean tooHigh() {
    return errorPct > 0;
  }

  /** Whether both kinds of meter would show the same there, as they do near 25 C. */
  public boolean sameEitherWay() {
    return 100 * Math.abs(compensatedShows / trueEc - 1) < TRUE_PCT;
  }

  /**
   * Whether a factor may correct the meter: within 10 % of 1; beyond, the probe is at fault.
   *
   * @param slope factor found in a check, -
   */
  public static boolean isCorrectable(double slope) {
    return Math.abs(slope - 1) <= LARGEST_ERROR_PCT / 100 + 1e-12;
  }

  /**
   * A reading of a checked meter put right.
   *
   * @param shown reading, mS/cm
   * @param slope factor found in a check, -
   * @return EC, mS/cm
   * @throws Impossible if the reading is not 0 to 1000 mS/cm or the factor not 0.1 to 10
   */
  public static double corrected(double shown, double slope) {
    return EcReading.checked(shown)
        * Impossible.unlessWithin(
            "slope", slope, LEAST_SLOPE, MOST_SLOPE, "a meter's factor lies near 1, 0.1 to 10");
  }
}

package leat.climate;

/**
 * How far a season's thirst may be from the model: one lognormal factor on all days, median 1.
 * Daily errors average out, this one does not. The season is run at the factors, never scaled.
 *
 * <p>Source: sheet season.md section 9; the parts of sigma are common practice; the factors are
 * exp(+-1.2816 sigma), rounded.
 */
public final class ThirstSpread {
  /** Part of the ET0 method in sigma. */
  public static final double SIGMA_METHOD = 0.12;

  /** Part of the plant in sigma. */
  public static final double SIGMA_PLANT = 0.25;

  /** Part of the place in sigma. */
  public static final double SIGMA_EXPOSURE = 0.15;

  /** Sigma after a thirst was found from a level log. */
  public static final double SIGMA_CALIBRATED = 0.12;

  /** Low end of the 80 % interval. */
  public static final double LOW = 0.66;

  /** High end of the 80 % interval. */
  public static final double HIGH = 1.51;

  /** Low end after calibration. */
  public static final double LOW_CALIBRATED = 0.86;

  /** High end after calibration. */
  public static final double HIGH_CALIBRATED = 1.17;

  private ThirstSpread() {}
}

package leat.season;

/**
 * The doubt about all thirst of a season, as factors: common to the whole season, since daily
 * errors average out and this one does not. Lognormal with median 1.
 *
 * <p>Source: common practice; 80 % of a lognormal with sigma 0.32, and 0.12 after a log.
 *
 * @param low nine seasons of ten drink more than this times the middle
 * @param middle the factor of the shown run
 * @param high nine of ten drink less
 */
public record Thirst(double low, double middle, double high) {
  /**
   * Before any log: reference evapotranspiration, plant and exposure together (common practice).
   */
  public static final Thirst GUESSED = new Thirst(0.66, 1, 1.51);

  /** After two weeks of a level log (common practice). */
  private static final double MEASURED_LOW = 0.86;

  private static final double MEASURED_HIGH = 1.17;

  /**
   * The factors around one that a log has found.
   *
   * @param factor measured over modelled litres, -
   * @throws leat.numeric.Impossible if it is not above 0
   */
  public static Thirst measured(double factor) {
    leat.numeric.Impossible.unlessPositive("thirst", factor);
    return new Thirst(MEASURED_LOW * factor, factor, MEASURED_HIGH * factor);
  }
}

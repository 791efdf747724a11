package leat.season;

/**
 * The interval of a quantity over years and thirst.
 *
 * @param low its low end
 * @param high its high end
 * @param kind how the ends were found
 */
public record Interval(double low, double high, Kind kind) {
  /** How the ends were found. */
  public enum Kind {
    /** 10 and 90 % of all runs: at least five years. */
    QUANTILES,
    /** Least and most of all runs: under five years. */
    RANGE,
    /**
     * Least and most of all runs and of more between, because it does not follow thirst steadily.
     */
    RANGE_WITH_RUNS_BETWEEN
  }
}

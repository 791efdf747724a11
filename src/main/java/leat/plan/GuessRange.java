package leat.plan;

/**
 * How far a number that nobody has measured may be off; declared beside its key.
 *
 * @param of what the ends are
 * @param low low end: base unit, or a factor
 * @param high high end
 * @param source where the range comes from
 * @param settledBy what a person does to know it, in words
 * @param unless path of another key that makes it no guess any more; null for none
 */
public record GuessRange(
    Of of, double low, double high, String source, String settledBy, String unless) {
  /** What the ends of a range are. */
  public enum Of {
    /** Values, wide enough to hold what the plan states. */
    VALUES,
    /** Factors on what the plan states, or on what is taken for it. */
    FACTORS,
    /** Values that hold while the plan does not state the key: what is stated is known. */
    UNTOLD
  }

  /** The low end around a value; null for a key that is not stated. */
  public double lowOf(Double stated) {
    return of == Of.FACTORS ? low * stated : stated == null ? low : Math.min(low, stated);
  }

  /** The high end around a value; null for a key that is not stated. */
  public double highOf(Double stated) {
    return of == Of.FACTORS ? high * stated : stated == null ? high : Math.max(high, stated);
  }
}

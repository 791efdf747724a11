package leat.level;

/**
 * Ranges of senders that are common in the trade, as ranges only: which ohms each step has a fit
 * must find.
 *
 * <p>Source: sheet level.md. 0-190, 10-180 and 240-30 as a marine sender maker's help page gives
 * them, nominal within 10 ohm; 240-33 is common practice for the same habit.
 */
public enum TradeRange {
  /** 0 ohm empty, 190 ohm full: a European habit. Empty and a shorted cable look the same. */
  EUROPE_0_190("0-190", 0, 190),
  /** 10 ohm empty, 180 ohm full: a European habit. */
  EUROPE_10_180("10-180", 10, 180),
  /** 240 ohm empty, 33 ohm full: an American habit. */
  AMERICA_240_33("240-33", 240, 33),
  /** 240 ohm empty, 30 ohm full: the same habit by another maker. */
  AMERICA_240_30("240-30", 240, 30);

  /** How far a sender's ends may lie from the nominal ones, ohm. */
  public static final double NOMINAL = 10;

  private final String word;
  private final double empty;
  private final double full;

  TradeRange(String word, double empty, double full) {
    this.word = word;
    this.empty = empty;
    this.full = full;
  }

  /** The word, empty to full. */
  public String word() {
    return word;
  }

  /** Resistance when empty, ohm. */
  public double empty() {
    return empty;
  }

  /** Resistance when full, ohm. */
  public double full() {
    return full;
  }

  /**
   * The range with a word such as "0-190", or null.
   *
   * @param word the word
   */
  public static TradeRange of(String word) {
    for (TradeRange r : values()) {
      if (r.word.equals(word)) {
        return r;
      }
    }
    return null;
  }

  /**
   * The range a sender with these end resistances may belong to, or null: both ends within 10 ohm,
   * the nearest when several are.
   *
   * @param empty resistance when empty, ohm
   * @param full resistance when full, ohm
   */
  public static TradeRange like(double empty, double full) {
    TradeRange best = null;
    double least = Double.MAX_VALUE;
    for (TradeRange r : values()) {
      double off = Math.max(Math.abs(empty - r.empty), Math.abs(full - r.full));
      if (off <= NOMINAL && off < least) {
        least = off;
        best = r;
      }
    }
    return best;
  }

  /**
   * The range that fits when full and empty are swapped, or null: the commonest fault of fitting,
   * the gauge then reads backwards.
   *
   * @param empty resistance when empty, ohm
   * @param full resistance when full, ohm
   */
  public static TradeRange reversed(double empty, double full) {
    return like(full, empty);
  }
}

package leat.level;

/**
 * What a reading of the sender means, as the sheet level-decode.csv classes it. Source: conventions
 * of that sheet, first that fits.
 */
public enum Status {
  /** Exactly one step fits. */
  OK("ok", true),
  /** Between two neighbouring steps: a poor contact or a wet plug more often than a level. */
  BETWEEN_STEPS("between-steps", true),
  /** Two or more steps fit: their windows overlap. */
  AMBIGUOUS("ambiguous", true),
  /** The lowest step is about 0 ohm: empty, or a short, nobody can tell. */
  OK_OR_SHORT("ok-or-short", true),
  /** A broken wire, or no reed closed. */
  OPEN("open", false),
  /** A shorted cable. */
  SHORT("short", false),
  /** Below the lowest step, no short: a wet plug or another sender. */
  UNDER_RANGE("under-range", false),
  /** Above the highest step, not open: a corroded plug or another sender. */
  OVER_RANGE("over-range", false),
  /** Nothing was read. */
  NO_READING("no-reading", false);

  private final String word;
  private final boolean band;

  Status(String word, boolean band) {
    this.word = word;
    this.band = band;
  }

  /** The word printed, in kebab case. */
  public String word() {
    return word;
  }

  /** Whether such a reading has a band of levels. */
  public boolean hasBand() {
    return band;
  }

  /** Whether such a reading is a fault of the sender or its wires: open, short, under, over. */
  public boolean isFault() {
    return this == OPEN || this == SHORT || this == UNDER_RANGE || this == OVER_RANGE;
  }
}

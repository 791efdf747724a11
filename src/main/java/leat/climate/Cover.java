package leat.climate;

/**
 * Covers and the share of light they let through, all seen in the texts that the sheet names.
 *
 * <p>Source: each row's own, sheet season-light.md section 2.
 */
public enum Cover {
  NONE("none", 1),
  GLASS("glass", 0.88),
  DOUBLE_GLASS("double-glass", 0.77),
  DOUBLE_WINDOW("double-window", 0.80),
  TRIPLE_WINDOW("triple-window", 0.70),
  TWIN_WALL("twin-wall", 0.80),
  FILM("film", 0.69),
  /** A whole glasshouse with its frame: the middle of 0.5 to 0.7. */
  GLASSHOUSE("glasshouse", 0.6);

  /** Least and most that dirt and age take off, share (common practice). */
  public static final double DIRT_LOW = 0.05;

  public static final double DIRT_HIGH = 0.2;

  private final String word;
  private final double transmission;

  Cover(String word, double transmission) {
    this.word = word;
    this.transmission = transmission;
  }

  /** The word. */
  public String word() {
    return word;
  }

  /** Share of light let through, -. */
  public double transmission() {
    return transmission;
  }

  /** The cover of a word; null when there is none. */
  public static Cover of(String word) {
    Cover[] all = values();
    for (int i = 0; i < all.length; i++) {
      if (all[i].word.equals(word)) {
        return all[i];
      }
    }
    return null;
  }
}

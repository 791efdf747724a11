package leat.climate;

/**
 * Where the tower stands: the factor on its thirst, and whether it has a roof.
 *
 * <p>Source: common practice; glass and film after a measured transmissivity of 0.69 (Water 2022,
 * 14, 2410); sheet season.md section 2.
 */
public enum Exposure {
  /** In an open bed. */
  OPEN("open", 1.0, false),
  /** Alone in sun and wind, which reach it on all sides. */
  ALONE("alone", 1.2, false),
  /** Half-day shade or a court out of the wind. */
  SHELTERED("sheltered", 0.7, false),
  /** Under glass or film. */
  GLASS("glass", 0.65, true),
  /** Indoors by a window. */
  WINDOW("window", 0.4, true);

  private final String word;
  private final double factor;
  private final boolean roof;

  Exposure(String word, double factor, boolean roof) {
    this.word = word;
    this.factor = factor;
    this.roof = roof;
  }

  /** Factor on the thirst, -. */
  public double factor() {
    return factor;
  }

  /** Whether rain is kept off. */
  public boolean hasRoof() {
    return roof;
  }

  /** The exposure of a word; null when there is none. */
  public static Exposure of(String word) {
    Exposure[] all = values();
    for (int i = 0; i < all.length; i++) {
      if (all[i].word.equals(word)) {
        return all[i];
      }
    }
    return null;
  }
}

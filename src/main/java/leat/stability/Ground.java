package leat.stability;

/**
 * Friction of a plastic foot on what it stands on, by the plan's word.
 *
 * <p>Source: CTU Code of IMO, ILO and UNECE, annex 7, appendix 2 (plastic pallet on plywood 0.20,
 * on steel 0.15, wet or dry); SAE 2002-01-3104 (HDPE on worn hardwood, sliding 0.20); EN 12195-1 as
 * a maker publishes it (anti-slip mat 0.6); public handbook values (rubber on concrete wet 0.45 to
 * 0.75, the low end here); others practice.
 */
public final class Ground {
  /** Unless the plan says otherwise, - (practice, a dry deck). */
  public static final double FRICTION = 0.3;

  private static final String[] WORDS = {
    "dry", "wet", "wet-plastic", "plywood", "steel", "wood", "rubber-mat", "anti-slip-mat"
  };
  private static final double[] OF = {FRICTION, 0.2, 0.2, 0.20, 0.15, 0.20, 0.45, 0.6};

  private Ground() {}

  /** Friction of a word, -; null when the word is not known. */
  public static Double friction(String word) {
    for (int i = 0; i < WORDS.length; i++) {
      if (WORDS[i].equals(word)) {
        return OF[i];
      }
    }
    return null;
  }

  /** The words known. */
  public static String[] words() {
    return WORDS.clone();
  }
}

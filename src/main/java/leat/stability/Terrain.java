package leat.stability;

/** The ground around, as wind feels it: EN 1991-1-4, table 4.1. */
public enum Terrain {
  /** Category 0: sea, open coast. */
  COAST("coast", "0", 0.003, 1),
  /** Category I: lakes, flat land without obstacles. */
  FLAT("flat", "I", 0.01, 1),
  /** Category II: low vegetation, scattered obstacles. */
  OPEN("open", "II", 0.05, 2),
  /** Category III: villages, suburbs, forest. */
  SUBURB("suburb", "III", 0.3, 5),
  /** Category IV: at least 15 % built up, mean height of buildings over 15 m (words: memory). */
  CITY("city", "IV", 1.0, 10);

  private static final Terrain[] ALL = {COAST, FLAT, OPEN, SUBURB, CITY};

  private final String word;
  private final String category;
  private final double roughnessLength;
  private final double leastHeight;

  Terrain(String word, String category, double roughnessLength, double leastHeight) {
    this.word = word;
    this.category = category;
    this.roughnessLength = roughnessLength;
    this.leastHeight = leastHeight;
  }

  /** The terrain of a plan's word or of a category of the standard; null when there is none. */
  public static Terrain named(String word) {
    for (Terrain one : ALL) {
      if (one.word.equals(word) || one.category.equals(word)) {
        return one;
      }
    }
    return null;
  }

  /** The plan's words, from the smoothest. */
  public static String[] words() {
    String[] words = new String[ALL.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = ALL[i].word;
    }
    return words;
  }

  /** The plan's word. */
  public String word() {
    return word;
  }

  /** Roughness length z0, m. */
  public double roughnessLength() {
    return roughnessLength;
  }

  /** Height zmin below which the profile stays as it is, m. */
  public double leastHeight() {
    return leastHeight;
  }
}

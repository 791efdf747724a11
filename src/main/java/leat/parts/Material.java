package leat.parts;

/**
 * What is printed, and how it bears sun.
 *
 * <p>Source: public pages of materials.
 */
public enum Material {
  /** Softens in sun on a dark wall. */
  PLA("PLA", 60),
  /** Fair against ultraviolet light. */
  PETG("PETG", 80),
  /** Made for weather. */
  ASA("ASA", 100);

  private static final Material[] ALL = {PLA, PETG, ASA};

  private final String word;
  private final double softensCelsius;

  Material(String word, double softensCelsius) {
    this.word = word;
    this.softensCelsius = softensCelsius;
  }

  /** The material of a word, capitals or not; null when there is none. */
  public static Material named(String word) {
    for (Material one : ALL) {
      if (one.word.equalsIgnoreCase(word)) {
        return one;
      }
    }
    return null;
  }

  /** The words. */
  public static String[] words() {
    String[] words = new String[ALL.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = ALL[i].word;
    }
    return words;
  }

  /** The word to print. */
  public String word() {
    return word;
  }

  /** Where it starts to soften, degrees Celsius. */
  public double softensCelsius() {
    return softensCelsius;
  }
}

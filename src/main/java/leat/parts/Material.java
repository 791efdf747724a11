package leat.parts;

/**
 * What is printed, and how it bears sun.
 *
 * <p>Source: public slicer profiles and materials pages (PLA 1.24, 1.22 to 1.26; PETG 1.27, 1.25 to
 * 1.29; ASA 1.07, 1.04 to 1.13 g/cm3); softening from the same. Check values: build-filament.csv.
 */
public enum Material {
  /** Softens in sun on a dark wall. */
  PLA("PLA", 1240, 1220, 1260, 60),
  /** Fair against ultraviolet light. */
  PETG("PETG", 1270, 1250, 1290, 80),
  /** Made for weather. */
  ASA("ASA", 1070, 1040, 1130, 100);

  private static final Material[] ALL = {PLA, PETG, ASA};

  private final String word;
  private final double density;
  private final double lightest;
  private final double heaviest;
  private final double softensCelsius;

  Material(String word, double density, double lightest, double heaviest, double softensCelsius) {
    this.word = word;
    this.density = density;
    this.lightest = lightest;
    this.heaviest = heaviest;
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

  /** Density, kg/m3. */
  public double density() {
    return density;
  }

  /** Lightest on sale, kg/m3. */
  public double lightest() {
    return lightest;
  }

  /** Heaviest on sale, kg/m3. */
  public double heaviest() {
    return heaviest;
  }

  /** Where it starts to soften, degrees Celsius. */
  public double softensCelsius() {
    return softensCelsius;
  }
}

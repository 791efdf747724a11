package leat.climate;

import leat.numeric.Impossible;

/**
 * Photons from a lux meter, PPFD = lux/k, and a day's light when it is even, 0.0036 PPFD h. The k
 * of the sun is not that of a lamp.
 *
 * <p>Source: factors k from a sensor maker's page, white LED from memory; sheet season-light.md
 * section 5, check values season-light.csv.
 */
public final class LightMeter {
  /** Lux of 1 umol/m2 s of sunlight. */
  public static final double SUN = 54;

  public static final double FLUORESCENT = 74;
  public static final double SODIUM = 82;
  public static final double HALIDE = 71;

  /** White LED (from memory). */
  public static final double WHITE_LED = 70;

  private static final String[] WORDS = {"sun", "white-led", "fluorescent", "sodium", "halide"};
  private static final double[] FACTORS = {SUN, WHITE_LED, FLUORESCENT, SODIUM, HALIDE};

  private LightMeter() {}

  /** Words of the lights whose factor is known, sunlight first. */
  public static String[] words() {
    return WORDS.clone();
  }

  /** Lux of 1 umol/m2 s of the light of that word, one of {@link #words}. */
  public static double luxPerUmol(String word) {
    for (int i = 0; i < WORDS.length; i++) {
      if (WORDS[i].equals(word)) {
        return FACTORS[i];
      }
    }
    throw new Impossible("lux", "no factor of lux is known for " + word);
  }

  /**
   * Photons.
   *
   * @param lux reading, lx
   * @param luxPerUmol lux of 1 umol/m2 s of this light
   * @return umol/m2 s
   * @throws Impossible if the reading is negative or the factor not above 0
   */
  public static double ppfdUmolM2S(double lux, double luxPerUmol) {
    return Impossible.ifNegative("lux", lux) / Impossible.unlessPositive("lux", luxPerUmol);
  }

  /**
   * A day's light, even over its hours.
   *
   * @param ppfdUmolM2S photons, umol/m2 s
   * @param hours hours of light, h
   * @return mol/m2 a day
   * @throws Impossible if one is negative
   */
  public static double molM2(double ppfdUmolM2S, double hours) {
    return Impossible.ifNegative("light", ppfdUmolM2S)
        * Impossible.unlessWithin("hours", hours, 0, 24, "a day has 24 hours")
        * 3600e-6;
  }
}

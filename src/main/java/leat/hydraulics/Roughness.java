package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Roughness of a pipe's wall by its material, as named in a plan. The bore matters far more.
 *
 * <p>Source: public roughness tables for PVC, plastics and rubber; glass as in python-fluids' table
 * 1; silicone, vinyl, slime and printed tube are practice without a source (sheet hydraulics.md
 * section 2).
 */
public final class Roughness {
  /** What is taken when no material is named: a clean smooth tube, m. */
  public static final double SMOOTH_TUBE = 0.0015e-3;

  private static final String[] NAME = {
    "pvc", "pe", "pp", "silicone", "vinyl", "rubber", "glass", "slimed", "printed"
  };

  private static final double[] TYPICAL_MM = {
    0.0015, 0.0015, 0.0015, 0.0015, 0.0015, 0.01, 0.0015, 0.05, 0.1
  };
  private static final double[] LOW_MM = {
    0.0015, 0.0015, 0.0015, 0.0015, 0.0015, 0.006, 0.0015, 0.05, 0.05
  };
  private static final double[] HIGH_MM = {
    0.007, 0.007, 0.007, 0.007, 0.007, 0.07, 0.0015, 0.05, 0.2
  };

  private static final String[] SOURCE = {
    "public roughness tables",
    "public roughness tables",
    "public roughness tables",
    "practice, as plastic",
    "practice, as plastic",
    "public roughness tables",
    "python-fluids table 1",
    "practice: any tube after a season; slime narrows the bore too",
    "practice; between fine and coarse layers"
  };

  private Roughness() {}

  /** The materials, kebab-case. */
  public static String[] names() {
    return NAME.clone();
  }

  /**
   * Typical roughness, m.
   *
   * @throws Impossible for an unknown material
   */
  public static double of(String material) {
    return TYPICAL_MM[known(material)] / 1000;
  }

  /** Lowest value to expect, m. */
  public static double low(String material) {
    return LOW_MM[known(material)] / 1000;
  }

  /** Highest value to expect, m. */
  public static double high(String material) {
    return HIGH_MM[known(material)] / 1000;
  }

  /** How it is known, in words. */
  public static String source(String material) {
    return SOURCE[known(material)];
  }

  private static int known(String material) {
    int i = index(material);
    if (i < 0) {
      throw new Impossible("material", "no such pipe material is known");
    }
    return i;
  }

  private static int index(String material) {
    for (int i = 0; i < NAME.length; i++) {
      if (NAME[i].equals(material)) {
        return i;
      }
    }
    return -1;
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Daily light integral, mol of photons of 400 to 700 nm a m2 and day, from radiation on the level.
 *
 * <pre>DLI = 0.45 x 4.57 Rs = 2.0565 Rs;  inside DLI x transmission x share not shaded</pre>
 *
 * <p>Good to 10 % from measured radiation. A tower stands upright: level figures are a guide only,
 * and its shaded side gets less than half.
 *
 * <p>Source: share 0.45 of radiation, Akitsu and others (abstract); 4.57 umol/J of sun and sky,
 * Thimijan and Heins 1983 (quoted); sheet season-light.md section 1, check values season-light.csv.
 */
public final class DailyLight {
  /** Share of radiation that plants can use, -. */
  public static final double USABLE_SHARE = 0.45;

  /** Photons of usable sunlight, umol/J. */
  public static final double SUN_UMOL_J = 4.57;

  /** How good a figure from measured radiation is, share. */
  public static final double UNCERTAINTY = 0.1;

  private DailyLight() {}

  /**
   * In the open.
   *
   * @param rsMjM2 radiation on the level ground, MJ/m2 a day
   * @return mol/m2 a day
   * @throws Impossible if the radiation is negative
   */
  public static double molM2(double rsMjM2) {
    return USABLE_SHARE * SUN_UMOL_J * Impossible.ifNegative("radiation", rsMjM2);
  }

  /**
   * Behind a cover.
   *
   * @param molM2 light in the open, mol/m2 a day
   * @param transmission share the cover lets through, 0 to 1
   * @param unshaded share that nothing else shades, 0 to 1
   * @return mol/m2 a day
   * @throws Impossible if a share is outside 0 to 1
   */
  public static double insideMolM2(double molM2, double transmission, double unshaded) {
    return molM2 * Accepted.share("transmission", transmission) * Accepted.share("shade", unshaded);
  }

  /**
   * Behind a cover and in shade.
   *
   * @param molM2 light in the open, mol/m2 a day
   * @param transmission share the cover lets through, 0 to 1
   * @param shade share that something else keeps off, 0 to 1
   * @return mol/m2 a day
   * @throws Impossible if a share is outside 0 to 1
   */
  public static double shadedMolM2(double molM2, double transmission, double shade) {
    return insideMolM2(molM2, transmission, 1 - shade);
  }
}

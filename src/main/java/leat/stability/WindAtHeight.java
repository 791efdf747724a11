package leat.stability;

import leat.numeric.Impossible;

/**
 * A measured wind at another height of the same place, when only a mast's reading is known.
 *
 * <pre>
 * power: v = vref (z/zref)^alpha;   logarithm: v = vref ln((z - d)/z0)/ln((zref - d)/z0)
 * </pre>
 *
 * <p>Exponents: open water 0.10, smooth grass 0.15, row crops and bushes with few trees 0.20, heavy
 * trees, several buildings or hills 0.25.
 *
 * <p>Source: exponents as in a public engineering table of wind shear; logarithmic law as in texts
 * on the boundary layer; see sheet stability-build.md section 1. Check values:
 * stability-profile-simple.csv.
 */
public final class WindAtHeight {
  private WindAtHeight() {}

  /**
   * By the power law.
   *
   * @param speed at the reference height, m/s, 0 to 150
   * @param reference height of the reading, m, above 0
   * @param height wanted, m, above 0
   * @param exponent alpha, -, 0 to 1
   * @return m/s
   * @throws Impossible outside
   */
  public static double power(double speed, double reference, double height, double exponent) {
    Air.checkedSpeed(speed);
    Impossible.unlessPositive("height", reference);
    Impossible.unlessPositive("height", height);
    Impossible.unlessWithin("exponent", exponent, 0, 1, "a wind exponent is 0 to 1");
    return speed * Math.pow(height / reference, exponent);
  }

  /**
   * By the logarithmic law.
   *
   * @param speed at the reference height, m/s, 0 to 150
   * @param reference height of the reading, m, over roughness and displacement
   * @param height wanted, m, over roughness and displacement
   * @param roughness length z0, m, above 0
   * @param displacement d, m, 0 or more
   * @return m/s
   * @throws Impossible outside
   */
  public static double logarithmic(
      double speed, double reference, double height, double roughness, double displacement) {
    Air.checkedSpeed(speed);
    Impossible.unlessPositive("roughness", roughness);
    Impossible.ifNegative("displacement", displacement);
    return speed
        * logarithm(height, roughness, displacement)
        / logarithm(reference, roughness, displacement);
  }

  private static double logarithm(double height, double roughness, double displacement) {
    if (!(height - displacement > roughness) || Double.isInfinite(height)) {
      throw new Impossible("height", "the logarithmic law begins over the roughness");
    }
    return Math.log((height - displacement) / roughness);
  }
}

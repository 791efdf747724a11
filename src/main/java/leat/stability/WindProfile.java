package leat.stability;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Wind over height and ground: from the mean of open country to mean and gust at a place.
 *
 * <pre>
 * kr = 0.19 (z0/0.05)^0.07;   cr = kr ln(z/z0), z not under zmin;   vm = cr vb
 * Iv = 1/ln(z/z0);   qp = (1 + 7 Iv) rho vm^2/2;   gust/mean = sqrt(1 + 7 Iv)
 * </pre>
 *
 * <p>vb is the 10-minute mean at 10 m over open country. The height counts from the ground around
 * the building, not from a balcony's floor. Hills, and corners, edges and passages of buildings are
 * not in it. A number that is a gust already must not come here.
 *
 * <p>Source: EN 1991-1-4:2005, equations 4.3 to 4.8, table 4.1; orography and turbulence factors 1.
 * Check values: stability-wind-profile.csv.
 */
public final class WindProfile {
  /** Heights of the profile. */
  public static final Validity VALID = Validity.of("height above ground, m", 0, 200);

  private static final double TERRAIN_FACTOR = 0.19;
  private static final double TERRAIN_POWER = 0.07;
  private static final double PEAK = 7;

  private WindProfile() {}

  /** Terrain factor kr, -. */
  public static double terrainFactor(Terrain terrain) {
    return TERRAIN_FACTOR
        * Math.pow(terrain.roughnessLength() / Terrain.OPEN.roughnessLength(), TERRAIN_POWER);
  }

  /**
   * Height the profile is read at.
   *
   * @param terrain the ground around
   * @param height above the ground, m, 0 to 200; under the terrain's least height that one counts
   * @return m, not under the terrain's least
   * @throws Impossible outside
   */
  public static double heightUsed(Terrain terrain, double height) {
    Impossible.ifNegative("height above ground", height);
    if (!VALID.holds(height)) {
      throw new Impossible("height above ground", "the wind profile ends at 200 m");
    }
    return Math.max(height, terrain.leastHeight());
  }

  /**
   * Roughness factor cr: mean wind there over that of open country at 10 m.
   *
   * @param terrain the ground around
   * @param height above the ground, m, 0 to 200; under the terrain's least height that one counts
   * @return -
   * @throws Impossible outside
   */
  public static double roughnessFactor(Terrain terrain, double height) {
    return terrainFactor(terrain) * logarithm(terrain, height);
  }

  /**
   * Turbulence intensity Iv.
   *
   * @param terrain the ground around
   * @param height above the ground, m, 0 to 200; under the terrain's least height that one counts
   * @return -
   * @throws Impossible outside
   */
  public static double turbulence(Terrain terrain, double height) {
    return 1 / logarithm(terrain, height);
  }

  /**
   * Gust over mean at the same place.
   *
   * @param terrain the ground around
   * @param height above the ground, m, 0 to 200; under the terrain's least height that one counts
   * @return -
   * @throws Impossible outside
   */
  public static double gustFactor(Terrain terrain, double height) {
    return Math.sqrt(1 + PEAK * turbulence(terrain, height));
  }

  private static double logarithm(Terrain terrain, double height) {
    return Math.log(heightUsed(terrain, height) / terrain.roughnessLength());
  }
}

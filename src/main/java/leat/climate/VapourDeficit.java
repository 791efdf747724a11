package leat.climate;

import leat.numeric.Impossible;

/**
 * Vapour pressure deficit of the air, and at a leaf of another temperature.
 *
 * <pre>e0(T)(1 - RH/100);  at the leaf e0(Tleaf) - e0(T) RH/100, below 0 when dew falls on it</pre>
 *
 * <p>Source: FAO-56 equation 11; guidance below 0.2 and above 1.4 kPa from a study of tunnels
 * (Konopacki and others, Spanish Journal of Agricultural Research, abstract); sheet season.md
 * section 7, check values season-vpd.csv.
 */
public final class VapourDeficit {
  /** Under this air is damp, kPa (tunnel study). */
  public static final double DAMP_KPA = 0.2;

  /** Above this air is dry, kPa (tunnel study). */
  public static final double DRY_KPA = 1.4;

  private VapourDeficit() {}

  /**
   * Of the air.
   *
   * @param celsius air temperature, C
   * @param rhPct relative humidity, %
   * @return kPa
   * @throws Impossible if the humidity lies outside 0 to 100 %
   */
  public static double airKPa(double celsius, double rhPct) {
    return SaturationVapour.kPa(celsius) * (1 - Accepted.percent("humidity", rhPct) / 100);
  }

  /**
   * At a leaf.
   *
   * @param celsius air temperature, C
   * @param rhPct relative humidity, %
   * @param leafCelsius temperature of the leaf, C
   * @return kPa
   * @throws Impossible if the humidity lies outside 0 to 100 %
   */
  public static double leafKPa(double celsius, double rhPct, double leafCelsius) {
    return SaturationVapour.kPa(leafCelsius)
        - SaturationVapour.kPa(celsius) * Accepted.percent("humidity", rhPct) / 100;
  }

  /**
   * In a word: damp, good or dry.
   *
   * @param kPa vapour pressure deficit, kPa
   */
  public static String word(double kPa) {
    if (kPa < DAMP_KPA) {
      return "damp";
    }
    return kPa > DRY_KPA ? "dry" : "good";
  }
}

package leat.climate;

/**
 * What a vapour pressure deficit means for plants.
 *
 * <p>Source: guidance below 0.2 and above 1.4 kPa from a study of tunnels (Konopacki and others,
 * Spanish Journal of Agricultural Research, abstract); sheet season.md section 7.
 */
public final class VapourDeficit {
  /** Under this air is damp, kPa (tunnel study). */
  public static final double DAMP_KPA = 0.2;

  /** Above this air is dry, kPa (tunnel study). */
  public static final double DRY_KPA = 1.4;

  private VapourDeficit() {}

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

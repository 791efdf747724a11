package leat.climate;

/**
 * Radiation that stays with the plants: short waves taken in less long waves sent out.
 *
 * <pre>Rns = 0.77 Rs
 * Rnl = 4.903E-9 (TmaxK^4 + TminK^4)/2 (0.34 - 0.14 sqrt ea)(1.35 min(Rs/Rso, 1) - 0.35)</pre>
 *
 * <p>In polar night Rs/Rso is 0/0; {@link #WITHOUT_SUN} stands in (common practice, no source).
 *
 * <p>Source: FAO-56 equations 38, 39, 40; sheet season.md section 1, check values season-fao56.csv.
 */
public final class NetRadiation {
  /** Share of short waves that the reference grass throws back, -. */
  public static final double ALBEDO = 0.23;

  /** Rs/Rso of a day without any sun, - (common practice, no source). */
  public static final double WITHOUT_SUN = 0.5;

  /** Stefan and Boltzmann, MJ/K4 m2 d. */
  private static final double STEFAN_BOLTZMANN = 4.903e-9;

  /** Kelvin at 0 C as FAO-56 rounds it. */
  private static final double ZERO_K = 273.16;

  private NetRadiation() {}

  /**
   * Short waves taken in.
   *
   * @param rsMjM2 radiation on the ground, MJ/m2 a day
   * @return MJ/m2 a day
   */
  public static double shortMjM2(double rsMjM2) {
    return (1 - ALBEDO) * rsMjM2;
  }

  /**
   * Long waves sent out.
   *
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param eaKPa actual vapour pressure, kPa
   * @param rsMjM2 radiation on the ground, MJ/m2 a day
   * @param clearMjM2 radiation of a clear sky, MJ/m2 a day
   * @return MJ/m2 a day
   */
  public static double longMjM2(
      double tminCelsius, double tmaxCelsius, double eaKPa, double rsMjM2, double clearMjM2) {
    double clearness = clearMjM2 > 0 ? Math.min(1, rsMjM2 / clearMjM2) : WITHOUT_SUN;
    return STEFAN_BOLTZMANN
        * (fourth(tmaxCelsius) + fourth(tminCelsius))
        / 2
        * (0.34 - 0.14 * Math.sqrt(eaKPa))
        * (1.35 * clearness - 0.35);
  }

  /**
   * What stays.
   *
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param eaKPa actual vapour pressure, kPa
   * @param rsMjM2 radiation on the ground, MJ/m2 a day
   * @param clearMjM2 radiation of a clear sky, MJ/m2 a day
   * @return MJ/m2 a day
   */
  public static double mjM2(
      double tminCelsius, double tmaxCelsius, double eaKPa, double rsMjM2, double clearMjM2) {
    return shortMjM2(rsMjM2) - longMjM2(tminCelsius, tmaxCelsius, eaKPa, rsMjM2, clearMjM2);
  }

  private static double fourth(double celsius) {
    double k = celsius + ZERO_K;
    return k * k * k * k;
  }
}

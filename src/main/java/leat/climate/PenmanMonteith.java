package leat.climate;

/**
 * Reference evapotranspiration of a short grass from radiation, humidity and wind.
 *
 * <pre>
 * ET0 = (0.408 Delta (Rn - G) + gamma 900/(T + 273) u2 (es - ea))/(Delta + gamma (1 + 0.34 u2))
 * </pre>
 *
 * <p>May come out below 0 on a cold still night; {@link ReferenceDay} holds it at 0, since dew is
 * no thirst.
 *
 * <p>Source: FAO-56 equation 6; sheet season.md section 1, check values season-fao56.csv (examples
 * 17, 18 and 20 of the book).
 */
public final class PenmanMonteith {
  /** Water evaporated by a MJ, mm m2/MJ: 1 over the latent heat 2.45. */
  static final double MM_PER_MJ = 0.408;

  private static final double NUMERATOR = 900;
  private static final double ZERO_K = 273;
  private static final double DENOMINATOR = 0.34;

  private PenmanMonteith() {}

  /**
   * The evapotranspiration.
   *
   * @param meanCelsius mean temperature (Tmax + Tmin)/2, C
   * @param netMjM2 net radiation, MJ/m2 a day
   * @param soilMjM2 heat into the soil, MJ/m2 a day
   * @param windMs wind at 2 m, m/s
   * @param esKPa mean saturation vapour pressure, kPa
   * @param eaKPa actual vapour pressure, kPa
   * @param gammaKPaPerC psychrometric constant, kPa/C
   * @return mm a day
   */
  public static double mmDay(
      double meanCelsius,
      double netMjM2,
      double soilMjM2,
      double windMs,
      double esKPa,
      double eaKPa,
      double gammaKPaPerC) {
    double delta = SaturationVapour.slopeKPaPerC(meanCelsius);
    double sun = MM_PER_MJ * delta * (netMjM2 - soilMjM2);
    double air = gammaKPaPerC * NUMERATOR / (meanCelsius + ZERO_K) * windMs * (esKPa - eaKPa);
    return (sun + air) / (delta + gammaKPaPerC * (1 + DENOMINATOR * windMs));
  }
}

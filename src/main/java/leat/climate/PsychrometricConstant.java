package leat.climate;

import leat.numeric.Impossible;

/**
 * The psychrometric constant, 0.000665 P (the book rounds 0.664742e-3 so).
 *
 * <p>Source: FAO-56 equation 8; sheet season.md section 1, check values season-fao56.csv.
 */
public final class PsychrometricConstant {
  /** Share of the pressure, 1/C. */
  private static final double PER_C = 0.000665;

  private PsychrometricConstant() {}

  /**
   * The constant at a pressure.
   *
   * @param pressureKPa air pressure, kPa, above 0
   * @return kPa/C
   * @throws Impossible if the pressure is not above 0
   */
  public static double kPaPerC(double pressureKPa) {
    return PER_C * Impossible.unlessPositive("pressure", pressureKPa);
  }
}

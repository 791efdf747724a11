package leat.solution.conductivity;

/**
 * Conductivity computed from ions by {@link IonConductivity}.
 *
 * <p>Source: see there.
 *
 * @param ec25 EC at 25 C, mS/cm
 * @param ecWithoutPairs the same if sulfate did not pair with the metals, mS/cm
 * @param ecLimit sum of limiting conductivities, without any interaction, mS/cm
 * @param ecSquareRule by the rule of water laboratories, for natural waters only, mS/cm
 * @param ionicStrength ionic strength of all ions as given, mol/L
 * @param freeIonicStrength ionic strength of the ions left free by pairing, mol/L
 * @param freeSulfate sulfate left free by pairing, mmol/L
 * @param inRange whether the ionic strength lies within {@link IonConductivity#VALID}
 */
public record IonEc(
    double ec25,
    double ecWithoutPairs,
    double ecLimit,
    double ecSquareRule,
    double ionicStrength,
    double freeIonicStrength,
    double freeSulfate,
    boolean inRange) {

  /** Stated error for salts in pure water, per cent. */
  public static final double ERROR_PCT = 5;

  /** Stated error when tap water with its own analysis is in it, per cent. */
  public static final double ERROR_WITH_TAP_WATER_PCT = 8;

  /** The stated error, per cent, with or without tap water in it. */
  public static double errorPct(boolean tapWater) {
    return tapWater ? ERROR_WITH_TAP_WATER_PCT : ERROR_PCT;
  }

  /** Ionic strength, mmol/L. */
  public double strengthMmolL() {
    return 1000 * ionicStrength;
  }

  /** Lower end of the stated error, mS/cm. */
  public double low(boolean tapWater) {
    return ec25 * (1 - errorPct(tapWater) / 100);
  }

  /** Upper end of the stated error, mS/cm. */
  public double high(boolean tapWater) {
    return ec25 * (1 + errorPct(tapWater) / 100);
  }

  /**
   * What a meter without compensation shows at another temperature.
   *
   * @param celsius temperature of the solution, C
   * @param by temperature function
   * @return raw reading, mS/cm
   */
  public double rawAt(double celsius, Compensation by) {
    return by.rawAt(ec25, celsius);
  }
}

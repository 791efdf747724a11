package leat.solution.pitzer;

/**
 * What two ions of like sign and unlike charge do to each other beyond theta: E and its derivative
 * by ionic strength. Of one and two charges only; the same for cations and anions.
 *
 * <pre>
 * E  = (zi zj/4I) (J(xij) - J(xii)/2 - J(xjj)/2),   xij = 6 zi zj A sqrt(I)
 * E' = -E/I + (zi zj/8I^2) (xij J'(xij) - xii J'(xii)/2 - xjj J'(xjj)/2)
 * J  = x/(4 + 4.581 x^-0.7237 exp(-0.0120 x^0.528))
 * </pre>
 *
 * <p>J is within 1.1 % of the integral it stands for, 0.006 of an index.
 *
 * <p>Source: K. S. Pitzer, J. Solution Chem. 4 (1975) 249, equation 47, as in pytzer. Check values:
 * solution-mixed.csv.
 */
final class UnlikeCharges {
  private static final double FACTOR = 4.581; // -
  private static final double POWER = -0.7237; // -
  private static final double DECAY = 0.0120; // -
  private static final double DECAY_POWER = 0.528; // -

  /** E, kg/mol. */
  final double e;

  /** Its derivative by ionic strength, (kg/mol)2. */
  final double slope;

  /**
   * @param a the Debye-Hueckel slope, (kg/mol)^0.5
   * @param strength ionic strength, mol/kg, above 0
   */
  UnlikeCharges(double a, double strength) {
    double x11 = 6 * a * Math.sqrt(strength);
    double x12 = 2 * x11;
    double x22 = 4 * x11;
    e = 2 / (4 * strength) * (j(x12) - j(x11) / 2 - j(x22) / 2);
    double slopes = x12 * jSlope(x12) - x11 * jSlope(x11) / 2 - x22 * jSlope(x22) / 2;
    slope = -e / strength + 2 / (8 * strength * strength) * slopes;
  }

  private static double tail(double x) {
    return FACTOR * Math.pow(x, POWER) * Math.exp(-DECAY * Math.pow(x, DECAY_POWER));
  }

  /** J of x, both without a unit. */
  static double j(double x) {
    return x / (4 + tail(x));
  }

  private static double jSlope(double x) {
    double tail = tail(x);
    double turn = tail * (POWER - DECAY * DECAY_POWER * Math.pow(x, DECAY_POWER));
    return (4 + tail - turn) / ((4 + tail) * (4 + tail));
  }
}

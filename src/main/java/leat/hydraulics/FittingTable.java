package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Loss coefficients by a table of one size: a rounded entrance by its radius, straight between the
 * points; a plug cock by its angle, straight on log K between 5, 10, 20, 40, 60 degrees closed.
 *
 * <p>Source: Crane TP-410 A-29 (entrance); Perry's Chemical Engineers' Handbook, by the provenance
 * of the sheet (plug cock). Check values: hydraulics-fittings.csv.
 */
public final class FittingTable {
  /** Angles of the plug cock's table. */
  public static final Validity COCK_ANGLES = Validity.of("angle, degrees", 5, 60);

  private static final double[] COCK_DEGREES = {5, 10, 20, 40, 60};
  private static final double[] COCK_K = {0.05, 0.29, 1.56, 17.3, 206};

  /** Crane TP-410 A-29: radius over bore, and K. */
  private static final double[] ROUNDING = {0.02, 0.04, 0.06, 0.10, 0.15};

  private static final double[] ROUNDED_K = {0.28, 0.24, 0.15, 0.09, 0.04};

  private FittingTable() {}

  /**
   * Plug cock by its angle. A guess: a named flow is none.
   *
   * @param degreesClosed degrees, 5 to 60
   * @return K, -
   * @throws Impossible outside
   */
  public static double plugCock(double degreesClosed) {
    Impossible.unlessWithin(
        "angle", degreesClosed, 5, 60, "the table of the plug cock runs from 5 to 60 degrees");
    int i = 1;
    while (degreesClosed > COCK_DEGREES[i]) {
      i++;
    }
    if (degreesClosed == COCK_DEGREES[i]) {
      return COCK_K[i];
    }
    double share = (degreesClosed - COCK_DEGREES[i - 1]) / (COCK_DEGREES[i] - COCK_DEGREES[i - 1]);
    return COCK_K[i - 1] * Math.pow(COCK_K[i] / COCK_K[i - 1], share);
  }

  /**
   * Rounded entrance, straight between the points of Crane's table; from 0.15 on it stays at 0.04.
   *
   * @param radiusOverBore of the rounding, -, 0.02 to 1
   * @return K, -
   * @throws Impossible outside
   */
  public static double entranceRounded(double radiusOverBore) {
    Impossible.unlessWithin(
        "radius", radiusOverBore, 0.02, 1, "the table of rounded entrances starts at r/D 0.02");
    for (int i = 1; i < ROUNDING.length; i++) {
      if (radiusOverBore <= ROUNDING[i]) {
        double share = (radiusOverBore - ROUNDING[i - 1]) / (ROUNDING[i] - ROUNDING[i - 1]);
        return ROUNDED_K[i - 1] + share * (ROUNDED_K[i] - ROUNDED_K[i - 1]);
      }
    }
    return ROUNDED_K[ROUNDED_K.length - 1];
  }
}

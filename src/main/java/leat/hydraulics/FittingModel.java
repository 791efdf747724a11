package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Loss coefficients that depend on size and Reynolds number.
 *
 * <pre>
 * Crane   K = N fT
 * Hooper  K = K1/Re + Kinf (1 + 25.4/D_mm)
 * Darby   K = K1/Re + Ki (1 + Kd/D_in^0.3)
 * plug cock by angle: straight on log K between 5, 10, 20, 40, 60 degrees closed
 * </pre>
 *
 * <p>Source: Crane TP-410; W. B. Hooper, Chem. Eng. 88 (1981) 96; R. Darby (P. Silverberg and R.
 * Darby, Chem. Eng. 1999); plug cock: Perry's Chemical Engineers' Handbook, by the provenance of
 * the sheet. Check values: hydraulics-fittings.csv.
 */
public final class FittingModel {
  /** Crane's fully turbulent friction factor of 1/2 in pipe, -. */
  public static final double CRANE_HALF_INCH = 0.027;

  /** Angles of the plug cock's table. */
  public static final Validity COCK_ANGLES = Validity.of("angle, degrees", 5, 60);

  private static final double[] COCK_DEGREES = {5, 10, 20, 40, 60};
  private static final double[] COCK_K = {0.05, 0.29, 1.56, 17.3, 206};

  /** Crane TP-410 A-29: radius over bore, and K. */
  private static final double[] ROUNDING = {0.02, 0.04, 0.06, 0.10, 0.15};

  private static final double[] ROUNDED_K = {0.28, 0.24, 0.15, 0.09, 0.04};
  private static final double INCH = 0.0254;

  private FittingModel() {}

  /**
   * Crane's K = N fT.
   *
   * @param lengthOverBore equivalent length N, -, 0 or more
   * @param turbulentFactor fT, -; {@link #CRANE_HALF_INCH} for 1/2 in
   * @return K, -
   * @throws Impossible if negative
   */
  public static double crane(double lengthOverBore, double turbulentFactor) {
    Impossible.ifNegative("k", lengthOverBore);
    return lengthOverBore * Impossible.ifNegative("k", turbulentFactor);
  }

  /**
   * Hooper's 2-K method.
   *
   * @param k1 laminar constant, -
   * @param kInfinity turbulent constant, -
   * @param bore m, above 0
   * @param re Reynolds number, -, above 0
   * @return K, -
   * @throws Impossible unless bore and Re are above 0
   */
  public static double hooper(double k1, double kInfinity, double bore, double re) {
    accept(bore, re);
    return k1 / re + kInfinity * (1 + INCH / bore);
  }

  /**
   * Darby's 3-K method.
   *
   * @param k1 laminar constant, -
   * @param ki turbulent constant, -
   * @param kd size constant, in^0.3
   * @param bore m, above 0
   * @param re Reynolds number, -, above 0
   * @return K, -
   * @throws Impossible unless bore and Re are above 0
   */
  public static double darby(double k1, double ki, double kd, double bore, double re) {
    accept(bore, re);
    return k1 / re + ki * (1 + kd / Math.pow(bore / INCH, 0.3));
  }

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

  private static void accept(double bore, double re) {
    Impossible.unlessWithin("bore", bore, 1e-4, 2, "a pipe's bore is between 0.1 mm and 2 m");
    Impossible.unlessWithin("Reynolds number", re, 1e-9, 1e30, "it must be above 0");
  }
}

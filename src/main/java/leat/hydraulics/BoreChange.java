package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Loss where the bore changes, on the velocity in the smaller bore unless said otherwise; b is the
 * smaller over the larger bore.
 *
 * <pre>
 * contraction  0.5 (1 - b^2)   (Crane)
 * expansion    (1 - b^2)^2   (Borda and Carnot)
 * reducer, diffuser to 45 degrees   0.8 sin(a/2) (1 - b^2);   2.6 sin(a/2) (1 - b^2)^2
 * hose barb    (0.5 (1 - b^2) + (1 - b^2)^2)/b^4, on the hose's bore (a model, not measured)
 * </pre>
 *
 * <p>Source: Crane TP-410; newer tests of contractions lie up to 40 % above it (Rennels and Hudson,
 * Pipe Flow, 2012). Check values: hydraulics-fittings.csv.
 */
public final class BoreChange {
  private BoreChange() {}

  /**
   * Sudden contraction after Crane.
   *
   * @param wide bore, m
   * @param narrow bore, m
   * @return K on the narrow bore, -
   * @throws Impossible unless 0 &lt; narrow &lt;= wide
   */
  public static double contraction(double wide, double narrow) {
    return 0.5 * (1 - square(ratio(wide, narrow)));
  }

  /**
   * Sudden expansion.
   *
   * @param narrow bore, m
   * @param wide bore, m
   * @return K on the narrow bore, -
   * @throws Impossible unless 0 &lt; narrow &lt;= wide
   */
  public static double expansion(double narrow, double wide) {
    return square(1 - square(ratio(wide, narrow)));
  }

  /**
   * Conical reducer.
   *
   * @param wide bore, m
   * @param narrow bore, m
   * @param degrees whole angle of the cone, degrees, above 0 to 45
   * @return K on the narrow bore, -
   * @throws Impossible outside
   */
  public static double reducer(double wide, double narrow, double degrees) {
    return 0.8 * sineOfHalf(degrees) * (1 - square(ratio(wide, narrow)));
  }

  /**
   * Conical diffuser.
   *
   * @param narrow bore, m
   * @param wide bore, m
   * @param degrees whole angle of the cone, degrees, above 0 to 45
   * @return K on the narrow bore, -
   * @throws Impossible outside
   */
  public static double diffuser(double narrow, double wide, double degrees) {
    return 2.6 * sineOfHalf(degrees) * expansion(narrow, wide);
  }

  /**
   * Straight hose barb: a contraction into it and an expansion out of it.
   *
   * @param hose inside of the hose, m
   * @param barb inside of the barb, m
   * @return K on the hose's bore, -
   * @throws Impossible unless 0 &lt; barb &lt;= hose
   */
  public static double barb(double hose, double barb) {
    return onOtherBore(contraction(hose, barb) + expansion(barb, hose), barb, hose);
  }

  /**
   * A K moved to another bore that carries the same flow: K2 = K1 (D2/D1)^4.
   *
   * @param k on the first bore, -
   * @param bore first bore, m, above 0
   * @param other second bore, m, above 0
   * @return K on the second bore, -
   * @throws Impossible unless both bores are above 0
   */
  public static double onOtherBore(double k, double bore, double other) {
    double ratio =
        Impossible.unlessPositive("bore", other) / Impossible.unlessPositive("bore", bore);
    return k * square(square(ratio));
  }

  private static double ratio(double wide, double narrow) {
    Impossible.unlessPositive("bore", narrow);
    Impossible.unlessPositive("bore", wide);
    double b = narrow / wide;
    return Impossible.unlessWithin("bore", b, 1e-3, 1, "the narrow bore is not over the wide one");
  }

  private static double sineOfHalf(double degrees) {
    Impossible.unlessWithin("angle", degrees, 0, 45, "the cone formulas hold up to 45 degrees");
    return Math.sin(Math.toRadians(degrees) / 2);
  }

  private static double square(double x) {
    return x * x;
  }
}

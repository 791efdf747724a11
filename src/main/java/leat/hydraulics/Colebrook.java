package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Darcy friction factor of a full round pipe in turbulent flow, the implicit formula solved to the
 * last digits.
 *
 * <pre>1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re sqrt(f)))</pre>
 *
 * <p>Halley's steps on x = 1/sqrt(f): one logarithm each, three from a fixed start, one or two from
 * the root at a flow close by. The Darcy factor is four times the Fanning factor. Range: {@link
 * #VALID}; measured pipes scatter by 5 % (smooth) to 10 % (rough) about it.
 *
 * <p>Source: C. F. Colebrook, J. Inst. Civil Eng. 11 (1939) 133, doi:10.1680/ijoti.1939.13150.
 * Check values: hydraulics-friction.csv.
 */
public final class Colebrook {
  /** Where the formula is used as it stands. */
  public static final Validity VALID = Validity.of("Re", 4000, 1e8).and("e/D", 0, 0.05);

  /** Relative roughness of a hydraulically rough pipe at which its log term is 0, -. */
  private static final double ROUGH = 3.7;

  /** Coefficient of the smooth term, -. */
  private static final double SMOOTH = 2.51;

  /** 1/sqrt(f) where nothing is known yet, -: a smooth tube at Re 15 000 (computed). */
  static final double START = 6;

  /** 2 log10(y) = PER_LN ln(y). */
  private static final double PER_LN = 2 / Math.log(10);

  /** A step of Halley's this small, relative, leaves an error of a hundredth of its cube. */
  private static final double LAST_STEP = 1e-5;

  private Colebrook() {}

  /**
   * Friction factor.
   *
   * @param re Reynolds number, -, from 2000 (below, the formula has no meaning)
   * @param relRoughness roughness over bore e/D, -, 0 to 0.05
   * @return Darcy friction factor, -
   * @throws Impossible for e/D outside 0 to 0.05 or Re below 2000
   */
  public static double frictionFactor(double re, double relRoughness) {
    Impossible.unlessWithin(
        "Reynolds number", re, Regime.LAMINAR_TO, 1e30, "Colebrook needs turbulent flow");
    FrictionFactor.acceptRoughness(relRoughness);
    double x = inverseRoot(re, relRoughness);
    return 1 / (x * x);
  }

  /** 1/sqrt(f), -, without checks. */
  static double inverseRoot(double re, double relRoughness) {
    return inverseRoot(re, relRoughness, START);
  }

  /** The same from {@code near}, the root at another Re, -. */
  static double inverseRoot(double re, double relRoughness, double near) {
    double a = relRoughness / ROUGH;
    double b = SMOOTH / re;
    double x = near;
    for (int i = 0; i < 20; i++) {
      double inside = a + b * x;
      double off = x + PER_LN * Math.log(inside);
      double perInside = b / inside;
      double slope = 1 + PER_LN * perInside;
      double step = off * slope / (slope * slope + 0.5 * off * PER_LN * perInside * perInside);
      x -= step;
      if (Math.abs(step) <= LAST_STEP * x) {
        break;
      }
    }
    return x;
  }

  /** d(ln f)/d(ln Re), -, between -0.25 or so (smooth) and 0 (rough); x is 1/sqrt(f) there. */
  static double logSlope(double re, double relRoughness, double x) {
    double b = SMOOTH / re;
    return -2 * PER_LN * b / (relRoughness / ROUGH + b * x + PER_LN * b);
  }
}

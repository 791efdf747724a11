package leat.hydraulics;

/**
 * Darcy friction factor by one formula for all regimes, the second model beside {@link
 * FrictionFactor}.
 *
 * <pre>
 * f = 8 ((8/Re)^12 + (A + B)^-1.5)^(1/12)
 * A = (2.457 ln(1/((7/Re)^0.9 + 0.27 e/D)))^16,   B = (37530/Re)^16
 * </pre>
 *
 * <p>Against the blend: within 0.14 % below Re 2000, up to 20 % near Re 3000, 3.1 % at most above
 * 4000.
 *
 * <p>Source: S. W. Churchill, Chem. Eng. 84 (1977) 91. Check values: hydraulics-friction.csv.
 */
public final class Churchill {
  private Churchill() {}

  /** The formula, -, without checks; below Re 100 the turbulent part is under 1E-12 of it. */
  static double factor(double re, double relRoughness) {
    if (re < 100) {
      return FrictionFactor.LAMINAR / re;
    }
    double log = -Math.log(Math.pow(7 / re, 0.9) + 0.27 * relRoughness);
    double a = Math.pow(2.457 * log, 16);
    double b = Math.pow(37530 / re, 16);
    return 8 * Math.pow(Math.pow(8 / re, 12) + Math.pow(a + b, -1.5), 1.0 / 12);
  }
}

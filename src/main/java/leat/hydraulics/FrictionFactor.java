package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Darcy friction factor in every regime: 64/Re to Re 2000, Colebrook from 4000, and between them
 * the straight line in Re from 64/2000 to Colebrook at 4000, so that lost head rises without a
 * jump.
 *
 * <pre>f = 0.032 + (Re - 2000)/2000 (f_C(4000, e/D) - 0.032)   for 2000 &lt; Re &lt; 4000</pre>
 *
 * <p>The line between the two fixed ends is this program's own choice; between 2000 and 4000 nobody
 * knows f better than to a fifth.
 *
 * <p>Source: Hagen and Poiseuille (laminar); {@link Colebrook}. Check values:
 * hydraulics-friction.csv, column f_blend_2000_4000.
 */
public final class FrictionFactor {
  /** Where the factor is used; between Re 2000 and 4000 it is uncertain by a fifth. */
  public static final Validity VALID = Validity.of("Re", 0, 1e8).and("e/D", 0, 0.05);

  /** f Re of laminar flow, -. */
  static final double LAMINAR = 64;

  private FrictionFactor() {}

  /**
   * Friction factor in any regime.
   *
   * @param re Reynolds number, -, above 0
   * @param relRoughness roughness over bore e/D, -, 0 to 0.05
   * @return Darcy friction factor, -
   * @throws Impossible for Re not above 0 or e/D outside 0 to 0.05
   */
  public static double of(double re, double relRoughness) {
    Impossible.unlessWithin("Reynolds number", re, 1e-12, 1e30, "friction needs a flow above 0");
    acceptRoughness(relRoughness);
    if (re <= Regime.LAMINAR_TO) {
      return LAMINAR / re;
    }
    if (re < Regime.TURBULENT_FROM) {
      return blend(re, Colebrook.frictionFactor(Regime.TURBULENT_FROM, relRoughness));
    }
    return Colebrook.frictionFactor(re, relRoughness);
  }

  /** Between the ends, -; {@code atTurbulent} is Colebrook at Re 4000. */
  static double blend(double re, double atTurbulent) {
    return LAMINAR / Regime.LAMINAR_TO + (re - Regime.LAMINAR_TO) * blendSlope(atTurbulent);
  }

  /** df/dRe of the line between the ends, -. */
  static double blendSlope(double atTurbulent) {
    double atLaminar = LAMINAR / Regime.LAMINAR_TO;
    return (atTurbulent - atLaminar) / (Regime.TURBULENT_FROM - Regime.LAMINAR_TO);
  }

  static double acceptRoughness(double relRoughness) {
    return Impossible.unlessWithin(
        "roughness",
        relRoughness,
        0,
        0.05,
        "roughness is between 0 and a twentieth of the bore; no formula holds beyond");
  }
}

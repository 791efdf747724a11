package leat.solution.conductivity;

import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;
import leat.numeric.Validity;
import leat.solution.Ion;
import leat.solution.Ions;

/**
 * Conductivity of a solution from its ions, with pairs of sulfate and metals.
 *
 * <pre>
 * c_i mol/L free, z_i charge, L_i limiting molar conductivity, I = 0.5 sum c z^2 of the free ions
 * d = sqrt I/(1 + sqrt I) - 0.3 I            log10 gamma_i = -0.509 z_i^2 d          (Davies)
 * alpha_i = 0.6/sqrt|z_i| if I &lt; 0.36 |z_i|, else sqrt I/|z_i|
 * EC25 [uS/cm] = 1000 sum c_i L_i gamma_i^alpha_i
 * MSO4(aq), M = Ca Mg Mn Fe Zn Cu, carries nothing: m = K' [M][SO4], log10 K' = log K - 8 0.509 d
 * </pre>
 *
 * <p>Error against published single salts: -1 to +1.3 % to I = 0.03 and -1.1 to +2.0 % to I = 0.1
 * for 1:1 and 2:1 salts; to -4.5 % for zinc and copper sulfate at 5 mmol/L. For mixtures plus or
 * minus 5 %, and 8 % with tap water in them ({@link IonEc#errorPct}). Range: {@link #VALID}.
 *
 * <p>Source: C. A. J. Appelo, "Specific conductance" (2010), the method of a public geochemical
 * code, with Davies activity coefficients in place of that code's. Square rule: Standard Methods
 * 2510, from memory. Check values: sheet solution-ec-ions.csv.
 */
public final class IonConductivity {
  /** Range of the stated error. */
  public static final Validity VALID = Validity.of("ionic strength, mol/L", 0, 0.1);

  /** Beyond this, mol/L, Davies' activity coefficients fail and no figure is given. */
  public static final double LARGEST_IONIC_STRENGTH = 0.5;

  private static final double DEBYE_HUECKEL = 0.509; // (kg/mol)^0.5, water at 25 C
  private static final double DAVIES = 0.3; // kg/mol, Davies 1962
  private static final double PAIR_CHARGES = 8; // sum of z^2 of M(2+) and SO4(2-)
  private static final double ALPHA = 0.6; // Appelo 2010
  private static final double ALPHA_BREAK = 0.36; // mol/L, the square of it
  private static final double SQUARE_RULE = 0.5; // Standard Methods 2510
  private static final double MOL = 1e-3; // mol per mmol

  private IonConductivity() {}

  /**
   * EC at 25 C.
   *
   * @param ions concentrations, mmol/L, pairs not taken out
   * @throws Impossible beyond an ionic strength of 0.5 mol/L
   */
  public static IonEc of(Ions ions) {
    double strength = ionicStrength(ions);
    if (strength > LARGEST_IONIC_STRENGTH) {
      throw new Impossible(
          "ions", "this is a stock bottle, too strong for the sum: it holds to 0.5 mol/L");
    }
    double limit = conductivity(ions, 0);
    Ions free = free(ions, strength);
    double freeStrength = ionicStrength(free);
    double y = Math.pow(10, -SQUARE_RULE * davies(strength));
    return new IonEc(
        conductivity(free, freeStrength),
        conductivity(ions, strength),
        limit,
        limit * y * y,
        strength,
        freeStrength,
        free.of(Ion.SO4),
        VALID.holds(strength));
  }

  /**
   * Ionic strength of the ions as given.
   *
   * @param ions concentrations, mmol/L
   * @return mol/L
   */
  public static double ionicStrength(Ions ions) {
    double sum = 0;
    for (int i = 0; i < Ion.count(); i++) {
      int z = Ion.at(i).charge();
      sum += ions.of(Ion.at(i)) * z * z;
    }
    return MOL * sum / 2;
  }

  private static double davies(double strength) {
    double root = Math.sqrt(strength);
    return root / (1 + root) - DAVIES * strength;
  }

  /** mS/cm; strength in mol/L, 0 for limiting conductivities. */
  private static double conductivity(Ions ions, double strength) {
    double d = davies(strength);
    double sum = 0;
    for (int i = 0; i < Ion.count(); i++) {
      Ion ion = Ion.at(i);
      int z = Math.abs(ion.charge());
      double alpha = strength < ALPHA_BREAK * z ? ALPHA / Math.sqrt(z) : Math.sqrt(strength) / z;
      double log10Gamma = -DEBYE_HUECKEL * z * z * d;
      sum += ions.of(ion) * ion.molarConductivity() * Math.pow(10, alpha * log10Gamma);
    }
    return MOL * sum;
  }

  /** The ions that pairing leaves free: a strength that reproduces itself, bracketed. */
  private static Ions free(Ions ions, double strength) {
    double settled =
        Roots.bracketed(
            new DoubleUnaryOperator() {
              @Override
              public double applyAsDouble(double tried) {
                return ionicStrength(freeAt(ions, tried)) - tried;
              }
            },
            0,
            strength);
    return freeAt(ions, settled);
  }

  private static Ions freeAt(Ions ions, double strength) {
    double shift = PAIR_CHARGES * DEBYE_HUECKEL * davies(strength);
    double total = ions.of(Ion.SO4);
    double sulfate =
        Roots.bracketed(
            new DoubleUnaryOperator() {
              @Override
              public double applyAsDouble(double s) {
                return s * (1 + bound(ions, s, shift)) - total;
              }
            },
            0,
            total);
    Ions free = Ions.NONE;
    for (int i = 0; i < Ion.count(); i++) {
      Ion ion = Ion.at(i);
      double c = ion == Ion.SO4 ? sulfate : ions.of(ion);
      free = free.and(ion, ion.pairsWithSulfate() ? c / (1 + pairing(ion, shift) * sulfate) : c);
    }
    return free;
  }

  /** Sulfate bound per free sulfate, -. */
  private static double bound(Ions ions, double sulfate, double shift) {
    double sum = 0;
    for (int i = 0; i < Ion.count(); i++) {
      Ion ion = Ion.at(i);
      if (ion.pairsWithSulfate()) {
        double k = pairing(ion, shift);
        sum += k * ions.of(ion) / (1 + k * sulfate);
      }
    }
    return sum;
  }

  /** Conditional association constant, L/mmol. */
  private static double pairing(Ion ion, double shift) {
    return MOL * Math.pow(10, ion.log10Pairing() - shift);
  }
}

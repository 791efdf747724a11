package leat.solution.stock;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * Whether gypsum or brushite would settle out of a mix: ionic strength, activities by Davies, and
 * saturation indices, salts fully dissociated.
 *
 * <pre>
 * log10 gamma = -0.509 z^2 (sqrt I/(1 + sqrt I) - 0.3 I)          I = 0.5 sum c z^2
 * [HPO4]/[H2PO4] = 10^(pH - 7.20) gamma1/gamma2
 * SI gypsum   = log10([Ca][SO4] gamma2^2) + 4.58
 * SI brushite = log10([Ca][HPO4] gamma2^2) + 6.59
 * </pre>
 *
 * At 25 C, water activity 1; gypsum at 5 C differs by 0.02. Ion pairs are left out: they take up to
 * about 0.5 off an index. Davies is good to I about 0.5 mol/L ({@link #VALID}); beyond, as in every
 * real stock bottle, no index is given.
 *
 * <p>Source: C. W. Davies, Ion Association, 1962; solubility constants as in common geochemical
 * databases and Gregory et al. 1970 (from memory). Check values: solution-stock.csv.
 */
public final class Saturation {
  /** Where the Davies equation holds. */
  public static final Validity VALID = Validity.of("I mol/L", 0, 0.5);

  private static final double DAVIES_A = 0.509;
  private static final double DAVIES_B = 0.3;
  private static final double PK2_PHOSPHORIC = 7.20;
  private static final double PK_GYPSUM = 4.58;
  private static final double PK_BRUSHITE = 6.59;
  private static final int HALVINGS = 55;

  private Saturation() {}

  /**
   * A mix. Indices are null where the ion is missing or the ionic strength is past Davies.
   *
   * @param ionicStrengthMolL ionic strength I, mol/L
   * @param daviesHolds whether I is at most 0.5
   * @param gammaDivalent activity coefficient of Ca, SO4 and HPO4, -; null past Davies
   * @param hydrogenPhosphateShare share of the phosphate that is HPO4, -
   * @param gypsum saturation index of gypsum
   * @param brushite saturation index of brushite
   */
  public record Index(
      double ionicStrengthMolL,
      boolean daviesHolds,
      Double gammaDivalent,
      double hydrogenPhosphateShare,
      Double gypsum,
      Double brushite) {
    /** The larger of the two, or null when there is none. */
    public Double worst() {
      if (gypsum == null || brushite != null && brushite > gypsum) {
        return brushite;
      }
      return gypsum;
    }
  }

  /**
   * The indices of a mix.
   *
   * @param calcium mmol/L
   * @param sulfate mmol/L
   * @param phosphate all phosphate, mmol/L
   * @param othersZ2 sum over the other ions of c z^2, mmol/L
   * @param ph pH, -
   * @return the indices
   * @throws Impossible if an amount is negative or the pH outside 0 to 14
   */
  public static Index of(
      double calcium, double sulfate, double phosphate, double othersZ2, double ph) {
    Impossible.ifNegative(
        "salt", Math.min(Math.min(calcium, sulfate), Math.min(phosphate, othersZ2)));
    Impossible.ifNegative("salt", calcium + sulfate + phosphate + othersZ2);
    Impossible.unlessWithin("ph", ph, 0, 14, "a pH lies between 0 and 14");
    double fixed = 0.0005 * (4 * calcium + 4 * sulfate + othersZ2);
    double strength = settle(fixed, 0.001 * phosphate, ph);
    double share = hydrogenPhosphate(strength, ph);
    if (!VALID.holds(strength)) {
      return new Index(strength, false, null, share, null, null);
    }
    double log2 = logGamma(strength, 2);
    return new Index(
        strength,
        true,
        Math.pow(10, log2),
        share,
        index(calcium, sulfate, log2, PK_GYPSUM),
        index(calcium, phosphate * share, log2, PK_BRUSHITE));
  }

  private static Double index(double calcium, double anion, double log2, double pk) {
    if (calcium <= 0 || anion <= 0) {
      return null;
    }
    return Math.log10(0.001 * calcium) + Math.log10(0.001 * anion) + 2 * log2 + pk;
  }

  /** Ionic strength consistent with the phosphate split it causes, at most that of all as HPO4. */
  private static double settle(double fixed, double phosphate, double ph) {
    double low = fixed;
    double high = fixed + 2 * phosphate;
    for (int i = 0; i < HALVINGS; i++) {
      double tried = 0.5 * (low + high);
      if (fixed + 0.5 * phosphate * (1 + 3 * hydrogenPhosphate(tried, ph)) > tried) {
        low = tried;
      } else {
        high = tried;
      }
    }
    return 0.5 * (low + high);
  }

  private static double hydrogenPhosphate(double strength, double ph) {
    double ratio =
        Math.pow(10, ph - PK2_PHOSPHORIC + logGamma(strength, 1) - logGamma(strength, 2));
    return 1 - 1 / (1 + ratio);
  }

  /** log10 of an activity coefficient by Davies, past its range too: only for the split there. */
  private static double logGamma(double strength, int charge) {
    double root = Math.sqrt(strength);
    return -DAVIES_A * charge * charge * (root / (1 + root) - DAVIES_B * strength);
  }
}

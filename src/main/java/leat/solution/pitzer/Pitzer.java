package leat.solution.pitzer;

import static leat.solution.pitzer.Species.CATIONS;
import static leat.solution.pitzer.Species.COUNT;

import leat.numeric.Validity;

/**
 * Activity coefficients of ions and the activity of water in a strong mixed solution: Pitzer's
 * model in the form of Harvie, Moller and Weare, at one temperature.
 *
 * <pre>
 * F = -A (s/(1 + b s) + (2/b) ln(1 + b s)) + sum mc ma B' + sum mi mj Phi'      s = sqrt(I)
 * ln gM = z^2 F + sum ma (2 B + Z C) + sum mc (2 Phi + sum ma psi) + sum ma ma' psi + z sum mc ma C
 * ln aw = -0.0180153 (sum m + 2 (-A I s/(1 + b s) + sum mc ma (Bf + Z C)
 *                                + sum mi mj (Phi + I Phi' + sum mk psi)))
 * </pre>
 *
 * <p>Range: {@link #VALID}. Beyond it the numbers go on, with the doubt that {@link MixedBottle}
 * adds to its band. Where one of two ions is missing, their pair is left out.
 *
 * <p>Source: C. E. Harvie, N. Moller, J. H. Weare, Geochim. Cosmochim. Acta 48 (1984) 723; K. S.
 * Pitzer, J. Phys. Chem. 77 (1973) 268; A by a quadratic of our own, within 0.0002 of the values in
 * ColdChem.dat and 0.3915 of pytzer at 25 C. Check values: solution-mixed.csv.
 */
final class Pitzer {
  /** Where the model was held against measured solubilities. */
  static final Validity VALID = Validity.of("C", 0, 30).and("ionic strength mol/kg", 0, 8);

  private static final double B = 1.2; // (kg/mol)^0.5
  private static final double ALPHA = 2; // (kg/mol)^0.5
  private static final double ALPHA_DIVALENT = 1.4; // (kg/mol)^0.5, both ions of two charges
  private static final double ALPHA_2 = 12; // (kg/mol)^0.5
  private static final double WATER_KG_MOL = 0.0180153; // kg/mol

  private static final double A_0 = 0.37668; // (kg/mol)^0.5
  private static final double A_1 = 4.97e-4; // (kg/mol)^0.5/C
  private static final double A_2 = 3.80e-6; // (kg/mol)^0.5/C2

  private final double a;
  private final Coefficients coefficients;

  /**
   * @param celsius temperature, C
   */
  Pitzer(double celsius) {
    this.a = slope(celsius);
    this.coefficients = new Coefficients(celsius);
  }

  /**
   * The Debye-Hueckel slope of the osmotic coefficient, (kg/mol)^0.5.
   *
   * @param celsius temperature, C
   */
  static double slope(double celsius) {
    return A_0 + A_1 * celsius + A_2 * celsius * celsius;
  }

  /** Half the sum of molality times charge squared, mol/kg. */
  static double ionicStrength(double[] molality) {
    double sum = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += molality[i] * Species.charge(i) * Species.charge(i);
    }
    return sum / 2;
  }

  /**
   * Activities in a solution.
   *
   * @param lnGamma natural logarithm of each ion's activity coefficient on the molal scale; without
   *     meaning for an ion that is not there
   * @param lnWater natural logarithm of the activity of water
   */
  record Activities(double[] lnGamma, double lnWater) {}

  /** Activities at these molalities, mol/kg, in the order of {@link Species}. */
  Activities at(double[] molality) {
    double strength = ionicStrength(molality);
    return strength > 0
        ? new Sums(molality, strength).activities()
        : new Activities(new double[COUNT], 0);
  }

  private static double g(double x) {
    return 2 * (1 - (1 + x) * Math.exp(-x)) / (x * x);
  }

  private static double gSlope(double x) {
    return -2 * (1 - (1 + x + x * x / 2) * Math.exp(-x)) / (x * x);
  }

  /** The sums over pairs and triples of one solution. */
  private final class Sums {
    private final double[] m;
    private final double strength;
    private final double root;
    private final double[] ln = new double[COUNT];
    private double chargeSum;
    private double molalities;
    private double f;
    private double sumC;
    private double osmotic;

    Sums(double[] m, double strength) {
      this.m = m;
      this.strength = strength;
      this.root = Math.sqrt(strength);
      for (int i = 0; i < COUNT; i++) {
        molalities += m[i];
        chargeSum += m[i] * Species.charge(i);
      }
    }

    Activities activities() {
      f = -a * (root / (1 + B * root) + 2 / B * Math.log(1 + B * root));
      osmotic = -a * strength * root / (1 + B * root);
      for (int c = 0; c < CATIONS; c++) {
        for (int x = CATIONS; x < COUNT; x++) {
          if (m[c] > 0 && m[x] > 0) {
            opposite(c, x);
          }
        }
      }
      UnlikeCharges unlike = new UnlikeCharges(a, strength);
      for (int i = 0; i < COUNT; i++) {
        for (int j = i + 1; j < (i < CATIONS ? CATIONS : COUNT); j++) {
          if (m[i] > 0 && m[j] > 0) {
            like(i, j, unlike);
          }
        }
      }
      for (int i = 0; i < COUNT; i++) {
        int z = Species.charge(i);
        ln[i] += z * z * f + z * sumC;
      }
      return new Activities(ln, -WATER_KG_MOL * (molalities + 2 * osmotic));
    }

    private void opposite(int c, int x) {
      boolean divalent = Species.charge(c) == 2 && Species.charge(x) == 2;
      double first = (divalent ? ALPHA_DIVALENT : ALPHA) * root;
      double second = ALPHA_2 * root;
      double b0 = coefficients.b0(c, x);
      double b1 = coefficients.b1(c, x);
      double b2 = coefficients.b2(c, x);
      double both = m[c] * m[x];
      double zC = chargeSum * coefficients.c(c, x);
      double b = b0 + b1 * g(first) + b2 * g(second);
      f += both * (b1 * gSlope(first) + b2 * gSlope(second)) / strength;
      sumC += both * coefficients.c(c, x);
      osmotic += both * (b0 + b1 * Math.exp(-first) + b2 * Math.exp(-second) + zC);
      ln[c] += m[x] * (2 * b + zC);
      ln[x] += m[c] * (2 * b + zC);
    }

    private void like(int i, int j, UnlikeCharges unlike) {
      boolean differ = Species.charge(i) != Species.charge(j);
      double phi = Coefficients.theta(i, j) + (differ ? unlike.e : 0);
      double phiSlope = differ ? unlike.slope : 0;
      double both = m[i] * m[j];
      f += both * phiSlope;
      osmotic += both * (phi + strength * phiSlope);
      ln[i] += 2 * m[j] * phi;
      ln[j] += 2 * m[i] * phi;
      int from = i < CATIONS ? CATIONS : 0;
      int to = i < CATIONS ? COUNT : CATIONS;
      for (int k = from; k < to; k++) {
        double psi = m[k] > 0 ? Coefficients.psi(i, j, k) : 0;
        if (psi != 0) {
          osmotic += both * m[k] * psi;
          ln[i] += m[j] * m[k] * psi;
          ln[j] += m[i] * m[k] * psi;
          ln[k] += both * psi;
        }
      }
    }
  }
}

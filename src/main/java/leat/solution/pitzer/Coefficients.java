package leat.solution.pitzer;

import static leat.solution.pitzer.Species.CA;
import static leat.solution.pitzer.Species.CATIONS;
import static leat.solution.pitzer.Species.CL;
import static leat.solution.pitzer.Species.COUNT;
import static leat.solution.pitzer.Species.H2PO4;
import static leat.solution.pitzer.Species.K;
import static leat.solution.pitzer.Species.MG;
import static leat.solution.pitzer.Species.NA;
import static leat.solution.pitzer.Species.NO3;
import static leat.solution.pitzer.Species.SO4;

/**
 * The coefficients of Pitzer's model at a temperature.
 *
 * <p>All pairs stand as at 25 C but K-SO4 and Mg-SO4, which lean with temperature; the constants of
 * the solids take up the rest. A pair of ions that is not listed has 0.
 *
 * <p>Source: pitzer.dat of phreeqc3 (Cl and SO4 with K, Na, Ca, Mg; psi); Pitzer and Mayorga (1973)
 * as tabled in pytzer (NH4, NO3, H2PO4; NH4-H2PO4 from memory); Geochem. Trans. 6:19 (theta of
 * cations, Cl-NO3). Own fits: Ca-NO3 to the activities of Robinson and Stokes to 6 mol/kg, 2.3 %;
 * theta of Cl-SO4, NO3-SO4, NO3-H2PO4, Cl-H2PO4 to solubilities of mixtures. By analogy: Ca and Mg
 * with H2PO4, theta of SO4-H2PO4. Check values: solution-mixed.csv.
 */
final class Coefficients {
  private static final int ANIONS = COUNT - CATIONS;
  private static final double ROOM = 25;

  // rows K, NH4, Na, Ca, Mg; columns Cl, NO3, SO4, H2PO4

  /** beta0 at 25 C, kg/mol. */
  private static final double[] B0 = {
    0.04835, -0.0816, 0.04995, -0.0678, //
    0.0522, -0.0154, 0.040875, -0.0704, //
    0.0765, 0.0068, 0.01958, -0.0533, //
    0.3159, 0.1682, 0, 0.2, //
    0.35235, 0.367125, 0.221, 0.2,
  };

  /** beta1 at 25 C, kg/mol. */
  private static final double[] B1 = {
    0.2122, 0.0494, 0.7793, -0.1042, //
    0.1918, 0.1120, 0.6585, -0.4156, //
    0.2664, 0.1783, 1.113, 0.0396, //
    1.614, 1.6125, 0, 1.5, //
    1.6815, 1.58475, 3.343, 1.5,
  };

  /** Cphi at 25 C, (kg/mol)2. */
  private static final double[] C_PHI = {
    -0.00084, 0.0066, 0, 0, //
    -0.00301, -0.00003, -0.001161, 0.00669, //
    0.00127, -0.00072, 0.00497, 0.00795, //
    -0.00034, -0.00666, 0, 0, //
    0.00519, -0.020624, 0.025, 0,
  };

  /** beta2 of magnesium sulfate at 25 C, kg/mol; 0 for all others. */
  private static final double MGSO4_B2 = -37.23;

  // what a kelvin above 25 C adds
  private static final double K_SO4_B0_PER_K = 1.44e-3; // kg/mol/K
  private static final double K_SO4_B1_PER_K = 6.6975e-3; // kg/mol/K
  private static final double MGSO4_B0_PER_K = -6.9e-4; // kg/mol/K
  private static final double MGSO4_B1_PER_K = 0.0153; // kg/mol/K
  private static final double MGSO4_B2_PER_K = -0.253; // kg/mol/K
  private static final double MGSO4_CPHI_PER_K = 5.23e-4; // (kg/mol)2/K

  /** theta, kg/mol: ion, ion, value. */
  private static final double[] THETA = {
    K, NA, -0.012, //
    CA, K, 0.032, //
    CA, NA, 0.07, //
    CA, MG, 0.007, //
    MG, NA, 0.07, //
    CL, NO3, 0.016, //
    CL, SO4, 0.03, //
    NO3, SO4, 0.08, //
    NO3, H2PO4, 0.115, //
    CL, H2PO4, 0.10, //
    SO4, H2PO4, 0.10,
  };

  /** psi, (kg/mol)2: two ions of like sign, one of the other, value. */
  private static final double[] PSI = {
    K, MG, SO4, -0.048, //
    K, MG, CL, -0.022, //
    K, NA, CL, -0.0018, //
    K, NA, SO4, -0.010, //
    CA, K, CL, -0.025, //
    CA, NA, CL, -0.007, //
    CA, MG, CL, -0.012, //
    MG, NA, CL, -0.012, //
    MG, NA, SO4, -0.015, //
    CL, SO4, NA, 0.0014, //
    CL, SO4, MG, -0.004,
  };

  private final double[] b0 = B0.clone();
  private final double[] b1 = B1.clone();
  private final double[] cphi = C_PHI.clone();
  private final double b2;

  /**
   * @param celsius temperature, C
   */
  Coefficients(double celsius) {
    double warmer = celsius - ROOM;
    b0[pair(K, SO4)] += K_SO4_B0_PER_K * warmer;
    b1[pair(K, SO4)] += K_SO4_B1_PER_K * warmer;
    b0[pair(MG, SO4)] += MGSO4_B0_PER_K * warmer;
    b1[pair(MG, SO4)] += MGSO4_B1_PER_K * warmer;
    cphi[pair(MG, SO4)] += MGSO4_CPHI_PER_K * warmer;
    b2 = MGSO4_B2 + MGSO4_B2_PER_K * warmer;
  }

  private static int pair(int cation, int anion) {
    return ANIONS * cation + anion - CATIONS;
  }

  double b0(int cation, int anion) {
    return b0[pair(cation, anion)];
  }

  double b1(int cation, int anion) {
    return b1[pair(cation, anion)];
  }

  double b2(int cation, int anion) {
    return cation == MG && anion == SO4 ? b2 : 0;
  }

  /** C of the model, which is Cphi over twice the root of both charges, (kg/mol)2. */
  double c(int cation, int anion) {
    int charges = Species.charge(cation) * Species.charge(anion);
    return cphi[pair(cation, anion)] / (2 * Math.sqrt(charges));
  }

  /** theta of two ions of like sign, kg/mol. */
  static double theta(int one, int other) {
    for (int i = 0; i < THETA.length; i += 3) {
      if (same(one, other, THETA[i], THETA[i + 1])) {
        return THETA[i + 2];
      }
    }
    return 0;
  }

  /** psi of two ions of like sign with one of the other sign, (kg/mol)2. */
  static double psi(int one, int other, int opposite) {
    for (int i = 0; i < PSI.length; i += 4) {
      if (PSI[i + 2] == opposite && same(one, other, PSI[i], PSI[i + 1])) {
        return PSI[i + 3];
      }
    }
    return 0;
  }

  private static boolean same(int one, int other, double first, double second) {
    return one == first && other == second || one == second && other == first;
  }
}

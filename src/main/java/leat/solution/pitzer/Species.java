package leat.solution.pitzer;

/**
 * The ions that the model knows, as places in an array: cations first, then anions.
 *
 * <p>Zinc, manganese, iron and copper ions count as magnesium, mole for mole (by analogy).
 *
 * <p>Source: atomic weights of IUPAC 2021.
 */
final class Species {
  static final int K = 0;
  static final int NH4 = 1;
  static final int NA = 2;
  static final int CA = 3;
  static final int MG = 4;
  static final int CL = 5;
  static final int NO3 = 6;
  static final int SO4 = 7;
  static final int H2PO4 = 8;

  static final int CATIONS = 5;
  static final int COUNT = 9;

  /** Molar mass of water, g/mol. */
  static final double WATER_G_MOL = 18.015;

  private static final int[] CHARGE = {1, 1, 1, 2, 2, 1, 1, 2, 1};
  private static final String[] SYMBOL = {
    "K", "NH4", "Na", "Ca", "Mg", "Cl", "NO3", "SO4", "H2PO4"
  };

  /** Molar masses, g/mol. */
  private static final double[] G_MOL = {
    39.0983, 18.039, 22.98977, 40.078, 24.305, 35.45, 62.004, 96.056, 96.98576
  };

  private Species() {}

  /** Charge without sign. */
  static int charge(int ion) {
    return CHARGE[ion];
  }

  static String symbol(int ion) {
    return SYMBOL[ion];
  }

  static double molarMass(int ion) {
    return G_MOL[ion];
  }

  /** The place of a symbol; -1 when the model lacks it. */
  static int of(String symbol) {
    for (int i = 0; i < COUNT; i++) {
      if (SYMBOL[i].equals(symbol)) {
        return i;
      }
    }
    return -1;
  }
}

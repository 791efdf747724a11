package leat.solution.pitzer;

import static leat.solution.pitzer.Species.CA;
import static leat.solution.pitzer.Species.CL;
import static leat.solution.pitzer.Species.COUNT;
import static leat.solution.pitzer.Species.H2PO4;
import static leat.solution.pitzer.Species.K;
import static leat.solution.pitzer.Species.MG;
import static leat.solution.pitzer.Species.NA;
import static leat.solution.pitzer.Species.NH4;
import static leat.solution.pitzer.Species.NO3;
import static leat.solution.pitzer.Species.SO4;

/**
 * A solid that can crystallise out of a bottle, with the constant of its ion product.
 *
 * <p>The constant is the ion product, with activity coefficients and crystal water, of the salt's
 * own saturated solution, whose strength is a table of grams of anhydrous salt in 100 g of water at
 * 0, 10, 20 and 30 C, straight between. Picromerite has a line of its own:
 *
 * <pre>ln K = -11.27 + 0.059 t</pre>
 *
 * <p>Not in: glaserite, mixed crystals of potassium and ammonium, calcium double nitrates,
 * struvite.
 *
 * <p>Source: KNO3 at 10 C, KH2PO4 and NH4H2PO4: Wan (2018), Vogel; K2SO4, KCl, NaCl, Na2SO4:
 * FREZCHEM; the other solubilities from memory (handbooks); MgSO4 below FREZCHEM's, hence cautious;
 * picromerite: this model's ion product at both FREZCHEM invariant points, within 0.09 of an index.
 * Check values: solution-mixed.csv.
 */
final class Solid {
  private static final double PICROMERITE_0 = -11.27; // ln K at 0 C
  private static final double PICROMERITE_1 = 0.059; // per C

  private static final Solid[] ALL = {
    new Solid("KNO3", 0, K, 1, NO3, 1, 13.3, 20.9, 31.6, 45.8),
    new Solid("K2SO4", 0, K, 2, SO4, 1, 7.4, 9.3, 11.1, 13.0),
    new Solid("KCl", 0, K, 1, CL, 1, 28.0, 31.2, 34.2, 37.2),
    new Solid("KH2PO4", 0, K, 1, H2PO4, 1, 14.8, 18.3, 22.6, 28.0),
    new Solid("NH4H2PO4", 0, NH4, 1, H2PO4, 1, 22.7, 29.5, 37.4, 46.4),
    new Solid("NH4NO3", 0, NH4, 1, NO3, 1, 118, 150, 192, 242),
    new Solid("(NH4)2SO4", 0, NH4, 2, SO4, 1, 70.6, 73.0, 75.4, 78.0),
    new Solid("NH4Cl", 0, NH4, 1, CL, 1, 29.4, 33.2, 37.2, 41.4),
    new Solid("NaNO3", 0, NA, 1, NO3, 1, 73, 80.8, 87.6, 94.9),
    new Solid("MgSO4.7H2O", 7, MG, 1, SO4, 1, 22.0, 28.2, 33.7, 38.9),
    new Solid("Mg(NO3)2.6H2O", 6, MG, 1, NO3, 2, 62.1, 66.0, 69.5, 73.6),
    new Solid("Ca(NO3)2.4H2O", 4, CA, 1, NO3, 2, 102, 115, 129, 152),
    new Solid("NaCl", 0, NA, 1, CL, 1, 35.65, 35.72, 35.89, 36.09),
    new Solid("Na2SO4.10H2O", 10, NA, 2, SO4, 1, 4.5, 9.1, 19.5, 40.8),
    new Solid("(NH4)2Mg(SO4)2.6H2O", 6, NH4, 2, SO4, 2, 11.83, 14.61, 17.97, 21.71).with(MG),
    // 18.7 + 0.42 t, for the first look only
    new Solid("K2Mg(SO4)2.6H2O", 6, K, 2, SO4, 2, 18.7, 22.9, 27.1, 31.3).with(MG),
  };

  private static final double[] COLUMN_C = {0, 10, 20, 30}; // C

  private final String name;
  private final int crystalWater;
  private final int[] count = new int[COUNT];
  private final double[] solubility;

  private Solid(
      String name,
      int crystalWater,
      int cation,
      int cations,
      int anion,
      int anions,
      double... solubility) {
    this.name = name;
    this.crystalWater = crystalWater;
    this.solubility = solubility;
    count[cation] = cations;
    count[anion] = anions;
  }

  private Solid with(int cation) {
    count[cation] = 1;
    return this;
  }

  static int size() {
    return ALL.length;
  }

  static Solid at(int index) {
    return ALL[index];
  }

  /** Formula with crystal water, such as "MgSO4.7H2O". */
  String name() {
    return name;
  }

  /** Waters in a formula. */
  int crystalWater() {
    return crystalWater;
  }

  /** How many of an ion are in a formula. */
  int count(int ion) {
    return count[ion];
  }

  /** Whether all its ions are there; amounts in mol or mol/kg. */
  boolean presentIn(double[] ions) {
    for (int i = 0; i < COUNT; i++) {
      if (count[i] > 0 && !(ions[i] > 0)) {
        return false;
      }
    }
    return true;
  }

  /** Molar mass without crystal water, g/mol. */
  double anhydrousMass() {
    double mass = 0;
    for (int i = 0; i < COUNT; i++) {
      mass += count[i] * Species.molarMass(i);
    }
    return mass;
  }

  /** Molar mass with crystal water, g/mol. */
  double molarMass() {
    return anhydrousMass() + crystalWater * Species.WATER_G_MOL;
  }

  /**
   * Molality of its own saturated solution, mol/kg.
   *
   * @param celsius temperature, C, 0 to 30
   */
  double saturated(double celsius) {
    int i = 1;
    while (i < COLUMN_C.length - 1 && celsius > COLUMN_C[i]) {
      i++;
    }
    double part = (celsius - COLUMN_C[i - 1]) / (COLUMN_C[i] - COLUMN_C[i - 1]);
    double grams = solubility[i - 1] + part * (solubility[i] - solubility[i - 1]);
    return 10 * grams / anhydrousMass();
  }

  /**
   * Natural logarithm of the ion product.
   *
   * @param molality of the ions, mol/kg, all of its own above 0
   * @param activities of that solution
   */
  double lnProduct(double[] molality, Pitzer.Activities activities) {
    double ln = crystalWater * activities.lnWater();
    for (int i = 0; i < COUNT; i++) {
      if (count[i] > 0) {
        ln += count[i] * (Math.log(molality[i]) + activities.lnGamma()[i]);
      }
    }
    return ln;
  }

  /**
   * Natural logarithm of the constant: the product at which it just stays dissolved.
   *
   * @param celsius temperature, C, 0 to 30
   * @param model of that temperature
   */
  double lnConstant(double celsius, Pitzer model) {
    if (this == ALL[ALL.length - 1]) {
      return PICROMERITE_0 + PICROMERITE_1 * celsius;
    }
    double[] own = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      own[i] = count[i] * saturated(celsius);
    }
    return lnProduct(own, model.at(own));
  }

  /**
   * How close the ions are to what each alone could be, per formula: a first look without the
   * model.
   *
   * <pre>r = product over its ions of (m/(n m_saturated))^(n/all)</pre>
   *
   * @param molality of the ions, mol/kg
   * @param celsius temperature, C, 0 to 30
   */
  double firstLook(double[] molality, double celsius) {
    double saturated = saturated(celsius);
    double product = 1;
    int all = 0;
    for (int i = 0; i < COUNT; i++) {
      for (int n = 0; n < count[i]; n++) {
        product *= molality[i] / (count[i] * saturated);
        all++;
      }
    }
    return Math.pow(product, 1.0 / all);
  }
}

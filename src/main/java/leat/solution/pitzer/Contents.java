package leat.solution.pitzer;

import static leat.solution.pitzer.Species.COUNT;

import java.util.List;

/**
 * Water and ions of a bottle.
 *
 * <pre>water = 0.999 kg/L (V - sum of the salts' room);  molality = moles/water</pre>
 *
 * <p>Against Laliberte's formula for mixtures the water errs by -0.6 to 1.9 %, 0.02 of an index.
 *
 * <p>Source: see {@link BottleSalt}; density of water at 10 to 15 C, handbooks. Check values:
 * solution-mixed.csv.
 *
 * @param litres the bottle's volume, L
 * @param saltMl room that the salts take, mL
 * @param moles of each ion, mol, in the order of {@link Species}
 */
record Contents(double litres, double saltMl, double[] moles) {
  private static final double WATER_KG_PER_L = 0.999; // kg/L

  /**
   * What salts bring into a bottle.
   *
   * @param salts what is weighed in
   * @param litres the bottle, L
   * @param beyond whether the ions of salts that go beyond the model count, too
   */
  static Contents of(List<MixedBottle.Poured> salts, double litres, boolean beyond) {
    double ml = 0;
    double[] moles = new double[COUNT];
    for (int i = 0; i < salts.size(); i++) {
      BottleSalt salt = salts.get(i).salt();
      double grams = salts.get(i).grams();
      ml += salt.mlPerGram() * grams;
      for (int ion = 0; ion < COUNT && (beyond || salt.counts()); ion++) {
        moles[ion] += salt.molPerGram(ion) * grams;
      }
    }
    return new Contents(litres, ml, moles);
  }

  /** Water in the bottle, kg; 0 or less when the salts alone fill it. */
  double waterKg() {
    return WATER_KG_PER_L * (litres - saltMl / 1000);
  }

  /** Ions in a kilogram of its water, mol/kg. */
  double[] molality() {
    return molality(moles, waterKg());
  }

  static double[] molality(double[] moles, double waterKg) {
    double[] molality = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      molality[i] = moles[i] / waterKg;
    }
    return molality;
  }

  /**
   * The same bottle with all grams times a factor.
   *
   * @param factor above 0, -
   */
  Contents times(double factor) {
    double[] more = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      more[i] = factor * moles[i];
    }
    return new Contents(litres, factor * saltMl, more);
  }
}

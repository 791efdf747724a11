package leat.solution.acid;

import java.util.function.DoubleUnaryOperator;

/**
 * The tests' own sums of charge: the pK are handed in (those of a sheet's row), shares of a weak
 * acid are written as ratios, and the pH is found by halving.
 */
record ChargeBalance(double pk1, double pk2, double pkw) {
  /** Hydroxide less hydrogen ions, meq/L. */
  private double water(double ph) {
    return 1000 * (Math.pow(10, ph - pkw) - Math.pow(10, -ph));
  }

  /** Hydrogencarbonate and twice carbonate over dissolved carbon dioxide, -. */
  private double bound(double ph) {
    double first = Math.pow(10, ph - pk1);
    return first + 2 * first * Math.pow(10, ph - pk2);
  }

  /** All carbonate over dissolved carbon dioxide, -. */
  private double all(double ph) {
    double first = Math.pow(10, ph - pk1);
    return 1 + first + first * Math.pow(10, ph - pk2);
  }

  /** All carbonate of a water of an alkalinity, meq/L, and a pH, mmol/L. */
  double total(double meq, double ph) {
    return (meq - water(ph)) / bound(ph) * all(ph);
  }

  /** All carbonate of a water that holds so much carbon dioxide, mmol/L, at a pH, mmol/L. */
  double totalHolding(double dissolved, double ph) {
    return dissolved * all(ph);
  }

  /** Alkalinity of a water that holds so much carbon dioxide, mmol/L, at a pH, meq/L. */
  double openMeq(double dissolved, double ph) {
    return dissolved * bound(ph) + water(ph);
  }

  /** pH of a closed water, of which an acid takes so much at a pH, meq/L. */
  double closedPh(double meq, double total, DoubleUnaryOperator taken) {
    return halved(ph -> total * bound(ph) / all(ph) + water(ph) - meq + taken.applyAsDouble(ph));
  }

  /** pH of a water that keeps so much carbon dioxide, mmol/L, likewise. */
  double openPh(double meq, double dissolved, DoubleUnaryOperator taken) {
    return halved(ph -> openMeq(dissolved, ph) - meq + taken.applyAsDouble(ph));
  }

  private static double halved(DoubleUnaryOperator rising) {
    double low = 0;
    double high = 14;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      if (rising.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Protons that a molecule with these pK has given at a pH: the sum of its steps' shares. */
  static double protons(double[] pk, double ph) {
    double weight = 1;
    double all = 1;
    double given = 0;
    for (int i = 0; i < pk.length; i++) {
      weight *= Math.pow(10, ph - pk[i]);
      all += weight;
      given += (i + 1) * weight;
    }
    return given / all;
  }
}

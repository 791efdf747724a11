package leat.solution.recipes;

import leat.numeric.Impossible;
import leat.solution.Label;
import leat.solution.Salt;

/**
 * Grams of one salt.
 *
 * <p>Source: definition; 0.1 g as the least a home scale weighs: common practice.
 *
 * @param salt which
 * @param grams how much, g
 */
public record Weighed(Salt salt, double grams) {
  /** Least amount that can be weighed at home, g; below it, make a stock solution. */
  public static final double LEAST_GRAMS = 0.1;

  /**
   * Checks the amount.
   *
   * @throws Impossible if negative or not finite
   */
  public Weighed {
    Impossible.ifNegative("grams", grams);
  }

  /**
   * A liquid feed by its label.
   *
   * @param name what to call it
   * @param label its figures
   * @param millilitresPerL dose, mL/L
   * @param basis what the per cent are of
   * @param density g/mL; may be anything for weight in volume
   * @param litres finished solution, L
   * @return it, with its weight in g; for weight in volume its mL stand for grams
   * @throws Impossible as {@link Label#gramsPerL}
   */
  public static Weighed poured(
      String name,
      Label label,
      double millilitresPerL,
      Label.Basis basis,
      double density,
      double litres) {
    return new Weighed(
        label.asSalt(name), Label.gramsPerL(millilitresPerL, basis, density) * litres);
  }

  /**
   * What a dose takes from the bottle.
   *
   * @param millilitresPerL dose, mL/L
   * @param litres finished solution, L
   * @return mL
   */
  public static double pouredMl(double millilitresPerL, double litres) {
    return millilitresPerL * litres;
  }

  /** Whether there is some of it, but too little to weigh at home. */
  public boolean isTooLittle() {
    return grams > 0 && grams < LEAST_GRAMS;
  }

  /** What it costs, currency; 0 without a price. */
  public double cost() {
    return grams / 1000 * salt.pricePerKg();
  }

  /**
   * The amount to the nearest step of a scale.
   *
   * @param step smallest step the scale shows, g
   * @throws Impossible if the step is not above 0
   */
  public Weighed rounded(double step) {
    Impossible.unlessPositive("scale", step);
    double steps = Math.rint(grams / step);
    double perGram = Math.rint(1 / step);
    boolean whole = Math.abs(perGram * step - 1) < 1e-12; // 0.1 g, 0.01 g, ...
    return new Weighed(salt, whole ? steps / perGram : steps * step);
  }
}

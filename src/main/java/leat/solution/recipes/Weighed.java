package leat.solution.recipes;

import leat.numeric.Impossible;
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
    boolean whole = perGram >= 1 && Math.abs(perGram * step - 1) < 1e-12; // 0.1 g, 0.01 g, ...
    return new Weighed(salt, whole ? steps / perGram : steps * step);
  }
}

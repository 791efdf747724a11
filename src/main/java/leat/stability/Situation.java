package leat.stability;

import leat.numeric.Impossible;

/**
 * A state in which the wind may find it.
 *
 * <p>Source: sheet stability-build.md section 3: only the solution that is surely there may hold.
 *
 * @param word to print
 * @param solution in the tank for sure, kg
 * @param growth of the plants, 0 young to 1 grown: share of their mass and of their width outside
 *     the tube
 */
public record Situation(String word, double solution, double growth) {
  /** Growth of full-size plants. */
  public static final double GROWN = 1;

  /** Growth of seedlings: no weight that could be relied on, nothing outside the tube. */
  public static final double YOUNG = 0;

  /** Density of solution, kg/m3: as water, the feed adds under 0.3 % (practice). */
  private static final double SOLUTION = 1000;

  /** Refuses what cannot be. */
  public Situation {
    Impossible.ifNegative("solution", solution);
    Impossible.unlessWithin("growth", growth, 0, 1, "plants are 0 % to 100 % grown");
  }

  /**
   * The worst of a season: the refill mark, plants grown.
   *
   * @param solution in the tank at the mark, kg
   * @return the state
   * @throws Impossible if negative
   */
  public static Situation refillMark(double solution) {
    return new Situation("refill mark", solution, GROWN);
  }

  /**
   * The first day: full, plants young.
   *
   * @param solution in the full tank, kg
   * @return the state
   * @throws Impossible if negative
   */
  public static Situation full(double solution) {
    return new Situation("full", solution, YOUNG);
  }

  /**
   * Mass of a volume of solution.
   *
   * @param volume m3, 0 or more
   * @return kg
   * @throws Impossible if negative
   */
  public static double massOf(double volume) {
    return SOLUTION * Impossible.ifNegative("solution", volume);
  }

  /** Volume of the solution, m3. */
  public double volume() {
    return solution / SOLUTION;
  }

  /** The same with other litres, kg. */
  public Situation withSolution(double other) {
    return new Situation(word, other, growth);
  }
}

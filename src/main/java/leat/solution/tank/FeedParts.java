package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Concentrate;

/**
 * The parts of a feed by their own rates.
 *
 * <p>Source: sheet solution-dose.csv.
 *
 * @param ratesMlPerL rate of each part, mL per litre of finished solution
 * @param gainMsCm what all parts together add to pure water at these rates, mS/cm
 */
public record FeedParts(double[] ratesMlPerL, double gainMsCm) {
  private static final int MOST_PARTS = 20;

  /** Two rates this near, as a share, are one rate rounded twice (common practice). */
  private static final double SAME_RATE = 0.01;

  /**
   * @throws Impossible if there is no part or over 20, a rate is 0 or less, or the sum or the gain
   *     is absurd
   */
  public FeedParts {
    if (ratesMlPerL.length == 0 || ratesMlPerL.length > MOST_PARTS) {
      throw new Impossible("parts", "a feed has 1 to 20 parts");
    }
    ratesMlPerL = ratesMlPerL.clone();
    for (double rate : ratesMlPerL) {
      Impossible.unlessPositive("rate", rate);
    }
    new Concentrate(sum(ratesMlPerL), gainMsCm);
  }

  /**
   * Equal parts of a rate that is the sum of all.
   *
   * @param totalMlPerL the rate of all parts together, mL/L
   * @param n number of parts
   * @param gainMsCm what all add, mS/cm
   */
  public static FeedParts sharing(double totalMlPerL, int n, double gainMsCm) {
    Impossible.unlessWithin("parts", n, 1, MOST_PARTS, "a feed has 1 to 20 parts");
    return each(totalMlPerL / n, n, gainMsCm);
  }

  /**
   * Equal parts of a rate that holds for each: "5 mL of each".
   *
   * @param eachMlPerL the rate of each part, mL/L
   * @param n number of parts
   * @param gainMsCm what all add, mS/cm
   */
  public static FeedParts each(double eachMlPerL, int n, double gainMsCm) {
    Impossible.unlessWithin("parts", n, 1, MOST_PARTS, "a feed has 1 to 20 parts");
    double[] rates = new double[n];
    java.util.Arrays.fill(rates, eachMlPerL);
    return new FeedParts(rates, gainMsCm);
  }

  /** Whether all parts have the same rate. */
  public boolean alike() {
    for (int i = 1; i < ratesMlPerL.length; i++) {
      if (ratesMlPerL[i] != ratesMlPerL[0]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether all parts together have the rate of another label, as one types it from there.
   *
   * @param other the other label's parts
   */
  public boolean ratedAs(FeedParts other) {
    double rate = sum(ratesMlPerL);
    return Math.abs(sum(other.ratesMlPerL) - rate) <= SAME_RATE * rate;
  }

  /** All parts as one concentrate, for {@link Topup}. */
  public Concentrate together() {
    return new Concentrate(sum(ratesMlPerL), gainMsCm);
  }

  /**
   * Millilitres of each part in a total.
   *
   * @param totalMl all parts together, mL
   * @return each part, mL, in the order of the rates
   */
  public double[] split(double totalMl) {
    double all = sum(ratesMlPerL);
    double[] parts = new double[ratesMlPerL.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = totalMl * (ratesMlPerL[i] / all);
    }
    return parts;
  }

  /**
   * The smallest part of a total.
   *
   * @param totalMl all parts together, mL
   * @return the part of which least is poured, mL
   */
  public double smallest(double totalMl) {
    double[] each = split(totalMl);
    double least = each[0];
    for (double one : each) {
      least = Math.min(least, one);
    }
    return least;
  }

  private static double sum(double[] values) {
    double all = 0;
    for (double value : values) {
      all += value;
    }
    return all;
  }
}

package leat.season;

import leat.numeric.Impossible;

/**
 * Seeds for a number of plants: enough on average, and enough nine times of ten.
 *
 * <p>Source: the binomial distribution, as the number of failures before the last plant. Check
 * values: season-sow-batches.csv.
 */
public final class Seeds {
  /** How often {@link #nineOfTen} is enough. */
  public static final double SURE = 0.9;

  /** 9 of 0.9 is 10 and not 11. */
  private static final double SPARE = 1e-9;

  /** Rounding of a sum of chances. */
  private static final double CHANCE = 1e-12;

  /** More than this is a mistake: a hundred for each of the most pots that are taken. */
  private static final int MOST_SEEDS = 10_000_000;

  private Seeds() {}

  /**
   * Enough on average, so short about half the time.
   *
   * @param plants plants wanted, -
   * @param success the share of seeds that become plants, over 0 to 1, -
   * @return seeds
   * @throws Impossible if no seed becomes a plant
   */
  public static int onAverage(int plants, double success) {
    return counted(Math.ceil(plants / share(success) - SPARE));
  }

  /**
   * The fewest seeds with P(Binomial(seeds, success) at least plants) at least 0.9.
   *
   * @param plants plants wanted, -
   * @param success the share of seeds that become plants, over 0 to 1, -
   * @return seeds
   * @throws Impossible if no seed becomes a plant
   */
  public static int nineOfTen(int plants, double success) {
    double fails = 1 - share(success);
    if (plants == 0 || fails == 0) {
      return plants;
    }
    onAverage(plants, success); // nine of ten needs more than that: refused before it is counted
    double logTerm = plants * Math.log(success);
    double logFails = Math.log(fails);
    double sure = Math.exp(logTerm);
    int failures = 0;
    while (sure < SURE - CHANCE) {
      failures++;
      logTerm += logFails + Math.log((plants + failures - 1.0) / failures);
      sure += Math.exp(logTerm);
      counted((double) plants + failures);
    }
    return plants + failures;
  }

  private static int counted(double seeds) {
    if (seeds > MOST_SEEDS) {
      throw new Impossible("loss", "so few seeds become plants that none can be counted on");
    }
    return (int) seeds;
  }

  private static double share(double success) {
    if (!(success > 0 && success <= 1)) {
      throw new Impossible("loss", "no seed becomes a plant: the loss must be under 100 %");
    }
    return success;
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Growth as a logistic curve, g = 1/(1 + exp(-k (d - d50))) with k = ln(1/g0 - 1)/d50, so that it
 * begins at g0.
 *
 * <p>Source: sheet season.md section 2, check values season-plant-water.csv.
 *
 * @param startShare share at the start, above 0 to under 0.5
 * @param halfDay day on which half the thirst is reached
 */
public record LogisticGrowth(double startShare, double halfDay) implements Growth {
  /**
   * @throws Impossible if the share is not between 0 and 0.5 or the day not above 0
   */
  public LogisticGrowth {
    Impossible.unlessPositive("start_share", startShare);
    if (!(startShare < 0.5)) {
      throw new Impossible(
          "start_share", "half the thirst is reached later, so it is under a half");
    }
    Impossible.unlessPositive("half day", halfDay);
  }

  @Override
  public double share(int day) {
    if (day < 0) {
      return 0;
    }
    double k = Math.log(1 / startShare - 1) / halfDay;
    return 1 / (1 + Math.exp(-k * (day - halfDay)));
  }
}

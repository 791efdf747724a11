package leat.solution.tank;

import leat.numeric.Impossible;

/**
 * A top-up when the volume is only known as a band, as from a stepped sender: solved at both ends
 * and in the middle.
 *
 * <p>What is kept rises with the volume and water and concentrate are linear in what is kept, so
 * the ends bound the answer. With rain the EC depends on the volume as well: then volumes between
 * are solved too, and the bounds hold to a thousandth of the full tank. An end without an answer
 * makes the whole doubtful.
 *
 * <p>Source: mass balance. Check values: solution-topup.csv, row TU02.
 *
 * @param lowest the answer if the volume is the low end
 * @param middle the answer for the middle: the plain figures
 * @param highest the answer if the volume is the high end
 * @param doubtful whether some volumes of the band have an answer and others none
 * @param drainLowL the smallest drain of those answers, L; null when none has one
 * @param drainHighL the largest drain, L
 * @param waterLowL the least water, L (it belongs to the fuller tank)
 * @param waterHighL the most water, L
 * @param concentrateLowMl the least concentrate, mL
 * @param concentrateHighMl the most concentrate, mL
 * @param middleVolumeIfLowL the volume that the middle recipe makes if the truth is the low end, L;
 *     null without a middle recipe
 * @param middleEcIfLowMsCm the EC it makes then, mS/cm
 * @param middleVolumeIfHighL the volume it makes if the truth is the high end, L
 * @param middleEcIfHighMsCm the EC it makes then, mS/cm
 * @param middleOverFull whether the middle recipe would go past full at the high end: then fill to
 *     the mark by eye, stir, measure, dose
 */
public record TopupBand(
    Topup.Answer lowest,
    Topup.Answer middle,
    Topup.Answer highest,
    boolean doubtful,
    Double drainLowL,
    Double drainHighL,
    Double waterLowL,
    Double waterHighL,
    Double concentrateLowMl,
    Double concentrateHighMl,
    Double middleVolumeIfLowL,
    Double middleEcIfLowMsCm,
    Double middleVolumeIfHighL,
    Double middleEcIfHighMsCm,
    boolean middleOverFull) {
  private static final double ROUNDING = 1e-9;

  /** Whether every volume of the band must be drained, and to the same litres. */
  public boolean drainsToOneMark() {
    return lowest.reached()
        && highest.reached()
        && drainLowL > 0
        && Math.abs(lowest.keptL() - highest.keptL()) < ROUNDING * highest.finalVolumeL();
  }

  /**
   * Solves a band of volumes.
   *
   * @param ask the question; its own volume is the middle
   * @param lowL the low end, L
   * @param highL the high end, L
   * @return the three answers and what bounds them
   * @throws Impossible if the ends do not enclose the middle
   */
  public static TopupBand solve(TopupAsk ask, double lowL, double highL) {
    if (!(lowL <= ask.volumeL() && ask.volumeL() <= highL)) {
      throw new Impossible("volume", "the band's low end, middle and high end must rise");
    }
    Topup.Answer low = Topup.solve(ask.holding(lowL));
    Topup.Answer middle = Topup.solve(ask);
    Topup.Answer high = Topup.solve(ask.holding(highL));
    double[] ifLow = applied(ask, middle, low);
    double[] ifHigh = applied(ask, middle, high);
    TopupBounds bounds = new TopupBounds();
    take(bounds, low);
    take(bounds, middle);
    take(bounds, high);
    double[] between = TopupBounds.between(ask.fullL(), ask.rainL(), lowL, highL);
    for (int i = 0; i < between.length; i++) {
      take(bounds, Topup.solve(ask.holding(between[i])));
    }
    return new TopupBand(
        low,
        middle,
        high,
        bounds.doubtful(),
        bounds.drainLow,
        bounds.drainHigh,
        bounds.waterLow,
        bounds.waterHigh,
        bounds.feedLow,
        bounds.feedHigh,
        ifLow == null ? null : (Double) ifLow[0],
        ifLow == null ? null : (Double) ifLow[1],
        ifHigh == null ? null : (Double) ifHigh[0],
        ifHigh == null ? null : (Double) ifHigh[1],
        ifHigh != null && ifHigh[0] > ask.fullL() * (1 + ROUNDING));
  }

  private static double[] applied(TopupAsk ask, Topup.Answer recipe, Topup.Answer truth) {
    if (!recipe.reached()) {
      return null;
    }
    double kept = Math.max(0, truth.afterRainL() - recipe.drainL());
    double concentrate = 0.001 * recipe.concentrateMl();
    double volume = kept + recipe.waterL() + concentrate;
    if (volume <= 0) {
      return null;
    }
    double salt =
        truth.afterRainEcMsCm() * kept
            + ask.waterEcMsCm() * recipe.waterL()
            + ask.feed().strengthMsCm() * concentrate;
    return new double[] {volume, salt / volume};
  }

  private static void take(TopupBounds bounds, Topup.Answer one) {
    bounds.take(one.drainL(), one.waterL(), one.concentrateMl());
  }
}

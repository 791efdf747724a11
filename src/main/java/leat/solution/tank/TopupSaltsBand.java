package leat.solution.tank;

/**
 * A top-up by the gram when the volume is only known as a band, as {@link TopupBand} for feed that
 * is poured: without rain the ends bound the answer, with rain volumes between are solved too.
 *
 * <p>Source: mass balance.
 *
 * @param middle the answer for the middle: the plain figures
 * @param doubtful whether some volumes of the band have an answer and others none
 * @param drainLowL the smallest drain, L; null when no volume has an answer
 * @param drainHighL the largest drain, L
 * @param waterLowL the least water, L
 * @param waterHighL the most water, L
 * @param recipeLowL the fewest litres of the recipe to weigh, L
 * @param recipeHighL the most, L
 */
public record TopupSaltsBand(
    TopupSalts.Answer middle,
    boolean doubtful,
    Double drainLowL,
    Double drainHighL,
    Double waterLowL,
    Double waterHighL,
    Double recipeLowL,
    Double recipeHighL) {
  /**
   * Solves a band of volumes.
   *
   * @param ask the question
   * @param lowL the low end, L
   * @param middleL the middle, L
   * @param highL the high end, L
   * @return the answer for the middle and what bounds the others
   * @throws leat.numeric.Impossible as {@link TopupSalts#solve}
   */
  public static TopupSaltsBand solve(TopupSaltsAsk ask, double lowL, double middleL, double highL) {
    TopupSalts.Answer middle = ask.solve(middleL);
    TopupBounds bounds = new TopupBounds();
    take(bounds, ask.solve(lowL));
    take(bounds, middle);
    take(bounds, ask.solve(highL));
    double[] between = TopupBounds.between(ask.fullL(), ask.rainL(), lowL, highL);
    for (int i = 0; i < between.length; i++) {
      take(bounds, ask.solve(between[i]));
    }
    return new TopupSaltsBand(
        middle,
        bounds.doubtful(),
        bounds.drainLow,
        bounds.drainHigh,
        bounds.waterLow,
        bounds.waterHigh,
        bounds.feedLow,
        bounds.feedHigh);
  }

  private static void take(TopupBounds bounds, TopupSalts.Answer one) {
    bounds.take(one.drainL(), one.waterL(), one.recipeL());
  }
}

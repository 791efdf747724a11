package leat.solution.pitzer;

import java.util.List;
import leat.solution.stock.Stock;
import leat.solution.stock.StockBottles;

/**
 * How strong a bottle can be made: the factor on all its grams, in the same litres, at which its
 * worst index comes up to the band from below.
 *
 * <p>Source: bisection on {@link Brine}. Check values: solution-mixed.csv.
 */
public final class Strength {
  private static final double STEP = 1.25; // -
  private static final int MOST_STEPS = 120;
  private static final int HALVINGS = 40;

  /** Kept below the edge, -: rounding of doubles when the grams are scaled. */
  private static final double ROUNDING = 1e-9;

  /** Share of the bottle up to which salts may fill it, -. */
  private static final double FULLEST = 0.9;

  private Strength() {}

  /**
   * The most that a bottle can hold and be clear, at most nine tenths of it salt.
   *
   * @param weighed what is weighed in, weak or strong
   * @param litres the bottle, L
   * @param celsius the coldest it gets, C
   * @return factor on all grams, -; null when the ions make no solid that limits it, or calcium
   *     meets sulfate or phosphate, which is not computed
   */
  public static Double strongest(List<Stock.Weighed> weighed, double litres, double celsius) {
    return factor(weighed, litres, celsius, null);
  }

  /**
   * The strongest these salts may stand in a bottle: no salt over 80 % of what the cold holds, and
   * the ions under the band.
   *
   * @param forTower grams in the tower water of the salts of one bottle
   * @param towerL that tower water, L
   * @param celsius the coldest it gets, C
   * @return litres of tower water a litre of bottle makes, -; null when nothing limits it
   */
  public static Double underBoth(List<Stock.Weighed> forTower, double towerL, double celsius) {
    Double shares = StockBottles.strongest(forTower, towerL, celsius);
    Double ions = strongest(forTower, towerL, celsius);
    return shares == null || ions != null && ions < shares ? ions : shares;
  }

  /**
   * The strongest that both bottles may stand, all salts in one when asked.
   *
   * @param forTower grams in the tower water of all salts
   * @param towerL that tower water, L
   * @param celsius the coldest it gets, C
   * @param oneBottle whether all salts stand in one bottle
   * @return litres of tower water a litre of bottle makes, -; null when nothing limits it
   */
  public static Double ofBottles(
      List<Stock.Weighed> forTower, double towerL, double celsius, boolean oneBottle) {
    Double strongest = null;
    for (int b = 1; b <= (oneBottle ? 1 : 2); b++) {
      List<Stock.Weighed> there = oneBottle ? forTower : StockBottles.of(forTower, b);
      Double times = there.isEmpty() ? null : underBoth(there, towerL, celsius);
      if (times != null && (strongest == null || times < strongest)) {
        strongest = times;
      }
    }
    return strongest;
  }

  /**
   * Tower water that a bottle makes.
   *
   * @param times litres of tower water per litre of bottle, -
   * @param bottleL the bottle, L
   * @return tower water, L
   */
  public static double makesL(double times, double bottleL) {
    return times * bottleL;
  }

  /**
   * The factor at a wanted index.
   *
   * @param weighed what is weighed in
   * @param litres the bottle, L
   * @param celsius the coldest it gets, C
   * @param target worst index to reach, -; null for the lower edge of the band
   */
  static Double factor(List<Stock.Weighed> weighed, double litres, double celsius, Double target) {
    List<MixedBottle.Poured> salts = MixedBottle.poured(weighed);
    Contents one = Contents.of(salts, litres, false);
    if (MixedBottle.calciumMeets(salts, litres)) {
      return null;
    }
    Brine brine = new Brine(one.moles(), celsius);
    if (brine.size() == 0 || one.saltMl() <= 0) {
      return null;
    }
    double low = 1;
    for (int n = 0; n < MOST_STEPS && !below(brine, one.times(low), target); n++) {
      low /= STEP;
    }
    double high = low * STEP;
    for (int n = 0; n < MOST_STEPS && below(brine, one.times(high), target); n++) {
      low = high;
      high *= STEP;
    }
    return below(brine, one.times(high), target) ? null : edge(brine, one, low, high, target);
  }

  private static Double edge(Brine brine, Contents one, double low, double high, Double target) {
    double clear = low;
    double over = high;
    for (int n = 0; n < HALVINGS; n++) {
      double middle = (clear + over) / 2;
      if (below(brine, one.times(middle), target)) {
        clear = middle;
      } else {
        over = middle;
      }
    }
    return clear * (1 - ROUNDING);
  }

  private static boolean below(Brine brine, Contents contents, Double target) {
    if (contents.saltMl() > FULLEST * 1000 * contents.litres()) {
      return false;
    }
    double[] molality = contents.molality();
    double limit = target == null ? -MixedBottle.band(molality) : target;
    return brine.worstIndex(molality) < limit;
  }
}

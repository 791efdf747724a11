package leat.solution.pitzer;

import java.util.List;
import leat.numeric.Impossible;
import leat.solution.stock.Stock;

/**
 * One undiluted bottle judged both ways: each salt by its share of what the cold can hold, and all
 * ions together.
 *
 * <p>Source: {@link Stock}, {@link MixedBottle}. Check values: solution-stock.csv,
 * solution-mixed.csv.
 *
 * @param shares each salt alone
 * @param ions all ions together
 * @param verdict the worse of both
 */
public record StockBottle(Stock.Answer shares, MixedBottle.Answer ions, Stock.Verdict verdict) {
  /** Litres to which a larger bottle is rounded up, per litre. */
  private static final double TENTHS = 10;

  /**
   * Judges a bottle.
   *
   * @param weighed what is weighed in
   * @param litres the bottle, L
   * @param celsius the coldest it gets, C
   * @return shares, ions and the worse verdict
   * @throws Impossible as {@link Stock#bottle}
   */
  public static StockBottle of(List<Stock.Weighed> weighed, double litres, double celsius) {
    Stock.Answer shares = Stock.bottle(weighed, litres, celsius, Stock.BOTTLE_PH);
    MixedBottle.Answer ions = MixedBottle.of(weighed, litres, celsius);
    return new StockBottle(shares, ions, MixedBottle.worse(shares.verdict(), ions.verdict()));
  }

  /**
   * The bottle in which the same grams stay clear: under 80 % of each salt, and the ions under the
   * band.
   *
   * @param weighed what is weighed in
   * @param litres the bottle as it is, L
   * @param celsius the coldest it gets, C
   * @return litres, rounded up to a tenth; null when no bottle is known to be large enough
   * @throws Impossible as {@link Stock#bottle}
   */
  public static Double clearLitres(List<Stock.Weighed> weighed, double litres, double celsius) {
    Double times = Strength.underBoth(weighed, litres, celsius);
    if (times == null) {
      return null;
    }
    double enough = Math.ceil(TENTHS * litres / times) / TENTHS;
    return of(weighed, enough, celsius).verdict() == Stock.Verdict.CLEAR ? (Double) enough : null;
  }

  /** Whether salts that share an ion are too much together, and the ions cannot say so. */
  public boolean hinderEachOther() {
    return ions.worstIndex() == null
        && shares.commonIon() != null
        && Stock.overWorking(shares.commonIonShare());
  }

  /** Whether its calcium meets sulfate or phosphate. */
  public boolean calciumMeets() {
    return shares.verdict() == Stock.Verdict.KEEP_APART
        || shares.verdict() == Stock.Verdict.PRECIPITATES;
  }

  /** Whether a salt alone is more than the cold can hold. */
  public boolean overfull() {
    return shares.verdict() == Stock.Verdict.CRYSTALS;
  }

  /** Whether ions together crystallise, or may. */
  public boolean ionsCrystallise() {
    return ions.worstSolid() != null
        && (ions.verdict() == Stock.Verdict.CRYSTALS || ions.verdict() == Stock.Verdict.TIGHT);
  }
}

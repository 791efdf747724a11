package leat.energy;

import leat.numeric.Impossible;

/**
 * The price of energy by the local wall clock: the first price is the default, the last band that
 * matches is in force; and a standing charge.
 *
 * <p>A meter may shift its bands otherwise on the two days of a clock change: its clock decides.
 *
 * <p>Source: sheet energy.md section 2, check values energy-tariff.csv.
 */
public final class Tariff {
  private final Windows windows;
  private final double[] pricesPerJ;
  private final double standingPerDay;
  private final double standingShare;

  /**
   * Prices in their order.
   *
   * @param windows when each price holds; the first always
   * @param pricesPerJ as many prices, money per J
   * @param standingPerDay standing charge, money a day
   * @param standingShare share of it that the tower bears, 0 to 1
   * @throws Impossible if the numbers differ, the first window is not always, a price or charge is
   *     negative, or the share is outside 0 to 1
   */
  public Tariff(
      Window[] windows, double[] pricesPerJ, double standingPerDay, double standingShare) {
    if (windows.length != pricesPerJ.length) {
      throw new Impossible("band", "every price needs its window");
    }
    this.windows = new Windows("band", windows);
    this.pricesPerJ = pricesPerJ.clone();
    for (int i = 0; i < pricesPerJ.length; i++) {
      Accepted.price(pricesPerJ[i]);
    }
    Accepted.standing(standingPerDay, standingShare);
    this.standingPerDay = standingPerDay;
    this.standingShare = standingShare;
  }

  /**
   * One price day and night, no standing charge.
   *
   * @param pricePerJ price of energy, money per J
   * @return the tariff
   * @throws Impossible if the price is negative
   */
  public static Tariff flat(double pricePerJ) {
    return new Tariff(new Window[] {Window.always()}, new double[] {pricePerJ}, 0, 0);
  }

  /** When each price holds. */
  public Windows windows() {
    return windows;
  }

  /** Number of prices. */
  public int size() {
    return pricesPerJ.length;
  }

  /** Price {@code i}, money per J. */
  public double pricePerJ(int i) {
    return pricesPerJ[i];
  }

  /** The part of the standing charge that the tower bears, money a day. */
  public double standingCostPerDay() {
    return standingPerDay * standingShare;
  }
}

package leat.energy;

/**
 * One timing at one price: energy and money a day and over a number of days.
 *
 * <pre>J a day = 86400 (P s + P_others)
 * cost a day = J a day x price + standing charge x standing share</pre>
 *
 * <p>Source: energy balance; sheet energy.md section 1, check values energy-duty.csv.
 *
 * @param timing the timing
 * @param share share of the time the pump runs, 0 to 1
 * @param startsPerDay mean starts a day, a fraction
 * @param pumpJDay energy of the pump a day, J
 * @param othersJDay energy of controller and coil a day, J
 * @param totalJDay both, J
 * @param energyCostDay cost of that energy a day, money
 * @param standingCostDay the tower's share of the standing charge a day, money
 * @param costDay both, money
 * @param days length of the period, days
 * @param startsTotal mean starts over the period
 * @param runTotalS running over the period, s
 * @param pumpJTotal energy of the pump over the period, J
 * @param othersJTotal energy of controller and coil over the period, J
 * @param totalJ both, J
 * @param costTotal cost over the period, money
 */
public record Duty(
    Timing timing,
    double share,
    double startsPerDay,
    double pumpJDay,
    double othersJDay,
    double totalJDay,
    double energyCostDay,
    double standingCostDay,
    double costDay,
    double days,
    double startsTotal,
    double runTotalS,
    double pumpJTotal,
    double othersJTotal,
    double totalJ,
    double costTotal) {

  /** Share of the standing charge counted by default: it is paid with or without the tower. */
  public static final double DEFAULT_STANDING_SHARE = 0;

  /**
   * Energy and money of one timing.
   *
   * @param timing run and rest, s
   * @param draw what draws power, W
   * @param pricePerJ price of energy, money per J
   * @param standingPerDay standing charge, money a day
   * @param standingShare share of it that the tower bears, 0 to 1
   * @param days length of the period, days, above 0
   * @return energy and money
   * @throws leat.numeric.Impossible if a price is negative, the share is outside 0 to 1, or the
   *     period is not above 0
   */
  public static Duty of(
      Timing timing,
      Draw draw,
      double pricePerJ,
      double standingPerDay,
      double standingShare,
      double days) {
    Accepted.price(pricePerJ);
    Accepted.days(days);
    double standing = Accepted.standing(standingPerDay, standingShare);
    double share = timing.share();
    double pump = Accepted.DAY_S * draw.pumpW() * share;
    double others = Accepted.DAY_S * draw.othersW(share);
    double all = pump + others;
    double cost = all * pricePerJ + standing;
    return new Duty(
        timing,
        share,
        timing.startsPerDay(),
        pump,
        others,
        all,
        all * pricePerJ,
        standing,
        cost,
        days,
        timing.startsPerDay() * days,
        Accepted.DAY_S * share * days,
        pump * days,
        others * days,
        all * days,
        cost * days);
  }

  /**
   * Energy of something that draws all the time, such as a controller that is not counted yet.
   *
   * @param watts its power, W
   * @param days length of the period, days
   * @return J
   * @throws leat.numeric.Impossible if the power is negative or the period is not above 0
   */
  public static double steadyJ(double watts, double days) {
    return Accepted.power("power", watts) * Accepted.DAY_S * Accepted.days(days);
  }
}

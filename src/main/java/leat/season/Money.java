package leat.season;

/**
 * The money of a season: what is poured day by day, energy, the first fill, seed, and what the
 * harvest would cost in a shop. What is not known is NaN.
 *
 * <p>Source: arithmetic.
 *
 * @param prices of what is poured
 * @param energyOfDay money of the energy of each day; null when it has no price
 * @param firstFill what was poured before the first day
 * @param seed money of the seed, NaN when no crop names its price
 * @param shop what the harvest would cost in a shop, NaN when no crop names its price
 * @param bought money of tower, tank and all that lasts, filament by whole spools; NaN when no
 *     price is named
 * @param boughtLeast the same with the filament used alone, the rest of the spools being kept
 */
public record Money(
    Prices prices,
    double[] energyOfDay,
    FirstFill firstFill,
    double seed,
    double shop,
    double bought,
    double boughtLeast) {

  /** Money of the energy of the season. */
  public double energy() {
    return energyOfDay == null ? Double.NaN : energy(0, energyOfDay.length - 1);
  }

  /** Money of the energy from one day to another, both included. */
  public double energy(int first, int last) {
    if (energyOfDay == null) {
      return Double.NaN;
    }
    double sum = 0;
    for (int t = first; t <= last; t++) {
      sum += energyOfDay[t];
    }
    return sum;
  }

  /** Money of a day, or of days in a row whose first is {@code row}'s. */
  public double of(DayRow row, int last) {
    double poured = prices.poured(row.waterL(), row.concentrateMl());
    double energy = energy(row.day(), last);
    return Double.isNaN(poured) && Double.isNaN(energy)
        ? Double.NaN
        : Prices.or0(poured) + Prices.or0(energy);
  }

  /** Money of the first fill. */
  public double first() {
    return prices.poured(firstFill.waterL(), firstFill.concentrateMl());
  }

  /** Money of the whole season: its days, the first fill and the seed. */
  public double season(Totals totals) {
    Totals.Flows flows = totals.flows();
    double poured = prices.poured(flows.waterL(), flows.concentrateMl());
    if (Double.isNaN(poured) && energyOfDay == null) {
      return Double.NaN;
    }
    return Prices.or0(poured) + Prices.or0(energy()) + Prices.or0(first()) + Prices.or0(seed);
  }

  /** Seasons until what was bought is paid back; NaN when it never is, or a price is missing. */
  public double payback(Totals totals) {
    return paybackAt(season(totals));
  }

  /** The same at a cost of the season. */
  public double paybackAt(double cost) {
    return seasons(bought, cost);
  }

  /** The least that it can be: the spools' rest is kept for other prints. */
  public double paybackLeast(double cost) {
    return seasons(boughtLeast, cost);
  }

  private double seasons(double spent, double cost) {
    double gain = shop - cost;
    return gain > 0 ? spent / gain : Double.NaN;
  }
}

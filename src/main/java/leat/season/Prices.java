package leat.season;

/**
 * What is poured costs: water, feed, and the acid that hard water asks for. What is not priced, or
 * not needed, is NaN and counts nothing.
 *
 * <p>Source: arithmetic.
 *
 * @param waterPerL money of a litre of water
 * @param feedPerMl money of a mL of concentrate, all parts by their rates
 * @param acidMlPerL acid for a litre of water, mL; NaN when none is used
 * @param acidPerMl money of a mL of acid
 */
public record Prices(double waterPerL, double feedPerMl, double acidMlPerL, double acidPerMl) {

  /** Money of so many litres of water; NaN when it has no price. */
  public double water(double litres) {
    return waterPerL * litres;
  }

  /** Money of so many mL of concentrate; NaN when it has no price. */
  public double feed(double ml) {
    return feedPerMl * ml;
  }

  /** Acid for so many litres of water, mL; NaN when none is used. */
  public double acidMl(double litres) {
    return acidMlPerL * litres;
  }

  /** Money of the acid for so many litres of water; NaN when it has no price or none is used. */
  public double acid(double litres) {
    return acidPerMl * acidMl(litres);
  }

  /** Whether anything has a price. */
  public boolean any() {
    return !Double.isNaN(waterPerL) || !Double.isNaN(feedPerMl) || !Double.isNaN(acid(1));
  }

  /** Money of what is poured: what has no price counts nothing; NaN when nothing has one. */
  public double poured(double litres, double ml) {
    return any() ? or0(water(litres)) + or0(feed(ml)) + or0(acid(litres)) : Double.NaN;
  }

  static double or0(double money) {
    return Double.isNaN(money) ? 0 : money;
  }
}

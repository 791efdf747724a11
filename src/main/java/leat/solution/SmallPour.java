package leat.solution;

import leat.numeric.Impossible;

/**
 * An amount of liquid too small for a measuring cup: counted in drops, or poured from a thinned
 * stock of which ten or a hundred times as much is needed.
 *
 * <p>Thinned means filled up: one part with water up to ten (or a hundred) parts in all, so that
 * volumes that shrink as they mix do not matter.
 *
 * <p>Source: a drop of water is 0.05 mL, twenty a millilitre, by the standard dropper of
 * pharmacopoeias (from memory: 20 drops weigh 1.000 g within 0.050 g); drops of other bottles and
 * liquids differ by half. A syringe of 1 mL reads to 0.02 mL (common practice).
 *
 * @param ml the amount, mL
 * @param drops the same in drops, a whole number; 0 when it is under half a drop
 * @param parts 10, or 100 when a tenth is not enough: parts of the thinned stock to one of the
 *     bottle
 * @param thinnedMl of the stock thinned so, mL
 */
public record SmallPour(double ml, int drops, int parts, double thinnedMl) {
  /** A drop of a dropper bottle, mL. */
  public static final double DROP_ML = 0.05;

  /** Under this it is small: a measuring cup does not show it, mL (common practice). */
  public static final double SYRINGE_ML = 1;

  /** A thinned stock should come to at least this much, mL: half of what a small syringe holds. */
  private static final double WELL_READ_ML = 0.5;

  /**
   * Whether an amount is too small for a measuring cup.
   *
   * @param ml the amount, mL
   * @return false for nothing at all
   */
  public static boolean isSmall(double ml) {
    return ml > 0 && ml < SYRINGE_ML;
  }

  /**
   * Ways to measure an amount.
   *
   * @param ml the amount, mL
   * @return drops and thinned stock
   * @throws Impossible if it is negative
   */
  public static SmallPour of(double ml) {
    Impossible.ifNegative("amount", ml);
    int parts = 10 * ml >= WELL_READ_ML ? 10 : 100;
    return new SmallPour(ml, (int) Math.round(ml / DROP_ML), parts, parts * ml);
  }

  /** Under this a kitchen scale is too coarse, g (common practice). */
  private static final double SMALL_G = 1;

  /** A stock of solids: this much in a litre, g/L. */
  private static final double STOCK_G_L = 100;

  /** Such a stock for a few doses, mL: 10 g in it. */
  public static final double STOCK_ML = 100;

  /** What is dissolved in it, g. */
  public static final double STOCK_G = STOCK_G_L * STOCK_ML / 1000;

  /**
   * Whether a weight is too small for a kitchen scale.
   *
   * @param g the amount, g
   * @return false for nothing at all
   */
  public static boolean isSmallWeight(double g) {
    return g > 0 && g < SMALL_G;
  }

  /**
   * The same amount out of a stock of 100 g in a litre.
   *
   * @param g the amount, g
   * @return of the stock, mL
   */
  public static double ofStockMl(double g) {
    return 1000 * g / STOCK_G_L;
  }
}

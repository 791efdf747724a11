package leat.solution.stock;

import leat.numeric.Impossible;

/**
 * What a water brings into the mix beside the salts.
 *
 * <p>Source: molar masses of IUPAC 2021.
 *
 * @param calcium mmol/L
 * @param sulfate mmol/L
 * @param phosphate mmol/L
 * @param othersZ2 sum over its other ions of c z^2, mmol/L
 */
public record StockWater(double calcium, double sulfate, double phosphate, double othersZ2) {
  /** Molar mass of calcium, g/mol (IUPAC 2021). */
  private static final double CA_G_MOL = 40.078;

  /** Molar mass of magnesium, g/mol (IUPAC 2021). */
  private static final double MG_G_MOL = 24.305;

  /** Molar mass of sulfate, g/mol (IUPAC 2021). */
  private static final double SO4_G_MOL = 96.056;

  /** Water with nothing in it. */
  public static final StockWater PURE = new StockWater(0, 0, 0, 0);

  /**
   * A tap water by its usual analysis; alkalinity counts as hydrogencarbonate.
   *
   * @param calciumMgL calcium, mg/L
   * @param magnesiumMgL magnesium, mg/L
   * @param sulfateMgL sulfate as SO4, mg/L
   * @param alkalinityMeqL alkalinity, meq/L
   */
  public static StockWater tap(
      double calciumMgL, double magnesiumMgL, double sulfateMgL, double alkalinityMeqL) {
    Impossible.ifNegative("calcium", calciumMgL);
    Impossible.ifNegative("magnesium", magnesiumMgL);
    Impossible.ifNegative("sulfate", sulfateMgL);
    Impossible.ifNegative("alkalinity", alkalinityMeqL);
    return new StockWater(
        calciumMgL / CA_G_MOL,
        sulfateMgL / SO4_G_MOL,
        0,
        4 * magnesiumMgL / MG_G_MOL + alkalinityMeqL);
  }
}

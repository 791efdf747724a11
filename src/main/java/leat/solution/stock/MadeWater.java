package leat.solution.stock;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.Salts;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.Weighed;

/**
 * The tower water that stock bottles make: its ions, elements and EC.
 *
 * <p>Source: {@link Recipe}.
 */
public final class MadeWater {
  private MadeWater() {}

  /**
   * What all bottles together make.
   *
   * @param bottles grams in the bottles
   * @param madeL tower water that one bottle of each makes, L
   * @param water ions of that water, mmol/L
   * @return the recipe of the tower water
   * @throws Impossible as {@link Recipe#mix}
   */
  public static Recipe of(List<Stock.Weighed> bottles, double madeL, Ions water) {
    List<Weighed> weighed = new ArrayList<>(bottles.size());
    for (int i = 0; i < bottles.size(); i++) {
      weighed.add(new Weighed(salt(bottles.get(i).salt()), bottles.get(i).grams()));
    }
    return Recipe.mix(weighed, madeL, water);
  }

  private static Salt salt(StockSalt salt) {
    if (salt.other() != null) {
      return salt.other();
    }
    return Salts.of("gypsum".equals(salt.name()) ? "calcium-sulfate-2h2o" : salt.name());
  }

  /**
   * What the bottles add at a rate, by their label.
   *
   * @param rateEc EC that all bottles at label rate add to pure water, mS/cm
   * @param waterEc EC of the water, mS/cm
   * @return EC of the tower water, mS/cm
   */
  public static double labelEc(double rateEc, double waterEc) {
    return Impossible.ifNegative("EC", rateEc) + Impossible.ifNegative("EC", waterEc);
  }

  /**
   * The rate that a bottle asks for.
   *
   * @param bottleL the bottle, L
   * @param madeL tower water that it makes, L
   * @return mL per litre of tower water, mL/L
   * @throws Impossible if the volume made is 0
   */
  public static double rateMlPerL(double bottleL, double madeL) {
    Impossible.unlessPositive("makes", madeL);
    return 1000 * bottleL / madeL;
  }

  /**
   * How far a bottle is thinned.
   *
   * @param bottleL the bottle, L
   * @param madeL tower water that it makes, L
   * @return litres of tower water per litre of bottle, -
   * @throws Impossible if the bottle is 0
   */
  public static double dilution(double bottleL, double madeL) {
    Impossible.unlessPositive("bottle", bottleL);
    return madeL / bottleL;
  }
}

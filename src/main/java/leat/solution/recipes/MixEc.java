package leat.solution.recipes;

import leat.numeric.Impossible;
import leat.solution.Ions;
import leat.solution.conductivity.IonConductivity;
import leat.solution.conductivity.IonEc;

/**
 * EC of a recipe in water whose own EC was measured.
 *
 * <pre>EC = EC(all ions) + measured EC of the water - EC(the water's ions)</pre>
 *
 * <p>What the water's analysis lacks counts by the meter; with no analysis at all the salts stand
 * over the measured EC. Error as {@link IonEc#errorPct}, of all of it.
 *
 * <p>Source: {@link IonConductivity}; the sum is our own, good while both are dilute.
 *
 * @param ec25 EC at 25 C, mS/cm
 * @param low lower end of the stated error, mS/cm
 * @param high upper end, mS/cm
 * @param waterEc measured EC of the water, mS/cm; null when nobody measured it
 */
public record MixEc(double ec25, double low, double high, Double waterEc) {
  /**
   * The EC of a recipe.
   *
   * @param recipe salts and water together
   * @param water its water's ions, mmol/L
   * @param waterEc measured EC of that water, mS/cm; null when unknown
   * @return null when it is a stock bottle, too strong for the sum
   * @throws Impossible if the EC is negative
   */
  public static MixEc of(Recipe recipe, Ions water, Double waterEc) {
    if (recipe.ec() == null) {
      return null;
    }
    boolean tap = recipe.tapWater() || waterEc != null;
    double ec = recipe.ec().ec25();
    if (waterEc != null) {
      double lacking = Impossible.ifNegative("EC", waterEc) - IonConductivity.of(water).ec25();
      ec = Math.max(waterEc, ec + lacking);
    }
    double off = IonEc.errorPct(tap) / 100;
    return new MixEc(ec, ec * (1 - off), ec * (1 + off), waterEc);
  }
}

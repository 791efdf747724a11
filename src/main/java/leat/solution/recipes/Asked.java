package leat.solution.recipes;

import leat.numeric.Impossible;
import leat.solution.Element;
import leat.solution.ElementName;

/**
 * An element asked of a recipe.
 *
 * <p>Source: definition.
 *
 * @param element which; {@link Element#N} is the sum of its forms
 * @param mgPerL how much, mg/L of the element
 */
public record Asked(Element element, double mgPerL) {
  private static final double MOST_MG_L = 1e6;
  private static final double LEAST_MG_L = 1e-6;

  /**
   * Checks the amount.
   *
   * @throws Impossible if negative, over 1e6, or above 0 but under 1e-6
   */
  public Asked {
    Impossible.ifNegative(element.label(), mgPerL);
    Impossible.unlessWithin(
        element.label(), mgPerL, 0, MOST_MG_L, "it cannot be over a kilogram a litre");
    if (mgPerL > 0 && mgPerL < LEAST_MG_L) {
      throw new Impossible(element.label(), "so little cannot be weighed or measured: ask 0");
    }
  }

  /**
   * As typed: an oxide becomes its element.
   *
   * @param name such as "N", "P2O5"
   * @param mgPerL mg/L of what is named
   * @throws Impossible if the name is unknown or the amount negative
   */
  public static Asked of(String name, double mgPerL) {
    ElementName read = ElementName.of(name);
    return new Asked(read.element(), read.toElement(mgPerL));
  }
}

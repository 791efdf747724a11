package leat.solution.recipes;

import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.Label;

/**
 * A bottle of liquid feed as its label tells it; nothing printed gives {@link Label#blank}.
 *
 * <p>Source: arithmetic of {@link Label}. Check values: sheet solution-labels.csv.
 *
 * @param name what it is called
 * @param label its figures
 * @param rateMlPerL rate of the label, mL per litre of finished solution
 * @param densityGMl its density where the per cent are by weight, g/mL; null where they are grams
 *     in 100 mL
 */
public record LabelledBottle(String name, Label label, double rateMlPerL, Double densityGMl) {
  /**
   * @throws Impossible if the rate is not above 0
   */
  public LabelledBottle {
    Impossible.unlessPositive("rate", rateMlPerL);
  }

  /** Whether its per cent are by weight, so that its weight is known. */
  public boolean weighs() {
    return densityGMl != null;
  }

  private Label.Basis basis() {
    return weighs() ? Label.Basis.WEIGHT_IN_WEIGHT : Label.Basis.WEIGHT_IN_VOLUME;
  }

  /** Not looked at where the per cent are grams in 100 mL. */
  private double density() {
    return weighs() ? densityGMl : 0;
  }

  /** Whether a liquid feed seldom has this density. */
  public boolean isOddlyDense() {
    return weighs() && !Label.USUAL_DENSITY.holds(densityGMl);
  }

  /**
   * What is poured at the label's rate.
   *
   * @param litres finished solution, L
   * @return it as a weighed salt, as {@link Weighed#poured}
   */
  public Weighed weighed(double litres) {
    return Weighed.poured(name, label, rateMlPerL, basis(), density(), litres);
  }

  /**
   * What the label's rate takes from the bottle.
   *
   * @param litres finished solution, L
   * @return mL
   */
  public double pouredMl(double litres) {
    return Weighed.pouredMl(rateMlPerL, litres);
  }

  /**
   * What several bottles bring together, each at its label's rate.
   *
   * @param bottles which
   * @return mg/L of each element that a label prints
   */
  public static Elements together(List<LabelledBottle> bottles) {
    Elements all = Elements.UNKNOWN;
    for (LabelledBottle one : bottles) {
      all = sum(all, one.label.ofLiquid(one.rateMlPerL, one.basis(), one.density()));
    }
    return all;
  }

  /**
   * What several bottles bring together, so much poured of each.
   *
   * @param bottles which
   * @param ml poured of each, mL
   * @param litres finished solution, L
   * @return mg/L of each element that a label prints
   */
  public static Elements together(List<LabelledBottle> bottles, double[] ml, double litres) {
    Elements all = Elements.UNKNOWN;
    for (int i = 0; i < ml.length; i++) {
      LabelledBottle one = bottles.get(i);
      all = sum(all, one.label.ofLiquid(ml[i] / litres, one.basis(), one.density()));
    }
    return all;
  }

  /** An element that one of them prints is known: the other's label has none of it. */
  private static Elements sum(Elements one, Elements other) {
    Elements all = one;
    for (int i = 0; i < Element.count(); i++) {
      Element element = Element.at(i);
      if (other.knows(element)) {
        all = all.with(element, one.orElse(element, 0) + other.of(element));
      }
    }
    return all;
  }
}

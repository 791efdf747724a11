package leat.solution;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * Amounts of elements, in mg/L or as mass fractions; each known or unknown. What a label does not
 * print is unknown, what it prints as 0 is 0. Never changes once made.
 *
 * <p>Source: definition.
 */
public final class Elements {
  /** Nothing is known. */
  public static final Elements UNKNOWN =
      new Elements(new double[Element.count()], new boolean[Element.count()]);

  private final double[] amounts;
  private final boolean[] known;

  private Elements(double[] amounts, boolean[] known) {
    this.amounts = amounts;
    this.known = known;
  }

  /** All elements known to be 0. */
  public static Elements zero() {
    boolean[] known = new boolean[Element.count()];
    Arrays.fill(known, true);
    return new Elements(new double[Element.count()], known);
  }

  /** Whether this amount is known. */
  public boolean knows(Element element) {
    return known[element.ordinal()];
  }

  /**
   * The amount of an element.
   *
   * @throws IllegalStateException if it is unknown: ask {@link #knows} first
   */
  public double of(Element element) {
    if (!knows(element)) {
      throw new IllegalStateException(element.label() + " is unknown");
    }
    return amounts[element.ordinal()];
  }

  /**
   * The amount of an element, or another figure when it is unknown.
   *
   * @param element which
   * @param otherwise returned when unknown, in the unit of the amounts
   */
  public double orElse(Element element, double otherwise) {
    return knows(element) ? amounts[element.ordinal()] : otherwise;
  }

  /**
   * These amounts and this one, in place of what was there.
   *
   * @param element which
   * @param amount in the unit of the others, not negative
   * @throws Impossible if negative or not finite
   */
  public Elements with(Element element, double amount) {
    Impossible.ifNegative(element.label(), amount);
    double[] more = amounts.clone();
    boolean[] moreKnown = known.clone();
    more[element.ordinal()] = amount;
    moreKnown[element.ordinal()] = true;
    return new Elements(more, moreKnown);
  }

  /** All amounts times a factor that is not negative. */
  public Elements times(double factor) {
    Impossible.ifNegative("factor", factor);
    double[] scaled = amounts.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return new Elements(scaled, known);
  }

  /** The sum, element by element; known where both are. */
  public Elements plus(Elements other) {
    double[] sum = amounts.clone();
    boolean[] both = known.clone();
    for (int i = 0; i < sum.length; i++) {
      both[i] = known[i] && other.known[i];
      sum[i] = both[i] ? amounts[i] + other.amounts[i] : 0;
    }
    return new Elements(sum, both);
  }

  /**
   * What is known, nothing else added: an unknown element counts as 0, except that nitrogen of an
   * unknown form leaves both forms unknown.
   */
  public Elements unknownAsZero() {
    Elements all = this;
    boolean formless = orElse(Element.N, 0) > 0 && !knows(Element.N_NO3) && !knows(Element.N_NH4);
    for (int i = 0; i < amounts.length; i++) {
      Element element = Element.at(i);
      boolean form = element == Element.N_NO3 || element == Element.N_NH4;
      if (!known[i] && !(form && formless)) {
        all = all.with(element, 0);
      }
    }
    return all;
  }

  /** The sum of all known amounts, nitrogen once. */
  public double sum() {
    double sum = 0;
    for (int i = 0; i < amounts.length; i++) {
      Element element = Element.at(i);
      if (element != Element.N_NO3 && element != Element.N_NH4) {
        sum += amounts[i];
      }
    }
    return sum;
  }
}

package leat.solution;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * A feed's label and what a dose of it brings.
 *
 * <pre>
 * powder            mg/L = 1000 x g/L x pct/100 x factor
 * liquid, % w/w     g/L = mL/L x density, then the same
 * liquid, % w/v     g per 100 mL: mL/L in place of g/L; the density must not be used
 * </pre>
 *
 * <p>Figures of the EU are oxides (P2O5, K2O, CaO, MgO, SO3), elsewhere Ca, Mg, S (seldom P, K) are
 * elements: {@link ElementName} tells them apart. What is not printed stays unknown.
 *
 * <p>Source: arithmetic with {@link Atom} weights. Check values: sheet solution-labels.csv.
 */
public final class Label {
  /** What the per cent of a label are of. */
  public enum Basis {
    /** Grams in 100 g: powders always, liquids often. */
    WEIGHT_IN_WEIGHT,
    /** Grams in 100 mL: some liquids. */
    WEIGHT_IN_VOLUME
  }

  /** Densities of liquid feeds that are believed without question, g/mL: common practice. */
  public static final Validity USUAL_DENSITY = Validity.of("density, g/mL", 0.95, 1.6);

  private static final double MOST_PER_L = 1000; // g/L or mL/L
  private static final double LEAST_DENSITY = 0.5; // g/mL
  private static final double MOST_DENSITY = 3; // g/mL

  private final Elements pct;
  private final double printedPct;

  private Label(Elements pct, double printedPct) {
    this.pct = pct;
    this.printedPct = printedPct;
  }

  /** A label with nothing printed yet. */
  public static Label blank() {
    return new Label(Elements.UNKNOWN, 0);
  }

  /** Whether nothing is printed. */
  public boolean isBlank() {
    return pct == Elements.UNKNOWN;
  }

  /**
   * The three figures that every feed prints: nitrogen, phosphorus as P2O5, potassium as K2O.
   *
   * @param n nitrogen, per cent
   * @param p phosphorus as P2O5, per cent
   * @param k potassium as K2O, per cent
   * @throws Impossible as {@link #with}
   */
  public Label withNpk(double n, double p, double k) {
    return with(ElementName.of("N"), n)
        .with(ElementName.of("P2O5"), p)
        .with(ElementName.of("K2O"), k);
  }

  /**
   * This label and one more figure.
   *
   * @param name element or oxide as printed
   * @param percent figure as printed, per cent
   * @throws Impossible if negative, if printed twice, or if the figures add to over 100 per cent
   */
  public Label with(ElementName name, double percent) {
    Impossible.ifNegative(name.name(), percent);
    if (pct.knows(name.element())) {
      throw new Impossible(name.name(), "it stands twice, or as element and as oxide");
    }
    Elements more = pct.with(name.element(), name.toElement(percent));
    boolean form = name.element() == Element.N_NO3 || name.element() == Element.N_NH4;
    double printed = printedPct + (form ? 0 : percent);
    double forms = more.orElse(Element.N_NO3, 0) + more.orElse(Element.N_NH4, 0);
    double nitrogen = more.knows(Element.N) ? 0 : forms;
    if (printed + nitrogen > 100) {
      throw new Impossible("label", "its figures add to over 100 %");
    }
    return new Label(more, printed);
  }

  /**
   * Mass fractions of the elements, -; all nitrogen is the sum of its forms when only they are
   * printed. What is not printed is unknown.
   *
   * @throws Impossible if the forms of nitrogen add to more than all of it
   */
  public Elements fractions() {
    return Salt.withTotalNitrogen(pct.times(0.01));
  }

  /**
   * What a powder brings.
   *
   * @param gramsPerL dose, g/L
   * @return mg/L of each element printed
   * @throws Impossible if negative or over 3000 g/L
   */
  public Elements ofPowder(double gramsPerL) {
    Impossible.unlessWithin(
        "dose",
        gramsPerL,
        0,
        MOST_PER_L * MOST_DENSITY,
        "a dose of at most 3 kg per litre is needed");
    return fractions().times(1000 * gramsPerL);
  }

  /**
   * What a liquid brings.
   *
   * @param millilitresPerL dose, mL/L
   * @param basis what the per cent are of
   * @param density g/mL; not used, and may be anything, for weight in volume
   * @return mg/L of each element printed
   * @throws Impossible if the dose is not 0 to 1000 mL/L, or a needed density not 0.5 to 3
   */
  public Elements ofLiquid(double millilitresPerL, Basis basis, double density) {
    return ofPowder(gramsPerL(millilitresPerL, basis, density));
  }

  /**
   * What a powder of the same figures would weigh for a dose of the liquid.
   *
   * @param millilitresPerL dose, mL/L
   * @param basis what the per cent are of
   * @param density g/mL; not used, and may be anything, for weight in volume
   * @return g/L
   * @throws Impossible if the dose is not 0 to 1000 mL/L, or a needed density not 0.5 to 3
   */
  public static double gramsPerL(double millilitresPerL, Basis basis, double density) {
    Impossible.unlessWithin(
        "dose", millilitresPerL, 0, MOST_PER_L, "a dose between 0 and 1000 mL per litre is needed");
    if (basis == Basis.WEIGHT_IN_VOLUME) {
      return millilitresPerL;
    }
    Impossible.unlessWithin(
        "density", density, LEAST_DENSITY, MOST_DENSITY, "a feed weighs 0.5 to 3 g per mL");
    return millilitresPerL * density;
  }

  /**
   * This label as a salt for recipes.
   *
   * @param name kebab-case
   * @throws Impossible as {@link Salt#own}
   */
  public Salt asSalt(String name) {
    return Salt.own(name, fractions());
  }
}

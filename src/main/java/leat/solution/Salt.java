package leat.solution;

import leat.numeric.Impossible;

/**
 * One salt, chelate or own product that is weighed: what it brings per gram, what ions it leaves,
 * how much water can hold.
 *
 * <p>Composition follows from the formula; chelates and own products go by stated content, and the
 * label of the bag wins. The charge of molybdate brought by ammonium molybdate is left out; borax's
 * counts as bicarbonate.
 *
 * <p>Source: {@link Formula}, {@link Salts}. Check values: sheet solution-salts.csv.
 */
public final class Salt {
  /** Temperatures of {@link #solubility}, C. */
  public static final int[] SOLUBILITY_CELSIUS = {0, 10, 20};

  private static final double GRAMS_PER_KILOGRAM = 1000;

  private final String name;
  private final String formula;
  private final double molarMass;
  private final Elements fractions;
  private final Ions perGram;
  private final boolean ionsKnown;
  private final double[] solubility;
  private final String note;
  private final double pricePerKg;

  Salt(
      String name,
      String formula,
      double molarMass,
      Elements fractions,
      Ions perGram,
      boolean ionsKnown,
      double[] solubility,
      String note,
      double pricePerKg) {
    this.name = name;
    this.formula = formula;
    this.molarMass = molarMass;
    this.fractions = fractions;
    this.perGram = perGram;
    this.ionsKnown = ionsKnown;
    this.solubility = solubility;
    this.note = note;
    this.pricePerKg = pricePerKg;
  }

  /**
   * A salt or powder of the user's own, by the content on its label.
   *
   * <p>Its ions are inferred for the charge balance and the EC: nitrate, ammonium, H2PO4, sulfate
   * and the metals as ions; iron, manganese, zinc and copper as chelates, without charge. Nitrogen
   * of unknown form carries no ions here, and {@link #ionsKnown} is false.
   *
   * @param name kebab-case
   * @param fractions mass fractions of elements, -, not oxides; what is not printed is unknown
   * @throws Impossible if they add to over 1, or the forms of nitrogen to more than all of it
   */
  public static Salt own(String name, Elements fractions) {
    Elements all = withTotalNitrogen(fractions);
    if (all.sum() > 1) {
      throw new Impossible("salt", "its elements add to over 100 %");
    }
    boolean formless = all.orElse(Element.N, 0) > 0 && formsOf(all) == 0;
    return new Salt(
        name, "", 0, all, inferred(all), !formless, new double[3], "own product, by its label", -1);
  }

  /** Those fractions with N as the sum of its forms, if only the forms are known. */
  static Elements withTotalNitrogen(Elements fractions) {
    double forms = formsOf(fractions);
    boolean someForm = fractions.knows(Element.N_NO3) || fractions.knows(Element.N_NH4);
    if (!fractions.knows(Element.N)) {
      return someForm ? fractions.with(Element.N, forms) : fractions;
    }
    if (forms > fractions.of(Element.N) + LABEL_ROUNDING) {
      throw new Impossible("N", "nitrate and ammonium nitrogen add to more than all nitrogen");
    }
    return fractions;
  }

  /** Labels print one decimal of a per cent: two forms may exceed the total by a rounding. */
  private static final double LABEL_ROUNDING = 0.0011;

  private static double formsOf(Elements fractions) {
    return fractions.orElse(Element.N_NO3, 0) + fractions.orElse(Element.N_NH4, 0);
  }

  private static Ions inferred(Elements fractions) {
    Ions ions = Ions.NONE;
    for (int i = 0; i < Ion.count(); i++) {
      Ion ion = Ion.at(i);
      Element element = ion.element();
      boolean chelated = ion == Ion.FE || ion == Ion.MN || ion == Ion.ZN || ion == Ion.CU;
      if (element != null && ion != Ion.HPO4 && !chelated) {
        double perGram = fractions.orElse(element, 0) / element.atom().weight();
        ions = ions.and(ion, GRAMS_PER_KILOGRAM * perGram);
      }
    }
    return ions;
  }

  /**
   * The same salt with a price.
   *
   * @param perKg price, currency/kg
   * @throws Impossible if negative
   */
  public Salt withPrice(double perKg) {
    Impossible.ifNegative("price", perKg);
    return new Salt(
        name, formula, molarMass, fractions, perGram, ionsKnown, solubility, note, perKg);
  }

  /** Name, kebab-case. */
  public String name() {
    return name;
  }

  /** Formula as sold; empty for chelates and own products. */
  public String formula() {
    return formula;
  }

  /** Molar mass as sold, g/mol; 0 when there is no formula. */
  public double molarMass() {
    return molarMass;
  }

  /** Mass fractions of the elements, -. */
  public Elements fractions() {
    return fractions;
  }

  /** Mass fraction of an element, -; 0 when its label does not print it. */
  public double fraction(Element element) {
    return fractions.orElse(element, 0);
  }

  /** Ions that one gram brings, mmol/g. */
  public Ions ionsPerGram() {
    return perGram;
  }

  /** Whether all its charge is known; false for own products with nitrogen of unknown form. */
  public boolean ionsKnown() {
    return ionsKnown;
  }

  /** Whether {@link #solubility} is known at 0, 10, 20 C (index 0, 1, 2). */
  public boolean knowsSolubility(int index) {
    return solubility[index] > 0;
  }

  /**
   * Grams as sold that a kilogram of <b>added</b> water dissolves; crystal water thins the
   * solution, so hydrates go to thousands. Neither grams per litre of solution nor a stock
   * strength.
   *
   * @param index 0, 1, 2 for 0, 10, 20 C
   * @return g/kg of water added; 0 when unknown
   */
  public double solubility(int index) {
    return solubility[index];
  }

  /** A remark for the list, such as "raises pH"; may be empty. */
  public String note() {
    return note;
  }

  /** Whether it has a price. */
  public boolean hasPrice() {
    return pricePerKg >= 0;
  }

  /** Price, currency/kg; 0 when it has none. */
  public double pricePerKg() {
    return hasPrice() ? pricePerKg : 0;
  }
}

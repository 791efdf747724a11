package leat.solution.stock;

import leat.numeric.Impossible;
import leat.solution.Salt;

/**
 * A salt as the stock bottle sees it: how much dissolves, and what its calcium, sulfate and
 * phosphate do there.
 *
 * <p>Source: see {@link StockSalts} for the table; a user's own salt names its own.
 */
public final class StockSalt {
  private final String name;
  private final double soldGPerMol;
  private final double anhydrousGPerMol;
  private final double[] celsius;
  private final double[] gPer100gWater;
  private final double calcium;
  private final double sulfate;
  private final double phosphate;
  private final double othersZ2;
  private final String ions;
  private final Salt other;

  /**
   * A salt.
   *
   * @param name as it is typed
   * @param soldGPerMol molar mass as sold, with its crystal water, g/mol
   * @param anhydrousGPerMol molar mass without it, g/mol
   * @param celsius temperatures at which the solubility is known, rising, C; empty when unknown
   * @param gPer100gWater anhydrous salt that 100 g of water dissolve at each, g
   * @param calcium Ca2+ a formula, -
   * @param sulfate SO4 2- a formula, -
   * @param phosphate phosphate a formula, -
   * @param othersZ2 sum of charge squared over the other ions of a formula, -
   * @param ions the ions in words, divided by blanks, for the common-ion test: "K NO3"
   */
  public StockSalt(
      String name,
      double soldGPerMol,
      double anhydrousGPerMol,
      double[] celsius,
      double[] gPer100gWater,
      double calcium,
      double sulfate,
      double phosphate,
      double othersZ2,
      String ions) {
    this(
        name,
        soldGPerMol,
        anhydrousGPerMol,
        celsius,
        gPer100gWater,
        calcium,
        sulfate,
        phosphate,
        othersZ2,
        ions,
        null);
  }

  /**
   * A salt of the long list or an own product; as the other constructor, with
   *
   * @param other that salt; null for one of {@link StockSalts}
   */
  public StockSalt(
      String name,
      double soldGPerMol,
      double anhydrousGPerMol,
      double[] celsius,
      double[] gPer100gWater,
      double calcium,
      double sulfate,
      double phosphate,
      double othersZ2,
      String ions,
      Salt other) {
    this.name = name;
    this.soldGPerMol = soldGPerMol;
    this.anhydrousGPerMol = anhydrousGPerMol;
    this.celsius = celsius.clone();
    this.gPer100gWater = gPer100gWater.clone();
    this.calcium = calcium;
    this.sulfate = sulfate;
    this.phosphate = phosphate;
    this.othersZ2 = othersZ2;
    this.ions = ions;
    this.other = other;
  }

  /** The salt or own product of the long list that this is; null for one of {@link StockSalts}. */
  public Salt other() {
    return other;
  }

  /** The name as it is typed. */
  public String name() {
    return name;
  }

  /** Molar mass as sold, g/mol. */
  public double soldGPerMol() {
    return soldGPerMol;
  }

  /** Molar mass without crystal water, g/mol. */
  public double anhydrousGPerMol() {
    return anhydrousGPerMol;
  }

  double calcium() {
    return calcium;
  }

  double sulfate() {
    return sulfate;
  }

  double phosphate() {
    return phosphate;
  }

  double othersZ2() {
    return othersZ2;
  }

  /** Whether it brings calcium. */
  public boolean hasCalcium() {
    return calcium > 0;
  }

  /** Whether it brings sulfate or phosphate, which calcium must not meet undiluted. */
  public boolean hasSulfateOrPhosphate() {
    return sulfate > 0 || phosphate > 0;
  }

  /** Whether its solubility is known at all. */
  public boolean solubilityKnown() {
    return celsius.length > 0;
  }

  /** Whether a temperature lies within the table; outside, the nearest known value is taken. */
  public boolean solubilityKnownAt(double at) {
    return celsius.length > 0 && at >= celsius[0] && at <= celsius[celsius.length - 1];
  }

  /**
   * Solubility, straight between the table's temperatures. Below or above them the nearest value is
   * taken and {@link #solubilityKnownAt} is false; above, that is cautious, since all of these
   * dissolve better in warmth.
   *
   * @param at temperature, C
   * @return anhydrous salt that 100 g of water dissolve, g
   * @throws Impossible if no solubility is known
   */
  public double solubility(double at) {
    if (celsius.length == 0) {
      throw new Impossible("salt", "its solubility is not known");
    }
    if (at <= celsius[0]) {
      return gPer100gWater[0];
    }
    for (int i = 1; i < celsius.length; i++) {
      if (at <= celsius[i]) {
        double part = (at - celsius[i - 1]) / (celsius[i] - celsius[i - 1]);
        return gPer100gWater[i - 1] + part * (gPer100gWater[i] - gPer100gWater[i - 1]);
      }
    }
    return gPer100gWater[gPer100gWater.length - 1];
  }

  /**
   * An ion that this salt and another both bring, or null: salts with a common ion hinder each
   * other.
   */
  public String commonIon(StockSalt other) {
    int from = 0;
    while (from < ions.length()) {
      int to = ions.indexOf(' ', from);
      to = to < 0 ? ions.length() : to;
      String ion = ions.substring(from, to);
      if (other.brings(ion)) {
        return ion;
      }
      from = to + 1;
    }
    return null;
  }

  boolean brings(String ion) {
    return (" " + ions + " ").contains(" " + ion + " ");
  }
}

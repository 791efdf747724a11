package leat.solution;

/**
 * Standard atomic weights of the elements that occur in feed salts.
 *
 * <p>Source: IUPAC 2021 abridged standard atomic weights, conventional values; mononuclidic ones
 * (Na, P, Mn) to eight digits. Check values: sheet solution-salts.csv (molar masses).
 */
public enum Atom {
  /** Hydrogen. */
  H("H", 1.008),
  /** Boron. */
  B("B", 10.81),
  /** Carbon. */
  C("C", 12.011),
  /** Nitrogen. */
  N("N", 14.007),
  /** Oxygen. */
  O("O", 15.999),
  /** Sodium. */
  NA("Na", 22.989769),
  /** Magnesium. */
  MG("Mg", 24.305),
  /** Phosphorus. */
  P("P", 30.973762),
  /** Sulfur. */
  S("S", 32.06),
  /** Chlorine. */
  CL("Cl", 35.45),
  /** Potassium. */
  K("K", 39.0983),
  /** Calcium. */
  CA("Ca", 40.078),
  /** Manganese. */
  MN("Mn", 54.938043),
  /** Iron. */
  FE("Fe", 55.845),
  /** Copper. */
  CU("Cu", 63.546),
  /** Zinc. */
  ZN("Zn", 65.38),
  /** Molybdenum. */
  MO("Mo", 95.95);

  private static final Atom[] ALL = values();

  private final String symbol;
  private final double weight;

  Atom(String symbol, double weight) {
    this.symbol = symbol;
    this.weight = weight;
  }

  /** Atomic weight, g/mol. */
  public double weight() {
    return weight;
  }

  /** How many there are. */
  static int count() {
    return ALL.length;
  }

  static Atom at(int ordinal) {
    return ALL[ordinal];
  }

  /** The atom of that symbol, or null. */
  static Atom ofSymbol(String symbol) {
    for (Atom atom : ALL) {
      if (atom.symbol.equals(symbol)) {
        return atom;
      }
    }
    return null;
  }
}

package leat.solution;

/**
 * What is counted in a feed: elements, with nitrogen as nitrate and as ammonium apart.
 *
 * <p>Amounts are always of the element: N-NO3 is nitrogen in nitrate, not nitrate (which weighs
 * 4.43 times as much). {@link #N} is all nitrogen, its two forms included.
 *
 * <p>Source: common usage of labels and laboratories. Check values: sheet solution-salts.csv.
 */
public enum Element {
  /** All nitrogen, whatever its form. */
  N("N", Atom.N),
  /** Nitrogen as nitrate. */
  N_NO3("N-NO3", Atom.N),
  /** Nitrogen as ammonium. */
  N_NH4("N-NH4", Atom.N),
  /** Phosphorus. */
  P("P", Atom.P),
  /** Potassium. */
  K("K", Atom.K),
  /** Calcium. */
  CA("Ca", Atom.CA),
  /** Magnesium. */
  MG("Mg", Atom.MG),
  /** Sulfur. */
  S("S", Atom.S),
  /** Chlorine, as chloride. */
  CL("Cl", Atom.CL),
  /** Sodium. */
  NA("Na", Atom.NA),
  /** Iron. */
  FE("Fe", Atom.FE),
  /** Manganese. */
  MN("Mn", Atom.MN),
  /** Zinc. */
  ZN("Zn", Atom.ZN),
  /** Copper. */
  CU("Cu", Atom.CU),
  /** Boron. */
  B("B", Atom.B),
  /** Molybdenum. */
  MO("Mo", Atom.MO);

  private static final Element[] ALL = values();

  private final String label;
  private final Atom atom;

  Element(String label, Atom atom) {
    this.label = label;
    this.atom = atom;
  }

  /** As printed, such as "N-NO3" or "Ca". */
  public String label() {
    return label;
  }

  /** The atom that is weighed. */
  public Atom atom() {
    return atom;
  }

  /** How many there are. */
  public static int count() {
    return ALL.length;
  }

  /** The element at a place in the order of declaration, which is the order to print in. */
  public static Element at(int ordinal) {
    return ALL[ordinal];
  }
}

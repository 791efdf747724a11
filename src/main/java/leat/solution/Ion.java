package leat.solution;

/**
 * Ions of water and feed: charge and limiting <b>molar</b> conductivity at 25 C.
 *
 * <p>Handbooks often list equivalent conductivities (1/2 Ca 59.5): doubled here for two charges.
 * Chelates and boric acid carry next to nothing and are left out.
 *
 * <p>Source: CRC Handbook, ionic conductivity table, from memory; H, K, Na, NH4, Ca, Mg, Mn, Zn
 * agree within 0.3 % with Lange's Handbook table 8.32, Cl and OH with values from diffusion
 * coefficients. Pairing constants MSO4(aq): common geochemical databases, from memory. Check
 * values: sheet solution-ec-ions.csv.
 */
public enum Ion {
  /** Hydrogen ion. */
  H("H", 1, 349.65, 0),
  /** Potassium. */
  K("K", 1, 73.48, 0),
  /** Sodium. */
  NA("Na", 1, 50.08, 0),
  /** Ammonium. */
  NH4("NH4", 1, 73.5, 0),
  /** Calcium. */
  CA("Ca", 2, 119.0, 2.30),
  /** Magnesium. */
  MG("Mg", 2, 106.1, 2.37),
  /** Manganese. */
  MN("Mn", 2, 107.0, 2.25),
  /** Zinc. */
  ZN("Zn", 2, 105.6, 2.37),
  /** Copper. */
  CU("Cu", 2, 107.2, 2.31),
  /** Iron, not chelated. */
  FE("Fe", 2, 108.0, 2.25),
  /** Nitrate. */
  NO3("NO3", -1, 71.42, 0),
  /** Chloride. */
  CL("Cl", -1, 76.31, 0),
  /** Sulfate. */
  SO4("SO4", -2, 160.0, 0),
  /** Dihydrogen phosphate: the phosphate of a feed at pH 5 to 7. */
  H2PO4("H2PO4", -1, 36.0, 0),
  /** Hydrogen phosphate. */
  HPO4("HPO4", -2, 114.0, 0),
  /** Bicarbonate: nearly all the alkalinity of tap water. */
  HCO3("HCO3", -1, 44.5, 0),
  /** Carbonate. */
  CO3("CO3", -2, 138.6, 0),
  /** Hydroxide. */
  OH("OH", -1, 198.0, 0),
  /** Molybdate. */
  MOO4("MoO4", -2, 149.0, 0);

  private static final Ion[] ALL = values();

  private final String symbol;
  private final int charge;
  private final double conductivity;
  private final double log10Pairing;

  Ion(String symbol, int charge, double conductivity, double log10Pairing) {
    this.symbol = symbol;
    this.charge = charge;
    this.conductivity = conductivity;
    this.log10Pairing = log10Pairing;
  }

  /** Symbol without charge, such as "NO3". */
  public String symbol() {
    return symbol;
  }

  /** Charge number with sign. */
  public int charge() {
    return charge;
  }

  /** Limiting molar conductivity at 25 C, S cm2/mol. */
  public double molarConductivity() {
    return conductivity;
  }

  /** Whether it pairs with sulfate to an uncharged MSO4. */
  public boolean pairsWithSulfate() {
    return log10Pairing > 0;
  }

  /** log10 of the association constant with sulfate, L/mol; 0 when it does not pair. */
  public double log10Pairing() {
    return log10Pairing;
  }

  /** Molar mass, g/mol. */
  public double molarMass() {
    return Formula.of(symbol).molarMass();
  }

  /** The element a recipe counts in it, or null (H, OH, bicarbonate, carbonate). */
  public Element element() {
    switch (this) {
      case NO3:
        return Element.N_NO3;
      case NH4:
        return Element.N_NH4;
      case H2PO4:
      case HPO4:
        return Element.P;
      case SO4:
        return Element.S;
      case MOO4:
        return Element.MO;
      case H:
      case OH:
      case HCO3:
      case CO3:
        return null;
      default:
        return ElementName.of(symbol).element();
    }
  }

  /**
   * Charges, by number, of the ion in which water has an element; nitrogen has one in both of its
   * forms, and boron none.
   */
  public static int chargesOf(Element element) {
    Element sought = element == Element.N ? Element.N_NO3 : element;
    for (int i = 0; i < ALL.length; i++) {
      if (ALL[i].element() == sought) {
        return Math.abs(ALL[i].charge());
      }
    }
    return 0;
  }

  /** How many there are. */
  public static int count() {
    return ALL.length;
  }

  /** The ion at a place in the order of declaration, which is the order to print in. */
  public static Ion at(int ordinal) {
    return ALL[ordinal];
  }

  /** The ion of that symbol, or null. */
  static Ion ofSymbol(String symbol) {
    for (Ion ion : ALL) {
      if (ion.symbol.equals(symbol)) {
        return ion;
      }
    }
    return null;
  }
}

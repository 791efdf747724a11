package leat.solution;

import leat.numeric.Impossible;

/**
 * A name under which an element is printed or asked: the element itself or its oxide.
 *
 * <pre>P = 0.4364 P2O5   K = 0.8301 K2O   Ca = 0.7147 CaO   Mg = 0.6030 MgO   S = 0.4005 SO3</pre>
 *
 * <p>Source: factors from {@link Atom} weights. Check values: sheet solution-labels.csv.
 *
 * @param name as typed, such as "P2O5"
 * @param element the element behind it
 * @param factor mass of the element per mass of what is named, -
 * @param isOxide whether the name is an oxide's
 */
public record ElementName(String name, Element element, double factor, boolean isOxide) {
  private static final String[] OXIDES = {"P2O5", "K2O", "CaO", "MgO", "SO3", "Na2O"};
  private static final Element[] OF_OXIDE = {
    Element.P, Element.K, Element.CA, Element.MG, Element.S, Element.NA
  };

  /**
   * Reads a name.
   *
   * @param name such as "N", "N-NO3", "NH4-N", "Ca", "K2O"
   * @throws Impossible if it is no name of an element or oxide; ions are refused with the reason
   */
  public static ElementName of(String name) {
    for (int i = 0; i < Element.count(); i++) {
      if (Element.at(i).label().equals(name)) {
        return new ElementName(name, Element.at(i), 1, false);
      }
    }
    for (int i = 0; i < OXIDES.length; i++) {
      if (OXIDES[i].equals(name)) {
        Formula oxide = Formula.of(name);
        Atom atom = OF_OXIDE[i].atom();
        double factor = oxide.count(atom) * atom.weight() / oxide.molarMass();
        return new ElementName(name, OF_OXIDE[i], factor, true);
      }
    }
    if (name.equals("NO3-N")) {
      return new ElementName(name, Element.N_NO3, 1, false);
    }
    if (name.equals("NH4-N")) {
      return new ElementName(name, Element.N_NH4, 1, false);
    }
    throw unknown(name);
  }

  private static Impossible unknown(String name) {
    switch (name) {
      case "NO3":
        return new Impossible("ion", "NO3 is the ion, 4.43 times its nitrogen: say N-NO3");
      case "NH4":
        return new Impossible("ion", "NH4 is the ion, 1.29 times its nitrogen: say N-NH4");
      case "NO4":
        return new Impossible("ion", "there is no NO4; nitrate is N-NO3, ammonium N-NH4");
      case "PO4":
      case "H2PO4":
        return new Impossible("ion", "that is the ion, about 3 times its phosphorus: say P");
      case "SO4":
        return new Impossible("ion", "SO4 is the ion, 3 times its sulfur: say S");
      default:
        return new Impossible(
            "element", "an element or oxide is needed, such as N, N-NO3, K, P2O5");
    }
  }

  /** All names that {@link #of} reads, for the nearest one to a typing error. */
  public static String[] names() {
    String[] names = new String[Element.count() + OXIDES.length + 2];
    for (int i = 0; i < Element.count(); i++) {
      names[i] = Element.at(i).label();
    }
    System.arraycopy(OXIDES, 0, names, Element.count(), OXIDES.length);
    names[names.length - 2] = "NO3-N";
    names[names.length - 1] = "NH4-N";
    return names;
  }

  /**
   * The element in an amount of what is named.
   *
   * @param amount of the oxide or element, mg/L or per cent
   * @return amount of the element, in the same unit
   */
  public double toElement(double amount) {
    return amount * factor;
  }
}

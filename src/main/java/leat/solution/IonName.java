package leat.solution;

import leat.numeric.Impossible;

/**
 * A name under which laboratories report an ion: the ion itself ("NO3", "nitrate") or the element
 * in it ("N-NO3", "P"). The difference is a factor of 4.43 for nitrate.
 *
 * <p>Source: definition, with {@link Atom} weights.
 *
 * @param name as typed
 * @param ion the ion that is in the water
 * @param milligramsPerMillimole mg of what is named per mmol of the ion
 * @param asElement whether the name counts the element only
 */
public record IonName(String name, Ion ion, double milligramsPerMillimole, boolean asElement) {
  private static final String[] WORDS = {
    "potassium",
    "sodium",
    "ammonium",
    "calcium",
    "magnesium",
    "manganese",
    "zinc",
    "copper",
    "iron",
    "nitrate",
    "chloride",
    "sulfate",
    "bicarbonate",
    "carbonate",
    "molybdate"
  };
  private static final Ion[] OF_WORD = {
    Ion.K, Ion.NA, Ion.NH4, Ion.CA, Ion.MG, Ion.MN, Ion.ZN, Ion.CU, Ion.FE, Ion.NO3, Ion.CL,
    Ion.SO4, Ion.HCO3, Ion.CO3, Ion.MOO4
  };
  private static final String[] AS_ELEMENT = {
    "N-NO3", "NO3-N", "N-NH4", "NH4-N", "P", "P-PO4", "PO4-P", "S", "S-SO4", "SO4-S", "Mo"
  };
  private static final Ion[] OF_ELEMENT = {
    Ion.NO3, Ion.NO3, Ion.NH4, Ion.NH4, Ion.H2PO4, Ion.H2PO4, Ion.H2PO4, Ion.SO4, Ion.SO4, Ion.SO4,
    Ion.MOO4
  };

  /**
   * Reads a name.
   *
   * @param name such as "NO3", "N-NO3", "Ca", "calcium", "SO4", "S"
   * @throws Impossible if it is no ion's name; "N" alone is refused, for it may be either form
   */
  public static IonName of(String name) {
    Ion ion = Ion.ofSymbol(name);
    if (ion != null) {
      return new IonName(name, ion, ion.molarMass(), false);
    }
    for (int i = 0; i < WORDS.length; i++) {
      if (WORDS[i].equals(name)) {
        return new IonName(name, OF_WORD[i], OF_WORD[i].molarMass(), false);
      }
    }
    for (int i = 0; i < AS_ELEMENT.length; i++) {
      if (AS_ELEMENT[i].equals(name)) {
        double mass = OF_ELEMENT[i].element().atom().weight();
        return new IonName(name, OF_ELEMENT[i], mass, true);
      }
    }
    if (name.equals("N")) {
      throw new Impossible("ion", "nitrogen may be nitrate or ammonium: say N-NO3 or N-NH4");
    }
    throw new Impossible("ion", "an ion is needed, such as NO3, N-NO3, K, Ca, SO4 or HCO3");
  }

  /** All names that {@link #of} reads, for the nearest one to a typing error. */
  public static String[] names() {
    String[] names = new String[Ion.count() + WORDS.length + AS_ELEMENT.length];
    for (int i = 0; i < Ion.count(); i++) {
      names[i] = Ion.at(i).symbol();
    }
    System.arraycopy(WORDS, 0, names, Ion.count(), WORDS.length);
    System.arraycopy(AS_ELEMENT, 0, names, Ion.count() + WORDS.length, AS_ELEMENT.length);
    return names;
  }

  /**
   * Millimoles of the ion in a weight of what is named.
   *
   * @param mgPerL concentration as named, mg/L
   * @return mmol/L of the ion
   * @throws Impossible if negative
   */
  public double millimoles(double mgPerL) {
    return Impossible.ifNegative(name, mgPerL) / milligramsPerMillimole;
  }
}

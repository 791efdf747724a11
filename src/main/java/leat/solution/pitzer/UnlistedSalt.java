package leat.solution.pitzer;

import leat.solution.Element;
import leat.solution.Ion;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.stock.StockSalt;

/**
 * A salt or own product that the table of stock bottles lacks, as the bottle sees it: its ions are
 * known, its solubility is not.
 *
 * <p>Chelated iron goes with calcium, as the chelates of the table do, unless the product brings
 * sulfate or phosphate.
 *
 * <p>Source: {@link Salt}.
 */
public final class UnlistedSalt {
  /** Stands for a mole where there is no formula, g. */
  private static final double KILOGRAM = 1000;

  private static final double[] UNKNOWN = {};

  private UnlistedSalt() {}

  /** That salt, with a share that stays unknown. */
  public static StockSalt of(Salt salt) {
    double mass = salt.molarMass() > 0 ? salt.molarMass() : KILOGRAM;
    Ions ions = salt.ionsPerGram().times(mass / KILOGRAM);
    double sulfate = ions.of(Ion.SO4);
    double phosphate = ions.of(Ion.H2PO4) + ions.of(Ion.HPO4);
    double othersZ2 = 0;
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < Ion.count(); i++) {
      Ion ion = Ion.at(i);
      if (ions.of(ion) > 0) {
        boolean own = ion == Ion.CA || ion == Ion.SO4 || ion == Ion.H2PO4 || ion == Ion.HPO4;
        othersZ2 += own ? 0 : ions.of(ion) * ion.charge() * ion.charge();
        words.append(words.length() == 0 ? "" : " ").append(word(ion));
      }
    }
    if (salt.fraction(Element.FE) > 0 && ions.of(Ion.FE) == 0 && sulfate + phosphate == 0) {
      words.append(words.length() == 0 ? "" : " ").append("Fe");
    }
    double calcium = ions.of(Ion.CA);
    String brought = words.toString();
    return new StockSalt(
        salt.name(),
        mass,
        mass,
        UNKNOWN,
        UNKNOWN,
        calcium,
        sulfate,
        phosphate,
        othersZ2,
        brought,
        salt);
  }

  /** As the table of stock bottles writes it; "Fe" stands for chelates there. */
  private static String word(Ion ion) {
    return ion == Ion.H2PO4 || ion == Ion.HPO4 ? "PO4" : ion == Ion.FE ? "Fe2" : ion.symbol();
  }
}

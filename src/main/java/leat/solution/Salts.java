package leat.solution;

import leat.numeric.Impossible;

/**
 * The table of salts, chelates and acids of molybdenum that growers weigh.
 *
 * <p>Greenhouse-grade calcium nitrate is the double salt 5Ca(NO3)2.NH4NO3.10H2O, not the
 * tetrahydrate: it brings ammonium and more calcium a gram.
 *
 * <p>Solubility as sold from the anhydrous figures: with a g anhydrous per kg of water, M and Ma
 * molar masses as sold and anhydrous,
 *
 * <pre>s = a M/Ma / (1 - a (M/Ma - 1)/1000)</pre>
 *
 * <p>Source: formulas with IUPAC 2021 weights; anhydrous solubilities from common handbook tables,
 * from memory; contents of chelates and solubilities given as sold are common practice: the label
 * wins. Check values: sheet solution-salts.csv.
 */
public final class Salts {
  // name, formula, ions per formula, anhydrous g/kg of water at 0;10;20 C, note
  private static final String[][] OF_FORMULA = {
    {"calcium-nitrate-4h2o", "Ca(NO3)2.4H2O", "Ca=1;NO3=2", "1020;1150;1290", ""},
    {
      "calcium-nitrate-greenhouse",
      "5Ca(NO3)2.NH4NO3.10H2O",
      "Ca=5;NO3=11;NH4=1",
      "as sold 1100",
      "double salt of the trade; labels say about 15.5 % N and 19 % Ca"
    },
    {"potassium-nitrate", "KNO3", "K=1;NO3=1", "133;209;316", ""},
    {
      "ammonium-nitrate",
      "NH4NO3",
      "NH4=1;NO3=1",
      "1180;1500;1920",
      "oxidiser; sale restricted in many countries"
    },
    {"magnesium-nitrate-6h2o", "Mg(NO3)2.6H2O", "Mg=1;NO3=2", "621;660;695", ""},
    {"sodium-nitrate", "NaNO3", "Na=1;NO3=1", "730;808;876", "brings sodium"},
    {"monopotassium-phosphate", "KH2PO4", "K=1;H2PO4=1", "148;183;226", ""},
    {"dipotassium-phosphate", "K2HPO4", "K=2;HPO4=1", "0;0;1500", "raises pH"},
    {"monoammonium-phosphate", "NH4H2PO4", "NH4=1;H2PO4=1", "227;295;374", ""},
    {"diammonium-phosphate", "(NH4)2HPO4", "NH4=2;HPO4=1", "429;629;689", "raises pH"},
    {
      "magnesium-sulfate-7h2o", "MgSO4.7H2O", "Mg=1;SO4=1", "220;282;337", "bitter salt, Epsom salt"
    },
    {
      "magnesium-sulfate-1h2o",
      "MgSO4.H2O",
      "Mg=1;SO4=1",
      "220;282;337",
      "kieserite: dissolves slowly"
    },
    {"potassium-sulfate", "K2SO4", "K=2;SO4=1", "74;93;111", ""},
    {"ammonium-sulfate", "(NH4)2SO4", "NH4=2;SO4=1", "706;730;754", ""},
    {"calcium-chloride-2h2o", "CaCl2.2H2O", "Ca=1;Cl=2", "595;647;745", "warms the water"},
    {
      "calcium-sulfate-2h2o",
      "CaSO4.2H2O",
      "Ca=1;SO4=1",
      "1.76;1.93;2.02",
      "gypsum: barely dissolves"
    },
    {"potassium-chloride", "KCl", "K=1;Cl=1", "280;312;342", ""},
    {"magnesium-chloride-6h2o", "MgCl2.6H2O", "Mg=1;Cl=2", "529;536;546", ""},
    {"sodium-chloride", "NaCl", "Na=1;Cl=1", "356.5;357.2;358.9", "for standards, not for feeding"},
    {"potassium-bicarbonate", "KHCO3", "K=1;HCO3=1", "225;274;337", "raises alkalinity"},
    {
      "iron-sulfate-7h2o",
      "FeSO4.7H2O",
      "Fe=1;SO4=1",
      "156.5;205;265",
      "unchelated: falls out above pH 6"
    },
    {"manganese-sulfate-1h2o", "MnSO4.H2O", "Mn=1;SO4=1", "529;597;629", ""},
    {"manganese-chloride-4h2o", "MnCl2.4H2O", "Mn=1;Cl=2", "634;681;739", ""},
    {"zinc-sulfate-7h2o", "ZnSO4.7H2O", "Zn=1;SO4=1", "416;472;538", ""},
    {"zinc-sulfate-1h2o", "ZnSO4.H2O", "Zn=1;SO4=1", "416;472;538", ""},
    {"copper-sulfate-5h2o", "CuSO4.5H2O", "Cu=1;SO4=1", "143;174;207", "poisonous to fish"},
    {"boric-acid", "H3BO3", "", "25.2;34.9;47.2", "undissociated in a nutrient solution: no EC"},
    {
      "borax",
      "Na2B4O7.10H2O",
      "Na=2;HCO3=2",
      "11.1;16;25.6",
      "becomes boric acid: its charge goes to alkalinity, counted here as HCO3"
    },
    {"sodium-molybdate-2h2o", "Na2MoO4.2H2O", "Na=2;MoO4=1", "441;647;653", ""},
    {
      "ammonium-molybdate",
      "(NH4)6Mo7O24.4H2O",
      "NH4=6",
      "as sold 430",
      "the charge of its molybdate is left out of the balance"
    }
  };

  // name, element, mass fraction, g as sold per kg of water at 20 C (0: unknown), note
  private static final String[][] OF_CONTENT = {
    {"iron-edta-13", "Fe", "0.13", "90", "Fe-EDTA, sodium salt; stable to about pH 6 to 6.5"},
    {"iron-dtpa-11", "Fe", "0.11", "100", "Fe-DTPA; stable to about pH 7"},
    {"iron-dtpa-6-liquid", "Fe", "0.06", "0", "Fe-DTPA, liquid, 6 % w/w"},
    {"iron-eddha-6", "Fe", "0.06", "60", "Fe-EDDHA; stable beyond pH 8; colours the water red"}
  };

  private static final String MOLYBDIC = "molybdic-acid-85";
  private static final double MOLYBDIC_ASSAY = 0.85; // g MoO3 per g, the 1950 recipe's reagent
  private static final String AS_SOLD = "as sold ";

  private Salts() {}

  /** All names in the order of the list. */
  public static String[] names() {
    String[] names = new String[OF_FORMULA.length + OF_CONTENT.length + 1];
    for (int i = 0; i < OF_FORMULA.length; i++) {
      names[i] = OF_FORMULA[i][0];
    }
    for (int i = 0; i < OF_CONTENT.length; i++) {
      names[OF_FORMULA.length + i] = OF_CONTENT[i][0];
    }
    names[names.length - 1] = MOLYBDIC;
    return names;
  }

  /** The salt of that name, or null. */
  public static Salt find(String name) {
    for (String[] row : OF_FORMULA) {
      if (row[0].equals(name)) {
        return byFormula(row);
      }
    }
    for (String[] row : OF_CONTENT) {
      if (row[0].equals(name)) {
        return byContent(row);
      }
    }
    if (name.equals(MOLYBDIC)) {
      return molybdic();
    }
    String usual = SaltNames.usual(name);
    return usual == null ? null : find(usual);
  }

  /**
   * The salt of that name.
   *
   * @throws Impossible if there is none
   */
  public static Salt of(String name) {
    Salt salt = find(name);
    if (salt == null) {
      throw new Impossible("salt", "a salt of the list is needed, such as calcium-nitrate-4h2o");
    }
    return salt;
  }

  private static Salt byFormula(String[] row) {
    Formula formula = Formula.of(row[1]);
    double molarMass = formula.molarMass();
    Ions perFormula = ions(row[2]);
    Elements fractions = Elements.zero();
    for (int i = 0; i < Element.count(); i++) {
      Element element = Element.at(i);
      double count = formula.count(element.atom());
      if (element == Element.N_NO3) {
        count = perFormula.of(Ion.NO3);
      } else if (element == Element.N_NH4) {
        count = perFormula.of(Ion.NH4);
      }
      fractions = fractions.with(element, count * element.atom().weight() / molarMass);
    }
    double[] solubility = solubility(row[3], molarMass, molarMass - formula.waterMass());
    Ions perGram = perFormula.times(1000 / molarMass); // mmol/g
    return new Salt(row[0], row[1], molarMass, fractions, perGram, true, solubility, row[4], -1);
  }

  private static Salt byContent(String[] row) {
    Element element = ElementName.of(row[1]).element();
    Elements fractions = Elements.zero().with(element, Double.parseDouble(row[2]));
    double[] solubility = {0, 0, Double.parseDouble(row[3])};
    String note = row[4] + "; read your own label";
    return new Salt(row[0], "", 0, fractions, Ions.NONE, true, solubility, note, -1);
  }

  private static Salt molybdic() {
    double share = Atom.MO.weight() / Formula.of("MoO3").molarMass();
    Elements fractions = Elements.zero().with(Element.MO, MOLYBDIC_ASSAY * share);
    String note = "assay 85 % MoO3, as in the recipe of 1950; read your own label";
    return new Salt(MOLYBDIC, "", 0, fractions, Ions.NONE, true, new double[3], note, -1);
  }

  private static Ions ions(String list) {
    Ions ions = Ions.NONE;
    int at = 0;
    while (at < list.length()) {
      int is = list.indexOf('=', at);
      int end = list.indexOf(';', at);
      if (end < 0) {
        end = list.length();
      }
      Ion ion = Ion.ofSymbol(list.substring(at, is));
      ions = ions.and(ion, Double.parseDouble(list.substring(is + 1, end)));
      at = end + 1;
    }
    return ions;
  }

  private static double[] solubility(String list, double molarMass, double anhydrousMass) {
    if (list.startsWith(AS_SOLD)) {
      return new double[] {0, 0, Double.parseDouble(list.substring(AS_SOLD.length()))};
    }
    int first = list.indexOf(';');
    int second = list.indexOf(';', first + 1);
    double[] figures = {
      Double.parseDouble(list.substring(0, first)),
      Double.parseDouble(list.substring(first + 1, second)),
      Double.parseDouble(list.substring(second + 1))
    };
    double heavier = molarMass / anhydrousMass;
    for (int i = 0; i < figures.length; i++) {
      figures[i] = figures[i] * heavier / (1 - figures[i] * (heavier - 1) / 1000);
    }
    return figures;
  }
}

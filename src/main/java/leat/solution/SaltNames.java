package leat.solution;

import java.util.Locale;

/**
 * What bags and shops call the salts of the list.
 *
 * <p>Source: common names in the trade; the formula behind each name in {@link Salts} is what
 * counts, and {@code leat dose salts --list} shows it.
 */
final class SaltNames {
  private static final String[][] OTHER = {
    {"mkp", "monopotassium-phosphate"},
    {"dkp", "dipotassium-phosphate"},
    {"map", "monoammonium-phosphate"},
    {"dap", "diammonium-phosphate"},
    {"sop", "potassium-sulfate"},
    {"epsom", "magnesium-sulfate-7h2o"},
    {"epsom-salt", "magnesium-sulfate-7h2o"},
    {"bitter-salt", "magnesium-sulfate-7h2o"},
    {"kieserite", "magnesium-sulfate-1h2o"},
    {"magnesium-nitrate", "magnesium-nitrate-6h2o"},
    {"calcium-chloride", "calcium-chloride-2h2o"},
    {"gypsum", "calcium-sulfate-2h2o"},
    {"saltpetre", "potassium-nitrate"},
    {"saltpeter", "potassium-nitrate"},
  };

  private SaltNames() {}

  /** The list's own name of a salt that is called otherwise, or null. */
  static String usual(String name) {
    String plain =
        name.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace("sulphate", "sulfate");
    for (String[] pair : OTHER) {
      if (pair[0].equals(plain)) {
        return pair[1];
      }
    }
    return plain.equals(name) ? null : plain;
  }
}

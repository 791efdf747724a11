package leat.quantity;

/**
 * How much of an ion or an element there is, as laboratories print it: by weight in any unit of
 * concentration, by number in mmol/L, or by charge in meq/L.
 */
public final class IonAmount {
  private static final String[] BY_NUMBER = {"mmol/L", "mmol/l"};
  private static final String[] BY_CHARGE = {"meq/L", "meq/l"};

  private IonAmount() {}

  /**
   * Reads an amount.
   *
   * @param typed such as "62 mg/L", "2.8 mmol/L", "5.6 meq/L"
   * @param mgPerMmol weight of a millimole, mg
   * @param charge charges of an ion, by number; 0 where it has none that is known
   * @return mg/L
   * @throws Unreadable if it is anything else, and for meq/L without a charge
   */
  public static double mgPerL(String typed, double mgPerMmol, int charge) {
    int number = before(typed, BY_NUMBER);
    if (number >= 0) {
      return mgPerMmol * number(typed, number);
    }
    int charges = charge == 0 ? -1 : before(typed, BY_CHARGE);
    if (charges >= 0) {
      return mgPerMmol / charge * number(typed, charges);
    }
    return QuantityReader.read(typed, Dimension.MASS_CONCENTRATION).value();
  }

  /** The number before the unit; messages show both. */
  private static double number(String typed, int unit) {
    int from = 0;
    while (from < unit && Spelling.isSpace(typed.charAt(from))) {
      from++;
    }
    String whole = Spelling.trim(typed);
    NumberScanner scanner =
        new NumberScanner(typed, from, from + whole.length(), Dimension.MASS_CONCENTRATION);
    double number = scanner.scan();
    if (!Spelling.trim(typed.substring(scanner.at(), unit)).isEmpty()) {
      throw QuantityErrors.badNumber(
          Dimension.MASS_CONCENTRATION, whole, from, from + whole.length());
    }
    return number;
  }

  /** Whether an amount is told by number or by charge. */
  public static boolean isCounted(String typed) {
    return before(typed, BY_NUMBER) >= 0 || before(typed, BY_CHARGE) >= 0;
  }

  /** Where one of the units begins at the end of a text; -1 when none does, or nothing precedes. */
  private static int before(String typed, String[] units) {
    String text = Spelling.trim(typed);
    for (int i = 0; i < units.length; i++) {
      if (text.endsWith(units[i]) && text.length() > units[i].length()) {
        return typed.lastIndexOf(units[i]);
      }
    }
    return -1;
  }
}

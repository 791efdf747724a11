package leat.plan;

import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Units;

/** Examples of a plan's values in US customary units, rounded to what one would type. */
final class UsExample {
  /** Metric unit, US unit; others stay. */
  private static final Unit[][] PAIRS = {
    {Units.MM, Units.INCH},
    {Units.M, Units.FOOT},
    {Units.L_MIN, Units.GPM},
    {Units.L_H, Units.GPH},
    {Units.L, Units.GALLON},
    {Units.G, Units.OZ},
    {Units.KG, Units.LB},
    {Units.N, Units.LBF},
    {Units.C, Units.F},
  };

  private static final int DIGITS = 3;

  private UsExample() {}

  /** An example with each number and unit in it written over. */
  static String of(String example) {
    StringBuilder out = new StringBuilder();
    int i = 0;
    while (i < example.length()) {
      int end = number(example, i);
      int unitEnd = end > i ? unit(example, end) : end;
      if (end == i) {
        out.append(example.charAt(i++));
        continue;
      }
      String symbol = example.substring(end, unitEnd).strip();
      Unit[] pair = pair(symbol);
      if (pair == null) {
        out.append(example, i, unitEnd);
      } else {
        double base = pair[0].toBase(Double.parseDouble(example.substring(i, end)));
        out.append(NumberText.significant(pair[1].fromBase(base), DIGITS));
        out.append(' ').append(pair[1].symbol());
      }
      i = unitEnd;
    }
    return out.toString();
  }

  /** End of a number that starts here, not inside a word; the start itself when there is none. */
  private static int number(String text, int start) {
    boolean inWord = start > 0 && Character.isLetterOrDigit(text.charAt(start - 1));
    int i = start;
    while (!inWord
        && i < text.length()
        && (Character.isDigit(text.charAt(i)) || i > start && text.charAt(i) == '.')) {
      i++;
    }
    return i;
  }

  /** End of a blank and the unit behind it. */
  private static int unit(String text, int start) {
    int i = start;
    while (i < text.length() && text.charAt(i) == ' ') {
      i++;
    }
    int word = i;
    while (i < text.length() && (Character.isLetter(text.charAt(i)) || text.charAt(i) == '/')) {
      i++;
    }
    return i == word ? start : i;
  }

  private static Unit[] pair(String symbol) {
    for (int i = 0; i < PAIRS.length; i++) {
      if (PAIRS[i][0].symbol().equals(symbol)) {
        return PAIRS[i];
      }
    }
    return null;
  }
}

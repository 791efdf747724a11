package leat.solution;

import leat.numeric.Impossible;

/**
 * A chemical formula read into atoms: "5Ca(NO3)2.NH4NO3.10H2O".
 *
 * <p>Parts are parted by a dot and may have a whole number in front; groups stand in round
 * brackets. Elements are those of {@link Atom}.
 *
 * <p>Source: definition. Check values: sheet solution-salts.csv (molar masses, mass fractions).
 */
public final class Formula {
  private final String text;
  private final double[] atoms = new double[Atom.count()];
  private double waters;
  private int at;

  private Formula(String text) {
    this.text = text;
  }

  /**
   * Reads a formula.
   *
   * @param text such as "MgSO4.7H2O"
   * @throws Impossible if it is not a formula of known elements
   */
  public static Formula of(String text) {
    Formula formula = new Formula(text);
    formula.readParts();
    return formula;
  }

  /** Atoms of this element in one formula unit. */
  public double count(Atom atom) {
    return atoms[atom.ordinal()];
  }

  /** Molar mass, g/mol. */
  public double molarMass() {
    double sum = 0;
    for (int i = 0; i < atoms.length; i++) {
      sum += atoms[i] * Atom.at(i).weight();
    }
    return sum;
  }

  /** Molar mass of the crystal water alone, g/mol. */
  public double waterMass() {
    return waters * (2 * Atom.H.weight() + Atom.O.weight());
  }

  private void readParts() {
    do {
      if (at > 0) {
        at++;
      }
      double times = at < text.length() && isDigit(text.charAt(at)) ? readNumber() : 1;
      if (text.startsWith("H2O", at) && at + 3 == endOfPart()) {
        waters += times;
      }
      if (!readGroup(times)) {
        throw wrong();
      }
    } while (at < text.length() && text.charAt(at) == '.');
    if (at < text.length()) {
      throw wrong();
    }
  }

  private int endOfPart() {
    int dot = text.indexOf('.', at);
    return dot < 0 ? text.length() : dot;
  }

  /**
   * Reads symbols and brackets up to a dot or a closing bracket; returns whether there were any.
   */
  private boolean readGroup(double times) {
    int start = at;
    while (at < text.length() && text.charAt(at) != ')' && text.charAt(at) != '.') {
      if (text.charAt(at) == '(') {
        readBracket(times);
      } else {
        readAtom(times);
      }
    }
    return at > start;
  }

  private void readBracket(double times) {
    int inside = at + 1;
    int close = closing(inside);
    at = close + 1;
    double count = readCount();
    int after = at;
    at = inside;
    if (!readGroup(times * count) || at != close) {
      throw wrong();
    }
    at = after;
  }

  private int closing(int from) {
    int depth = 1;
    for (int i = from; i < text.length(); i++) {
      if (text.charAt(i) == '(') {
        depth++;
      } else if (text.charAt(i) == ')') {
        depth--;
        if (depth == 0) {
          return i;
        }
      }
    }
    throw wrong();
  }

  private void readAtom(double times) {
    int end = at + 1;
    if (end < text.length() && Character.isLowerCase(text.charAt(end))) {
      end++;
    }
    Atom atom = Atom.ofSymbol(text.substring(at, end));
    if (atom == null) {
      throw wrong();
    }
    at = end;
    atoms[atom.ordinal()] += times * readCount();
  }

  private double readCount() {
    return at < text.length() && isDigit(text.charAt(at)) ? readNumber() : 1;
  }

  private double readNumber() {
    double value = 0;
    int digits = 0;
    while (at < text.length() && isDigit(text.charAt(at))) {
      value = 10 * value + (text.charAt(at) - '0');
      at++;
      digits++;
    }
    if (value == 0 || digits > 4) {
      throw wrong();
    }
    return value;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static Impossible wrong() {
    return new Impossible("formula", "a formula such as Ca(NO3)2.4H2O is needed");
  }
}

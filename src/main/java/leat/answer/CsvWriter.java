package leat.answer;

import leat.quantity.NumberText;

/**
 * Writes rows as CSV after RFC 4180, with line feeds so that Unix tools read the last column;
 * always metric.
 */
public final class CsvWriter {
  private final char delimiter;
  private final char decimal;
  private final boolean raw;

  /**
   * With a delimiter and a decimal sign, which must differ; {@code raw} writes words as they are.
   */
  public CsvWriter(char delimiter, char decimal, boolean raw) {
    this.raw = raw;
    this.delimiter = delimiter;
    this.decimal = decimal;
  }

  String write(Answer answer) {
    StringBuilder out = new StringBuilder();
    Column[] columns = answer.columns;
    for (int c = 0; c < answer.csvColumns; c++) {
      separate(out, c);
      word(out, columns[c].key());
    }
    out.append('\n');
    for (int r = 0; r < answer.rows.size(); r++) {
      for (int c = 0; c < answer.csvColumns; c++) {
        separate(out, c);
        value(out, answer.rows.get(r).get(c), columns[c]);
      }
      out.append('\n');
    }
    return out.toString();
  }

  /** Sign between columns. */
  public char delimiter() {
    return delimiter;
  }

  /** Decimal sign. */
  public char decimal() {
    return decimal;
  }

  /** The delimiter, before every column but the first. */
  public void separate(StringBuilder out, int c) {
    if (c > 0) {
      out.append(delimiter);
    }
  }

  /** One value of a column, in its metric unit. */
  public void value(StringBuilder out, Object value, Column column) {
    if (value instanceof Double number) {
      String text = number(number, column);
      out.append(decimal == '.' ? text : text.replace('.', decimal));
    } else if (value != null) {
      word(out, harmless(String.valueOf(value)));
    }
  }

  /** A word that a spreadsheet would run as a formula gets an apostrophe before it, unless raw. */
  private String harmless(String word) {
    if (raw || word.isEmpty() || "=+-@\t".indexOf(word.charAt(0)) < 0 || isNumber(word)) {
      return word;
    }
    return "'" + word;
  }

  /** A number as leat writes it: no plus sign, a minus before digits and behind an e alone. */
  private static boolean isNumber(String word) {
    boolean digits = false;
    for (int i = 1; i < word.length(); i++) {
      char c = word.charAt(i);
      char before = word.charAt(i - 1);
      digits |= c >= '0' && c <= '9';
      boolean sign = c == '+' || c == '-';
      if ("0123456789.eE+-".indexOf(c) < 0 || sign && before != 'e' && before != 'E') {
        return false;
      }
    }
    return digits && word.charAt(0) == '-';
  }

  static String number(double base, Column column) {
    double shown = column.show() == null ? base : column.show().metric().fromBase(base);
    return NumberText.shortest(shown);
  }

  /** A word, in quotes where RFC 4180 asks for them. */
  public void word(StringBuilder out, String text) {
    boolean quote = text.isEmpty();
    for (int i = 0; i < text.length() && !quote; i++) {
      char c = text.charAt(i);
      quote = c == delimiter || c == '"' || c == '\n' || c == '\r';
    }
    if (!quote) {
      out.append(text);
      return;
    }
    out.append('"').append(text.replace("\"", "\"\"")).append('"');
  }
}

package leat.cli;

import java.nio.charset.StandardCharsets;

/** A cell of rows as a number, without an object for plain ones. */
public final class CellNumber {
  private static final int MOST_DIGITS = 15;
  private static final double[] TENS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
  };

  private CellNumber() {}

  /**
   * Reads a number with a decimal point or comma, bare or in quotes; on and off, true and false are
   * 1 and 0, open is endless.
   *
   * @return NaN for what is no number
   */
  public static double of(byte[] bytes, int start, int end) {
    int from = start;
    int to = end;
    while (from < to && isBlank(bytes[from])) {
      from++;
    }
    while (to > from && isBlank(bytes[to - 1])) {
      to--;
    }
    int at = from < to && bytes[from] == '-' ? from + 1 : from;
    long digits = 0;
    int count = 0;
    int places = -1;
    for (int i = at; i < to; i++) {
      byte c = bytes[i];
      if ((c == '.' || c == ',') && places < 0) {
        places = 0;
      } else if (c >= '0' && c <= '9' && count < MOST_DIGITS) {
        digits = digits * 10 + (c - '0');
        count++;
        places += places >= 0 ? 1 : 0;
      } else {
        return other(new String(bytes, from, to - from, StandardCharsets.UTF_8));
      }
    }
    if (count == 0) {
      return Double.NaN;
    }
    double value = places > 0 ? digits / TENS[places] : digits;
    return at > from ? -value : value;
  }

  private static boolean isBlank(byte c) {
    return c == ' ' || c == '"' || c == '\t';
  }

  private static double other(String text) {
    switch (text.toLowerCase(java.util.Locale.ROOT)) {
      case "on":
      case "true":
        return 1;
      case "off":
      case "false":
        return 0;
      case "open":
      case "ol":
      case "inf":
        return Double.POSITIVE_INFINITY;
      default:
        return spelled(text);
    }
  }

  /** Digits beyond those counted, or an exponent. */
  private static double spelled(String text) {
    for (int i = 0; i < text.length(); i++) {
      if ("0123456789.,+-eE".indexOf(text.charAt(i)) < 0) {
        return Double.NaN;
      }
    }
    try {
      return Double.parseDouble(text.replace(',', '.'));
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}

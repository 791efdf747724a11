package leat.answer;

import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Units;

/**
 * Words with metric quantities written in them, such as "water 20 C" or "5 to 35 C", which text in
 * US customary units shows in those. What stands in double quotes is to be typed and stays.
 */
final class Said {
  /** Digits of a converted quantity, where fewer were written. */
  private static final int LEAST_DIGITS = 2;

  private static final int MOST_DIGITS = 3;
  private static final String BETWEEN = " to ";

  private final String words;
  private final StringBuilder out = new StringBuilder();

  private Said(String words) {
    this.words = words;
  }

  /** The words in US customary units. */
  static String inUs(String words) {
    return new Said(words).converted();
  }

  private String converted() {
    boolean quoted = false;
    int at = 0;
    while (at < words.length()) {
      char c = words.charAt(at);
      quoted ^= c == '"';
      int end = quoted || !startsNumber(at) ? at : numberEnd(at);
      at = end > at ? number(at, end) : copy(at);
    }
    return out.toString();
  }

  private int copy(int at) {
    out.append(words.charAt(at));
    return at + 1;
  }

  private boolean startsNumber(int at) {
    boolean first = at == 0 || words.charAt(at - 1) == ' ' || words.charAt(at - 1) == '(';
    int digit = words.charAt(at) == '-' ? at + 1 : at;
    return first && digit < words.length() && isDigit(words.charAt(digit));
  }

  private int numberEnd(int from) {
    int at = words.charAt(from) == '-' ? from + 1 : from;
    while (at < words.length() && (isDigit(words.charAt(at)) || isPoint(at))) {
      at++;
    }
    return at;
  }

  private boolean isPoint(int at) {
    return words.charAt(at) == '.' && at + 1 < words.length() && isDigit(words.charAt(at + 1));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Writes a number with its unit, or the first of two with the unit of the second. */
  private int number(int from, int end) {
    Show show = unitAt(end);
    if (show != null) {
      out.append(shown(from, end, show)).append(' ').append(show.us().symbol());
      return end + 1 + show.metric().symbol().length();
    }
    int second = end + BETWEEN.length();
    if (words.startsWith(BETWEEN, end) && second < words.length() && startsNumber(second)) {
      show = unitAt(numberEnd(second));
    }
    out.append(show == null ? words.substring(from, end) : shown(from, end, show));
    return end;
  }

  private String shown(int from, int end, Show show) {
    String typed = words.substring(from, end);
    int digits = Math.max(LEAST_DIGITS, Math.min(MOST_DIGITS, digits(typed)));
    double value = show.us().fromBase(show.metric().toBase(Double.parseDouble(typed)));
    return NumberText.significant(value, digits);
  }

  private static int digits(String typed) {
    int digits = 0;
    for (int i = 0; i < typed.length(); i++) {
      char c = typed.charAt(i);
      digits += isDigit(c) && (c != '0' || digits > 0) ? 1 : 0;
    }
    return digits;
  }

  /** How the unit behind a number is shown; null when none is, or one that both systems use. */
  private Show unitAt(int end) {
    Show[] all = {
      Show.C,
      Show.MM,
      Show.of(Units.CM, Units.INCH, 3),
      Show.M,
      Show.L,
      Show.L_MIN,
      Show.M_S,
      Show.KG,
      Show.of(Units.M2, Units.FT2, 2)
    };
    for (int i = 0; i < all.length; i++) {
      Unit metric = all[i].metric();
      int behind = end + 1 + metric.symbol().length();
      if (words.startsWith(metric.symbol(), end + 1)
          && words.charAt(end) == ' '
          && (behind == words.length() || endsWord(words.charAt(behind)))) {
        return all[i];
      }
    }
    return null;
  }

  private static boolean endsWord(char c) {
    return " ,.;:)".indexOf(c) >= 0;
  }
}

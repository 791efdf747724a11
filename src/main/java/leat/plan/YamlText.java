package leat.plan;

/** Texts as YAML scalars that every YAML reader takes for the same text. */
public final class YamlText {
  private YamlText() {}

  /** A free text, in quotes where a reader could take it for something else. */
  public static String text(String value, boolean inFlow) {
    return Yaml11.takesForOther(value) || mustQuote(value, inFlow) ? quoted(value) : value;
  }

  /** A value as its kind types it: plain where it can be. */
  static String scalar(String typed, Kind kind, boolean inFlow) {
    if (kind == Kind.CLOCK) {
      return quoted(typed);
    }
    if (kind == Kind.TEXT || kind.words() != null) {
      return text(typed, inFlow);
    }
    return mustQuote(typed, inFlow) ? quoted(typed) : typed;
  }

  private static boolean mustQuote(String value, boolean inFlow) {
    int n = value.length();
    if (n == 0 || value.charAt(0) == ' ' || value.charAt(n - 1) == ' ') {
      return true;
    }
    char first = value.charAt(0);
    if ("!&*|>@`\"'%#,[]{}".indexOf(first) >= 0) {
      return true;
    }
    if ((first == '-' || first == '?' || first == ':') && (n == 1 || value.charAt(1) == ' ')) {
      return true;
    }
    if (value.startsWith("---") || value.startsWith("...")) {
      return true;
    }
    for (int i = 0; i < n; i++) {
      char c = value.charAt(i);
      boolean last = i == n - 1;
      if (c == ':' && (inFlow || last || value.charAt(i + 1) == ' ')
          || c == '#' && value.charAt(i - 1) == ' '
          || inFlow && ",[]{}".indexOf(c) >= 0
          || needsEscape(c)) {
        return true;
      }
    }
    return false;
  }

  private static boolean needsEscape(char c) {
    return c < ' '
        || c >= 0x7f && c < 0xa0
        || c == '\u2028'
        || c == '\u2029'
        || c == '\ufeff'
        || c >= 0xd800 && c < 0xe000
        || c >= 0xfffe;
  }

  private static String quoted(String value) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < value.length()
              && Character.isLowSurrogate(value.charAt(i + 1));
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (pair) {
        out.append(c).append(value.charAt(++i));
      } else if (c >= 0xd800 && c < 0xe000) {
        out.append('?');
      } else if (needsEscape(c)) {
        out.append("\\u");
        for (int shift = 12; shift >= 0; shift -= 4) {
          out.append(Character.forDigit(c >> shift & 15, 16));
        }
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }
}

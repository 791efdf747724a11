package leat.plan;

/**
 * What a YAML 1.1 reader takes for something else than text, and we would not: plans read alike
 * everywhere.
 */
final class Yaml11 {
  private Yaml11() {}

  /**
   * Whether an older reader takes this plain scalar for true, false, null or a number in base 60.
   */
  static boolean takesForOther(String plain) {
    switch (plain) {
      case "yes", "Yes", "YES", "no", "No", "NO", "on", "On", "ON", "off", "Off", "OFF":
      case "y", "Y", "n", "N", "true", "True", "TRUE", "false", "False", "FALSE":
      case "null", "Null", "NULL", "~", "", "<<", "=":
        return true;
      default:
        return base60(plain);
    }
  }

  /** Whether it looks like 017, which older readers take for 15. */
  static boolean octal(String plain) {
    int from = plain.startsWith("-") || plain.startsWith("+") ? 1 : 0;
    if (plain.length() - from < 2 || plain.charAt(from) != '0') {
      return false;
    }
    for (int i = from; i < plain.length(); i++) {
      if (plain.charAt(i) < '0' || plain.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  /** Whether it looks like 22:00, which older readers take for 1320. */
  static boolean base60(String plain) {
    boolean colon = false;
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c == ':' && i > 0 && i < plain.length() - 1) {
        colon = true;
      } else if (c < '0' || c > '9') {
        return false;
      }
    }
    return colon;
  }
}

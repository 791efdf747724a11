package leat.quantity;

import java.util.List;

/**
 * Regular expressions, as text for a JSON Schema, made from the table of units. Each accepts all
 * that its reader accepts, and somewhat more: ranges of numbers, currencies' codes and what two
 * parts mean together are for the reader. Written for ECMA-262 and Java alike.
 */
public final class SchemaPattern {
  private static final String SPACES = " \\t\\n\\r\\u00a0\\u202f\\ufeff\\u2000-\\u200b";
  private static final String GAP = "[" + SPACES + "]*";
  private static final String APART = "[" + SPACES + "\\u00b7\\u22c5\\u2219]";
  private static final String SOFT = APART + "*";
  private static final String VULGAR = "[\\u00bd\\u00bc\\u00be\\u2153\\u2154\\u215b-\\u215e]";
  private static final String POWER_OF_TEN = "(?:[eE][+-]?[0-9]+)?";
  private static final String DECIMAL =
      "(?:(?:[0-9]{1,3}(?:["
          + SPACES
          + "][0-9]{3})+|[0-9]+)(?:\\.[0-9]*)?|\\.[0-9]+)"
          + POWER_OF_TEN;
  private static final String FRACTION = "[0-9]+[/\\u2044][0-9]+";
  private static final String MIXED =
      "[0-9]+(?:(?:[" + SPACES + "]+|-)" + FRACTION + "|" + GAP + VULGAR + ")";
  private static final String NUMBER =
      "[+\\-\\u2212]?(?:" + MIXED + "|" + FRACTION + "|" + DECIMAL + "|" + VULGAR + ")";
  private static final String CURRENCY = "(?:[A-Z]{3}|\\u20ac|\\u00a3)";

  private SchemaPattern() {}

  /** For one quantity of a dimension. */
  public static String of(Dimension dimension) {
    return whole(quantity(dimension));
  }

  /** For {@link IonAmount}. */
  public static String ionAmount() {
    String counted = GAP + NUMBER + GAP + "m(?:mol|eq)/[lL]" + GAP;
    return whole("(?:" + quantity(Dimension.MASS_CONCENTRATION) + "|" + counted + ")");
  }

  /** For a strength: a concentration, or per cent. */
  public static String strength() {
    return whole(
        "(?:" + quantity(Dimension.MASS_CONCENTRATION) + "|" + quantity(Dimension.SHARE) + ")");
  }

  /** For {@link Compounds#size}. */
  public static String size() {
    return whole(quantityOrBare(Dimension.LENGTH) + "[xX*\\u00d7]" + quantity(Dimension.LENGTH));
  }

  /** For {@link Compounds#point}. */
  public static String point() {
    return whole(quantity(Dimension.FLOW) + "@" + quantity(Dimension.HEAD));
  }

  /** For {@link Compounds#step}. */
  public static String step() {
    return whole(quantity(Dimension.LENGTH) + "=" + quantity(Dimension.RESISTANCE));
  }

  /** For {@link Compounds#edge}. */
  public static String edge() {
    return whole(quantity(Dimension.VOLUME) + "=" + quantity(Dimension.RESISTANCE));
  }

  /** For {@link Compounds#strap}. */
  public static String strap() {
    return whole(quantity(Dimension.LENGTH) + "=" + quantity(Dimension.VOLUME));
  }

  /** For {@link Compounds#areaAt}. */
  public static String areaAt() {
    return whole(quantity(Dimension.LENGTH) + "=" + quantity(Dimension.AREA));
  }

  private static String bucketPart() {
    return quantity(Dimension.VOLUME) + "in" + quantity(Dimension.TIME);
  }

  /** For {@link Compounds#measured}. */
  public static String measured() {
    String flow = "(?:" + quantity(Dimension.FLOW) + "|" + bucketPart() + ")";
    return whole(flow + "(?:@" + quantity(Dimension.LENGTH) + ")?");
  }

  /** For {@link Compounds#countAt}. */
  public static String countAt() {
    String size =
        "(?:"
            + quantity(Dimension.LENGTH)
            + "|"
            + quantity(Dimension.SHARE)
            + "|"
            + quantity(Dimension.ANGLE)
            + ")";
    return whole(quantity(Dimension.NUMBER) + "(?:@" + size + ")?");
  }

  /** For {@link Compounds#range}. */
  public static String range(Dimension dimension) {
    String mark = "(?:\\.\\.|\\u2026|\\u2013|to|-)";
    return whole(quantityOrBare(dimension) + mark + quantity(dimension));
  }

  /** For {@link Compounds#cadence}. */
  public static String cadence() {
    return whole(GAP + "(?:at low|daily|none|every" + quantity(Dimension.TIME) + ")" + GAP);
  }

  private static String whole(String inner) {
    return "^" + inner + "$";
  }

  private static String quantityOrBare(Dimension dimension) {
    return "(?:" + GAP + NUMBER + GAP + "|" + quantity(dimension) + ")";
  }

  private static String quantity(Dimension dimension) {
    String units = units(dimension);
    if (dimension.isMoney()) {
      String before = CURRENCY + GAP + NUMBER;
      String after = NUMBER + GAP + CURRENCY;
      return GAP + "(?:" + before + "|" + after + ")" + SOFT + units + SOFT;
    }
    String one = NUMBER + SOFT + units;
    switch (dimension) {
      case COUNT:
      case NUMBER:
        return GAP + NUMBER + "(?:" + SOFT + units + ")?" + SOFT;
      case LENGTH:
      case HEAD:
      case MASS:
      case TIME:
        return GAP + one + "(?:" + SOFT + one + ")?" + SOFT;
      default:
        return GAP + one + SOFT;
    }
  }

  /** All spellings of all units of a dimension, as one group. */
  private static String units(Dimension dimension) {
    StringBuilder out = new StringBuilder("(?:");
    List<Unit> units = Units.of(dimension);
    for (int i = 0; i < units.size(); i++) {
      spellings(units.get(i), out);
    }
    out.setLength(out.length() - 1);
    return out.append(')').toString();
  }

  private static void spellings(Unit unit, StringBuilder out) {
    spelling(unit.symbol(), out);
    List<String> aliases = unit.aliases();
    for (int i = 0; i < aliases.size(); i++) {
      spelling(aliases.get(i), out);
    }
  }

  private static void spelling(String text, StringBuilder out) {
    int slash = text.indexOf('/');
    String left = slash < 0 ? null : slash == 0 ? "" : part(text.substring(0, slash));
    String right = slash < 0 ? null : part(text.substring(slash + 1));
    if (left != null && right != null) {
      out.append(left);
      letter(text, slash, out);
      out.append(right).append('|');
    }
    letters(text, out);
    out.append('|');
  }

  /** All spellings of the unit with this symbol that may stand beside a slash, or null. */
  private static String part(String symbol) {
    StringBuilder out = new StringBuilder("(?:");
    for (int i = 0; i < Spelling.PARTS.length; i++) {
      List<Unit> units = Units.of(Spelling.PARTS[i]);
      for (int k = 0; k < units.size(); k++) {
        if (units.get(k).symbol().equals(symbol)) {
          plainSpellings(units.get(k), out);
        }
      }
    }
    if (out.length() == 3) {
      return null;
    }
    out.setLength(out.length() - 1);
    return out.append(')').toString();
  }

  private static void plainSpellings(Unit unit, StringBuilder out) {
    letters(unit.symbol(), out);
    out.append('|');
    List<String> aliases = unit.aliases();
    for (int i = 0; i < aliases.size(); i++) {
      letters(aliases.get(i), out);
      out.append('|');
    }
  }

  private static void letters(String text, StringBuilder out) {
    if (text.equals("C") || text.equals("F")) {
      out.append(text.equals("C") ? "\\u2103|" : "\\u2109|");
    }
    boolean scale = text.startsWith("C") || text.startsWith("F") || text.startsWith("dH");
    if (scale || text.startsWith("fH") || text.startsWith("dKH")) {
      out.append("(?:[\\u00b0\\u00ba]").append(GAP).append(")?");
    }
    for (int i = 0; i < text.length(); i++) {
      if (text.startsWith("ohm", i)) {
        out.append("(?:ohm|\\u03a9|\\u2126)");
        i += 2;
      } else if (text.startsWith("deg", i)) {
        out.append("(?:deg|\\u00b0|\\u00ba)");
        i += 2;
      } else {
        letter(text, i, out);
      }
    }
  }

  private static void letter(String text, int i, StringBuilder out) {
    char c = text.charAt(i);
    switch (c) {
      case 'u':
        out.append("[u\\u00b5\\u03bc]");
        break;
      case '2':
        out.append("\\^?[2\\u00b2\\u2082]");
        break;
      case '3':
        out.append("\\^?[3\\u00b3\\u2083]");
        break;
      case ' ':
        out.append(APART).append('+');
        break;
      case '/':
        out.append(APART).append("*(?:[/\\u2044\\u2215]|per)").append(APART).append('*');
        break;
      case '\'':
        out.append("['\\u2032\\u2019]");
        break;
      case '"':
        out.append("[\"\\u2033\\u201d]");
        break;
      case '.':
        out.append("\\.");
        break;
      default:
        out.append(c);
    }
  }
}

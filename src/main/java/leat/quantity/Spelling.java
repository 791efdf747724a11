package leat.quantity;

import java.util.List;

/**
 * The ways one unit can be written: both micro signs, both ohm signs, degree signs, raised digits,
 * middle dots, "per" for a slash, words for parts ("gallons per hour").
 */
final class Spelling {
  /** The dimensions whose units stand on either side of a slash. */
  static final Dimension[] PARTS = {
    Dimension.LENGTH, Dimension.VOLUME, Dimension.MASS, Dimension.TIME, Dimension.ENERGY
  };

  private Spelling() {}

  /**
   * Whether {@code c} is a space, a tab, or one of the narrow and unbroken spaces of typesetting.
   */
  static boolean isSpace(char c) {
    return c == ' '
        || c == '\t'
        || c == '\n'
        || c == '\r'
        || c == '\u00a0'
        || c == '\u202f'
        || c == '\ufeff'
        || (c >= '\u2000' && c <= '\u200b');
  }

  /** The text without spaces, of any kind, at its ends. */
  static String trim(String text) {
    int begin = 0;
    int end = text.length();
    while (begin < end && isSpace(text.charAt(begin))) {
      begin++;
    }
    while (end > begin && isSpace(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(begin, end);
  }

  /** The text in plain ASCII letters, one space at most between words and none about a slash. */
  static String ascii(String text) {
    StringBuilder out = new StringBuilder(text.length() + 4);
    for (int i = 0; i < text.length(); i++) {
      letter(text, i, out);
    }
    return slashes(trim(out.toString()));
  }

  private static void letter(String text, int i, StringBuilder out) {
    char c = text.charAt(i);
    if (isSpace(c)) {
      if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
        out.append(' ');
      }
      return;
    }
    switch (c) {
      case '\u00b5':
      case '\u03bc':
        out.append('u');
        break;
      case '\u03a9':
      case '\u2126':
        out.append("ohm");
        break;
      case '\u00b2':
        out.append('2');
        break;
      case '\u00b3':
      case '\u2083':
        out.append('3');
        break;
      case '\u2082':
        out.append('2');
        break;
      case '\u00b7':
      case '\u22c5':
      case '\u2219':
        out.append(' ');
        break;
      case '^':
        power(text, i, out);
        break;
      case '\u2103':
        out.append('C');
        break;
      case '\u2109':
        out.append('F');
        break;
      case '\u2032':
      case '\u2019':
        out.append('\'');
        break;
      case '\u2033':
      case '\u201d':
        out.append('"');
        break;
      case '\u2044':
      case '\u2215':
        out.append('/');
        break;
      case '\u00b0':
      case '\u00ba':
        degree(text, i, out);
        break;
      default:
        out.append(c);
    }
  }

  /** Drops the sign before a power. */
  private static void power(String text, int i, StringBuilder out) {
    if (!text.startsWith("2", i + 1) && !text.startsWith("3", i + 1)) {
      out.append('^');
    }
  }

  /** Drops the sign before the letter of a scale; alone it is the unit of angles. */
  private static void degree(String text, int i, StringBuilder out) {
    int next = i + 1;
    while (next < text.length() && isSpace(text.charAt(next))) {
      next++;
    }
    boolean scale =
        text.startsWith("C", next)
            || text.startsWith("F", next)
            || text.startsWith("dH", next)
            || text.startsWith("dKH", next)
            || text.startsWith("KH", next)
            || text.startsWith("fH", next);
    if (!scale) {
      out.append("deg");
    }
  }

  private static String slashes(String text) {
    String s = text;
    if (s.startsWith("per ")) {
      s = "/" + s.substring(4);
    }
    while (s.indexOf("  ") >= 0) {
      s = s.replace("  ", " ");
    }
    s = s.replace(" per ", "/").replace(" /", "/").replace("/ ", "/");
    return s;
  }

  /** The unit of the dimension that is written so, or null. */
  static Unit exactly(Dimension dimension, String ascii) {
    Unit found = listed(dimension, ascii);
    if (found == null && ascii.indexOf('/') >= 0) {
      String plain = plainParts(ascii);
      if (plain != null) {
        found = listed(dimension, plain);
      }
    }
    return found;
  }

  private static Unit listed(Dimension dimension, String ascii) {
    List<Unit> all = Units.all();
    for (int i = 0; i < all.size(); i++) {
      Unit unit = all.get(i);
      if (unit.dimension() == dimension && unit.isWritten(ascii)) {
        return unit;
      }
    }
    return null;
  }

  /** "gallons/hour" as "gal/h"; null when a part is no unit. */
  private static String plainParts(String ascii) {
    int slash = ascii.indexOf('/');
    String left = ascii.substring(0, slash);
    String right = part(ascii.substring(slash + 1));
    if (left.length() > 0) {
      left = part(left);
    }
    return left == null || right == null ? null : left + "/" + right;
  }

  private static String part(String ascii) {
    for (int i = 0; i < PARTS.length; i++) {
      Unit unit = listed(PARTS[i], ascii);
      if (unit != null) {
        return unit.symbol();
      }
    }
    return null;
  }

  /** A spelling in the dimension that differs from {@code ascii} in case only, or null. */
  static String inOtherCase(Dimension dimension, String ascii) {
    List<Unit> all = Units.all();
    for (int i = 0; i < all.size(); i++) {
      Unit unit = all.get(i);
      if (unit.dimension() == dimension && unit.isWrittenInOtherCase(ascii)) {
        return unit.symbol();
      }
    }
    return null;
  }

  /** The first dimension, other than money's, that has a unit written so, or null. */
  static Dimension elsewhere(String ascii) {
    List<Unit> all = Units.all();
    for (int i = 0; i < all.size(); i++) {
      Dimension d = all.get(i).dimension();
      boolean first = i == 0 || all.get(i - 1).dimension() != d;
      if (first && !d.isMoney() && exactly(d, ascii) != null) {
        return d;
      }
    }
    return null;
  }
}

package leat.controller;

import leat.quantity.NumberText;
import leat.quantity.Visible;

/** Words and numbers as C takes them. */
final class CText {
  private CText() {}

  /** A name from elsewhere inside a comment, which it can neither end nor open again. */
  static String comment(String name) {
    return Visible.of(name).replace("*/", "* /").replace("/*", "/ *");
  }

  /** A constant of the preprocessor. */
  static void define(StringBuilder out, String name, Object value, String meaning) {
    flag(out, name, value).append(" /* ").append(comment(meaning)).append(" */\n");
  }

  /** The same without a remark. */
  static void define(StringBuilder out, String name, Object value) {
    flag(out, name, value).append('\n');
  }

  private static StringBuilder flag(StringBuilder out, String name, Object value) {
    return out.append("#define ").append(name).append(' ').append(value);
  }

  /** An unsigned whole number of 32 bits. */
  static String u32(long value) {
    return value + "UL";
  }

  /** A number of single precision. */
  static String real(double value) {
    String text = NumberText.shortest(value);
    boolean whole = text.indexOf('.') < 0 && text.indexOf('E') < 0 && text.indexOf('e') < 0;
    return (value < 0 ? "(" : "") + text + (whole ? ".0f" : "f") + (value < 0 ? ")" : "");
  }

  /** A word in capitals, for a constant's name. */
  static String constant(String word) {
    return word.toUpperCase(java.util.Locale.ROOT).replace('-', '_');
  }
}

package leat.quantity;

/**
 * Text from elsewhere as a terminal may show it: control characters, marks of direction and a byte
 * order mark appear as escapes, so that a name can neither move the cursor nor hide itself.
 */
public final class Visible {
  private Visible() {}

  /** The text; the same object when nothing in it hides. */
  public static String of(String text) {
    return of(text, "");
  }

  /** The text, with these control characters left as they are. */
  public static String of(String text, String kept) {
    for (int i = 0; i < text.length(); i++) {
      if (hides(text.charAt(i)) && kept.indexOf(text.charAt(i)) < 0) {
        return escaped(text, kept);
      }
    }
    return text;
  }

  private static boolean hides(char c) {
    return c < ' '
        || c >= 0x7f && c < 0xa0
        || c >= 0x200b && c <= 0x200f
        || c >= 0x202a && c <= 0x202e
        || c >= 0x2066 && c <= 0x2069
        || c == 0xfeff;
  }

  private static String escaped(String text, String kept) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!hides(c) || kept.indexOf(c) >= 0) {
        out.append(c);
      } else {
        String hex = Integer.toHexString(c);
        out.append("\\u").append("0000", hex.length(), 4).append(hex);
      }
    }
    return out.toString();
  }
}

package leat.quantity;

/** Text of a JSON string; the rest of JSON is written by the answer package or by Jackson. */
public final class JsonText {
  private JsonText() {}

  /** The string in quotes, escaped as RFC 8259 asks. */
  public static String string(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2);
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c == '\n') {
        out.append("\\n");
      } else if (c == '\t') {
        out.append("\\t");
      } else if (c == '\r') {
        out.append("\\r");
      } else if (c < 0x20) {
        out.append("\\u00")
            .append(Character.forDigit(c >> 4, 16))
            .append(Character.forDigit(c & 15, 16));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }
}

package leat.plan;

/** A text that values were typed in: a plan file, standard input, or one flag. */
public final class Source {
  private final String name;
  private final String text;
  private final boolean file;

  private Source(String name, String text, boolean file) {
    this.name = name;
    this.text = text;
    this.file = file;
  }

  /** A file or standard input, with its whole text. */
  public static Source file(String name, String text) {
    return new Source(name, text, true);
  }

  /** A flag, such as {@code --bore}, with the value typed behind it. */
  public static Source flag(String name, String text) {
    return new Source(name, text, false);
  }

  /** File name, {@code -} for standard input, or the flag. */
  public String name() {
    return name;
  }

  /** The text itself. */
  public String text() {
    return text;
  }

  /** Whether places in it are lines and columns of a file. */
  public boolean isFile() {
    return file;
  }

  /** Line {@code number}, counted from 1, without its end. */
  String line(int number) {
    int start = 0;
    for (int i = 1; i < number; i++) {
      int end = endOfLine(start);
      if (end >= text.length()) {
        return "";
      }
      boolean pair =
          text.charAt(end) == '\r' && end + 1 < text.length() && text.charAt(end + 1) == '\n';
      start = pair ? end + 2 : end + 1;
    }
    return text.substring(start, endOfLine(start));
  }

  /** Lines end where the YAML parser ends them. */
  private int endOfLine(int start) {
    int i = start;
    while (i < text.length() && !isLineEnd(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
  }
}

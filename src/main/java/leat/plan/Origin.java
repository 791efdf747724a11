package leat.plan;

/**
 * Where a value was typed: its source, line and column (both counted from 1, in characters as the
 * reader sees them) and length.
 */
public final class Origin {
  private static final int LONGEST_EXCERPT = 120;

  /** The length of a value that goes on in the next lines. */
  static final int REST_OF_LINE = -1;

  final Source source;
  final int line;
  final int column;
  final int length;

  /** The value as read, when it stands at this place as it is; null for maps and lists. */
  private final String text;

  Origin(Source source, int line, int column, int length, String text) {
    this.source = source;
    this.line = line;
    this.column = column;
    this.length = length == REST_OF_LINE ? length : Math.max(1, length);
    this.text = text;
  }

  /** The whole value of a flag. */
  public static Origin flag(String name, String typed) {
    int length = typed.codePointCount(0, typed.length());
    return new Origin(Source.flag(name, typed), 1, 1, length, typed);
  }

  /** The start of a file. */
  static Origin start(Source source) {
    return new Origin(source, 1, 1, 1, null);
  }

  /**
   * The part of this place from {@code start} to {@code end}, offsets into the value. A value with
   * escapes, or of several lines, does not stand there letter by letter: then the whole.
   */
  Origin part(int start, int end) {
    boolean inside = text != null && start >= 0 && end > start && end <= text.length();
    if (!inside || !standsAsRead()) {
      return this;
    }
    return new Origin(
        source,
        line,
        column + text.codePointCount(0, start),
        text.codePointCount(start, end),
        text.substring(start, end));
  }

  private boolean standsAsRead() {
    String whole = source.line(line);
    return whole.startsWith(text, offset(whole, column - 1));
  }

  /** Offset in a line of a column counted in characters, not in halves of them. */
  private static int offset(String line, int column) {
    int i = 0;
    for (int n = 0; n < column && i < line.length(); n++) {
      i += Character.charCount(line.codePointAt(i));
    }
    return i;
  }

  /** Whether it stands at a colon and no other colon is before it in its line. */
  boolean isFirstColon() {
    String whole = source.line(line);
    int at = offset(whole, column - 1);
    return whole.startsWith(":", at) && whole.lastIndexOf(": ", at - 1) < 0;
  }

  /** {@code terrace.yaml:12:10} or {@code --bore}. */
  String place() {
    return source.isFile() ? source.name() + ":" + line + ":" + column : source.name();
  }

  /** The typed line with a caret under the value, each line ending in a line feed. */
  String excerpt() {
    String whole = source.line(line);
    int begin = offset(whole, column - 1);
    int end = length == REST_OF_LINE ? stripped(whole) : endOf(whole, begin);
    int shift = 0;
    if (whole.length() > LONGEST_EXCERPT) {
      shift = Math.max(0, Math.min(begin - LONGEST_EXCERPT / 3, whole.length() - LONGEST_EXCERPT));
      shift = startOfCharacter(whole, shift);
      whole = whole.substring(0, startOfCharacter(whole, shift + LONGEST_EXCERPT));
    }
    end = Math.min(end, whole.length());
    String gutter = source.isFile() ? String.valueOf(line) : "";
    StringBuilder out = new StringBuilder();
    out.append("  ").append(gutter).append(" | ").append(visible(whole.substring(shift)));
    out.append('\n');
    out.append("  ").append(" ".repeat(gutter.length())).append(" | ");
    out.append(" ".repeat(whole.codePointCount(shift, Math.max(shift, begin))));
    int carets = begin < end ? whole.codePointCount(begin, end) : 1;
    return out.append("^".repeat(carets)).append('\n').toString();
  }

  private int endOf(String whole, int begin) {
    int i = begin;
    for (int n = 0; n < length && i < whole.length(); n++) {
      i += Character.charCount(whole.codePointAt(i));
    }
    return i;
  }

  private static int stripped(String whole) {
    int end = whole.length();
    while (end > 0 && whole.charAt(end - 1) <= ' ') {
      end--;
    }
    return end;
  }

  private static int startOfCharacter(String text, int i) {
    boolean inside = i > 0 && i < text.length() && Character.isLowSurrogate(text.charAt(i));
    return inside ? i - 1 : i;
  }

  private static String visible(String line) {
    StringBuilder out = new StringBuilder(line.length());
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      out.append(Character.isISOControl(c) ? ' ' : c);
    }
    return out.toString();
  }
}

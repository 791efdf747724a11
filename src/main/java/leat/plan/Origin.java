package leat.plan;

/**
 * Where a value was typed: its source, line and column (both counted from 1, in characters) and
 * length.
 */
public final class Origin {
  private static final int LONGEST_EXCERPT = 120;

  final Source source;
  final int line;
  final int column;
  final int length;

  Origin(Source source, int line, int column, int length) {
    this.source = source;
    this.line = line;
    this.column = column;
    this.length = Math.max(1, length);
  }

  /** The whole value of a flag. */
  public static Origin flag(String name, String typed) {
    return new Origin(Source.flag(name, typed), 1, 1, typed.length());
  }

  /** The start of a file. */
  static Origin start(Source source) {
    return new Origin(source, 1, 1, 1);
  }

  /** The part of this place from {@code start} to {@code end}, offsets into the typed value. */
  Origin part(int start, int end) {
    if (start < 0 || end <= start || start >= length) {
      return this;
    }
    return new Origin(source, line, column + start, Math.min(end, length) - start);
  }

  /** {@code terrace.yaml:12:10} or {@code --bore}. */
  String place() {
    return source.isFile() ? source.name() + ":" + line + ":" + column : source.name();
  }

  /** The typed line with a caret under the value, each line ending in a line feed. */
  String excerpt() {
    String whole = source.line(line);
    int begin = Math.min(column - 1, whole.length());
    int shift = 0;
    if (whole.length() > LONGEST_EXCERPT) {
      shift = Math.max(0, Math.min(begin - LONGEST_EXCERPT / 3, whole.length() - LONGEST_EXCERPT));
      whole = whole.substring(shift, shift + LONGEST_EXCERPT);
    }
    String gutter = source.isFile() ? String.valueOf(line) : "";
    StringBuilder out = new StringBuilder();
    out.append("  ").append(gutter).append(" | ").append(visible(whole)).append('\n');
    out.append("  ").append(" ".repeat(gutter.length())).append(" | ");
    out.append(" ".repeat(begin - shift));
    int carets = Math.max(1, Math.min(length, whole.length() - (begin - shift)));
    return out.append("^".repeat(carets)).append('\n').toString();
  }

  private static String visible(String line) {
    StringBuilder out = new StringBuilder(line.length());
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      out.append(c == '\t' || Character.isISOControl(c) ? ' ' : c);
    }
    return out.toString();
  }
}

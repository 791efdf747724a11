package leat.plan;

import leat.quantity.Visible;

/** One mistake of the user's, with its place; all of a file are reported together. */
public final class Problem {
  private final String code;
  private final Origin origin;
  private final String path;
  private final String message;
  private final String asked;
  private final String example;

  /**
   * @param code kebab-case name of the message, one gallery entry each
   * @param origin where it was typed, or null for the command as a whole
   * @param path key path such as {@code pump.curve[1]}, empty where there is none
   * @param message one clause that says what is needed, with an example, and what was found
   */
  public Problem(String code, Origin origin, String path, String message) {
    this(code, origin, path, message, null, null);
  }

  private Problem(
      String code, Origin origin, String path, String message, String asked, String example) {
    this.code = code;
    this.origin = origin;
    this.path = path;
    this.message = message;
    this.asked = asked;
    this.example = example;
  }

  /** The same, about a flag or key that is missing, with a value as one would type it. */
  public Problem asking(String flagOrKey, String value) {
    return new Problem(code, origin, path, message, flagOrKey, value);
  }

  /** The same with an amount of money in another currency than the examples' own. */
  Problem inCurrency(String currency) {
    boolean money =
        "hundredths".equals(code) || "no-currency".equals(code) || "unknown-currency".equals(code);
    int got = message.indexOf("; got ");
    if (!money || currency == null) {
      return this;
    }
    String said = got < 0 ? message : message.substring(0, got);
    String rest = got < 0 ? "" : message.substring(got);
    String ours = said.replace(" EUR", " " + currency).replace(", with the code of yours", "");
    return new Problem(code, origin, path, ours + rest, asked, example);
  }

  /** The flag or key that is missing, or null when it is about something else. */
  public String asked() {
    return asked;
  }

  /** A value of it as one would type it, or null. */
  public String example() {
    return example;
  }

  /** Kebab-case name of the message. */
  public String code() {
    return code;
  }

  /** The message without its place. */
  public String message() {
    return message;
  }

  /** Key path, or empty. */
  public String path() {
    return path;
  }

  /** The last part of the path: the key alone, without a file's name before it. */
  public String key() {
    int colon = path.indexOf(": ");
    return colon < 0 ? path : path.substring(colon + 2);
  }

  /** Whether it was typed at the same place and is the same mistake. */
  boolean isSameAs(Problem other) {
    return origin != null
        && other.origin != null
        && origin.source == other.origin.source
        && origin.source.isFile()
        && origin.line == other.origin.line
        && origin.column == other.origin.column
        && code.equals(other.code);
  }

  /** Whether it stands in a file, and where: for putting mistakes in order. */
  static int compare(Problem a, Problem b) {
    boolean fileA = a.origin != null && a.origin.source.isFile();
    boolean fileB = b.origin != null && b.origin.source.isFile();
    if (!fileA || !fileB) {
      return fileA ? -1 : fileB ? 1 : 0;
    }
    int lines = a.origin.line - b.origin.line;
    return lines != 0 ? lines : a.origin.column - b.origin.column;
  }

  /** Place, key, message, then the typed line with a caret; ends in a line feed. */
  public String render() {
    StringBuilder out = new StringBuilder();
    if (origin != null) {
      out.append(Visible.of(origin.place())).append(": ");
    }
    if (!path.isEmpty() && (origin == null || origin.source.isFile())) {
      out.append(Visible.of(path)).append(": ");
    }
    out.append(Visible.of(message, "\n")).append('\n');
    if (origin != null && origin.source.isFile()) {
      out.append(Visible.of(origin.excerpt(), "\n"));
    }
    return out.toString();
  }
}

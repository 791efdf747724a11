package leat.plan;

/** One mistake of the user's, with its place; all of a file are reported together. */
public final class Problem {
  private final String code;
  private final Origin origin;
  private final String path;
  private final String message;

  /**
   * @param code kebab-case name of the message, one gallery entry each
   * @param origin where it was typed, or null for the command as a whole
   * @param path key path such as {@code pump.curve[1]}, empty where there is none
   * @param message one clause that says what is needed, with an example, and what was found
   */
  public Problem(String code, Origin origin, String path, String message) {
    this.code = code;
    this.origin = origin;
    this.path = path;
    this.message = message;
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

  /** Place, key, message, then the typed line with a caret; ends in a line feed. */
  public String render() {
    StringBuilder out = new StringBuilder();
    if (origin != null) {
      out.append(origin.place()).append(": ");
    }
    if (!path.isEmpty() && (origin == null || origin.source.isFile())) {
      out.append(path).append(": ");
    }
    out.append(message).append('\n');
    if (origin != null && origin.source.isFile()) {
      out.append(origin.excerpt());
    }
    return out.toString();
  }
}

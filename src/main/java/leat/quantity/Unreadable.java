package leat.quantity;

/**
 * A text that is no quantity of the kind that is needed. The message is one clause without the
 * place, which only the caller knows; the offsets say which part of the typed text a caret should
 * point at.
 */
public final class Unreadable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String code;
  private final int start;
  private final int end;
  private final String suggestion;
  private final boolean otherThing;

  /**
   * A refusal by a reader outside this package.
   *
   * @param code kebab-case name of the message
   * @param message one clause without the place and without a final stop
   * @param start offset of the first wrong character
   * @param end offset after the last
   * @param suggestion the whole text as it was probably meant, or null
   */
  public Unreadable(String code, String message, int start, int end, String suggestion) {
    this(code, message, start, end, suggestion, false);
  }

  Unreadable(
      String code, String message, int start, int end, String suggestion, boolean otherThing) {
    super(message, null, false, false);
    this.code = code;
    this.otherThing = otherThing;
    this.start = start;
    this.end = end;
    this.suggestion = suggestion;
  }

  /** Kebab-case name of the message. */
  public String code() {
    return code;
  }

  /** What is wrong, in one clause without a final stop. */
  public String message() {
    return getMessage();
  }

  /** Offset of the first wrong character in the text that was typed. */
  public int start() {
    return start;
  }

  /** Offset after the last wrong character. */
  public int end() {
    return end;
  }

  /** The whole typed text as it was probably meant, or null when that would be a guess. */
  public String suggestion() {
    return suggestion;
  }

  /** Whether something else, or nothing, stands where a quantity is needed; no slip within it. */
  boolean isOtherThing() {
    return otherThing;
  }
}

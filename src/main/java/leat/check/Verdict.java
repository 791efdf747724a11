package leat.check;

/** What a rule says of a plan. */
public enum Verdict {
  /** The rule is broken. */
  FAIL("fail"),
  /** Doubtful: works, but wants a look. */
  WARN("warn"),
  /** A key is missing, so it cannot be judged. */
  UNKNOWN("unknown"),
  /** Kept. */
  PASS("pass");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** As written in csv and json. */
  public String word() {
    return word;
  }
}

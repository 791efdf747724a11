package leat.check;

/** What a rule says of a plan, the worst first. */
public enum Verdict {
  /** The rule is broken. */
  FAIL("fail"),
  /** Doubtful: works, but wants a look. */
  WARN("warn"),
  /** It cannot be judged: a key is missing, or the model has no answer. */
  UNKNOWN("unknown"),
  /** Kept. */
  PASS("pass"),
  /** Switched off by the plan: counts as nothing. */
  OFF("off");

  private static final int SIZE = 5;

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** As written in text, csv and json. */
  public String word() {
    return word;
  }

  /** How many verdicts there are. */
  public static int size() {
    return SIZE;
  }
}

package leat.plan;

import java.util.List;

/**
 * Bad input or a wrong command line: nothing is computed, the problems are printed, exit code 2 (or
 * 3 for files).
 */
public final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final int MOST_SHOWN = 20;
  private static final String MISSING = "missing-key";

  private final transient List<Problem> problems;
  private final int exitCode;

  /** Mistakes of input: exit code 2. */
  public Refused(List<Problem> problems) {
    this(problems, 2);
  }

  /** One mistake of input: exit code 2. */
  public Refused(Problem problem) {
    this(List.of(problem), 2);
  }

  /** Problems with an exit code of their own. */
  public Refused(List<Problem> problems, int exitCode) {
    super(null, null, false, false);
    this.problems = List.copyOf(problems);
    this.exitCode = exitCode;
  }

  /** The problems in the order they were found. */
  public List<Problem> problems() {
    return problems;
  }

  /** 2 for the user's mistake, 3 for a file that cannot be read or written. */
  public int exitCode() {
    return exitCode;
  }

  /**
   * The keys that are missing, in words.
   *
   * @throws Refused this one, if it is about anything else: a mistake of the whole plan
   */
  public String missingKeys() {
    StringBuilder keys = new StringBuilder();
    int n = problems.size();
    for (int i = 0; i < n; i++) {
      if (!MISSING.equals(problems.get(i).code())) {
        throw this;
      }
      keys.append(i == 0 ? "" : i == n - 1 ? " and " : ", ").append(problems.get(i).key());
    }
    return keys.toString();
  }

  @Override
  public String getMessage() {
    StringBuilder out = new StringBuilder();
    int shown = Math.min(MOST_SHOWN, problems.size());
    for (int i = 0; i < shown; i++) {
      out.append(problems.get(i).render());
    }
    if (problems.size() > shown) {
      out.append("and ").append(problems.size() - shown).append(" more\n");
    }
    return out.toString();
  }
}

package leat.command.plans;

import leat.cli.ShellWord;
import leat.plan.Problem;

/** Messages of the plan commands, one named method each; the error gallery holds an entry each. */
public final class PlanCommandErrors {
  private PlanCommandErrors() {}

  /** A file that {@code plan new} would write over. */
  public static Problem alreadyThere(String file) {
    return new Problem("already-there", null, file, "it is there already; --force writes over it");
  }

  /** A file for the changed plan, which goes into the plan's own file. */
  public static Problem setsInPlace(String plan, java.util.List<String> sets, String file) {
    StringBuilder line = new StringBuilder("leat plan set -");
    for (int i = 0; i < sets.size(); i++) {
      line.append(' ').append(ShellWord.quoted(sets.get(i)));
    }
    return new Problem(
        "sets-in-place",
        null,
        "--output",
        "the keys are written into "
            + plan
            + " itself, not into "
            + file
            + "; to keep it as it is:  "
            + line
            + " < "
            + ShellWord.quoted(plan)
            + " > "
            + ShellWord.quoted(file));
  }

  /** Two prefixes. */
  public static Problem onePrefix(String second) {
    return new Problem(
        "one-prefix",
        null,
        "leat plan keys",
        "one prefix at a time; \"" + second + "\" is a second");
  }

  /** A prefix under which no key is. */
  public static Problem noSuchKey(String typed, String near) {
    return new Problem(
        "no-such-key",
        null,
        "leat plan keys",
        "no key begins with \""
            + typed
            + "\""
            + (near == null
                ? "; leat plan keys lists them all"
                : "; did you mean \"" + near + "\"?"));
  }
}

package leat.command.plans;

import leat.plan.Problem;
import leat.quantity.Nearest;

/** Messages of the plan commands, one named method each; the error gallery holds an entry each. */
public final class PlanCommandErrors {
  private PlanCommandErrors() {}

  /** A word behind {@code leat plan} that is none of its commands. */
  public static Problem unknownPlanCommand(String typed) {
    String near = Nearest.of(typed, java.util.List.of("new", "schema", "show", "keys"));
    return new Problem(
        "unknown-plan-command",
        null,
        "leat plan",
        "no \""
            + typed
            + "\" there; "
            + (near == null
                ? "it has new, schema, show and keys"
                : "did you mean \"plan " + near + "\"?"));
  }

  /** A file that {@code plan new} would write over. */
  public static Problem alreadyThere(String file) {
    return new Problem("already-there", null, file, "it is there already; --force writes over it");
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

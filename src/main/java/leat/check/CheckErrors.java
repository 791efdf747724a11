package leat.check;

import leat.plan.Named;
import leat.plan.Problem;
import leat.quantity.Nearest;

/** Messages about rules, one named method each; the error gallery holds an entry for each. */
public final class CheckErrors {
  private CheckErrors() {}

  /** Several plans under {@code --doubt}. */
  public static Problem doubtsOnePlan() {
    return new Problem(
        "doubts-one-plan", null, "leat check", "--doubt takes one plan; ask for each by itself");
  }

  /** An entry of {@code limits} that is no rule. */
  public static Problem unknownRule(Named limits, int i) {
    return limits.problem(i, "limits", "unknown-rule", unknown(limits.name(i)));
  }

  /** A rule id on the command line that is none. */
  public static Problem noSuchRule(String typed) {
    return new Problem("no-such-rule", null, "leat check", unknown(typed));
  }

  private static String unknown(String typed) {
    String renamed = OldNames.now(typed);
    String near =
        renamed != null ? renamed : Nearest.of(typed, java.util.Arrays.asList(Rules.ids()));
    return "no rule \""
        + typed
        + "\""
        + (near == null ? "; leat check --rules lists them" : "; did you mean \"" + near + "\"?");
  }

  /** A limit for a rule that holds nothing against a number. */
  public static Problem takesNoLimit(Named limits, int i) {
    return limits.problem(
        i,
        "limits",
        "takes-no-limit",
        "this rule has no limit to set; only \"none\", which switches it off, can stand here; got \""
            + limits.value(i)
            + "\"");
  }

  /** A limit that cannot be read in the rule's unit. */
  public static Problem badLimit(Named limits, int i, String why, String code) {
    return limits.problem(i, "limits", code, why);
  }
}

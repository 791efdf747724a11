package leat.cli;

import leat.plan.Problem;
import leat.quantity.Nearest;

/**
 * Every message about a command line, one named method each; the error gallery holds an entry for
 * each.
 */
public final class CommandErrors {
  private CommandErrors() {}

  static Problem problem(String code, Command command, String message) {
    return new Problem(code, null, "leat " + command.name(), message);
  }

  /** What was meant, else what there is. */
  static String meant(String near, String otherwise) {
    return near == null ? otherwise : "; did you mean \"" + near + "\"?";
  }

  /** A tower by its name, where no plan is read that has towers. */
  public static Problem towerOfNoPlan(Command command, String typed) {
    return problem(
        "tower-of-no-plan",
        command,
        "--tower names a tower of a plan, and no plan is named: add --plan FILE, or leave --tower out; got \""
            + typed
            + "\"");
  }

  /** A command nobody knows. */
  public static Problem unknownCommand(String typed, java.util.List<String> names) {
    String near = Nearest.of(typed.replace('-', ' '), names);
    return new Problem(
        "unknown-command",
        null,
        "leat",
        "no command \"" + typed + "\"" + meant(near, "; leat --help lists them"));
  }

  /** A word behind a command that is none of its sub-commands. */
  public static Problem unknownSubCommand(
      String command, String typed, java.util.List<String> subs) {
    String near = Nearest.of(typed, subs);
    return new Problem(
        "unknown-sub-command",
        null,
        "leat " + command,
        "no \""
            + typed
            + "\" there; "
            + (near == null
                ? "it has " + String.join(", ", subs)
                : "did you mean \"" + command + " " + near + "\"?"));
  }

  /** Several plans where one is read. */
  public static Problem onePlan(Command command, String second) {
    return problem("one-plan", command, "one plan at a time; \"" + second + "\" is a second");
  }

  /** A flag the command does not have. */
  public static Problem unknownFlag(Command command, String typed, Flag[] flags) {
    int equals = typed.indexOf('=');
    String name = equals > 0 ? typed.substring(0, equals) : typed;
    String[] names = new String[flags.length];
    for (int i = 0; i < flags.length; i++) {
      names[i] = flags[i].name;
    }
    String near = format(command, name);
    near = near == null ? Nearest.of(name, java.util.Arrays.asList(names)) : near;
    return problem(
        "unknown-flag",
        command,
        "no flag "
            + name
            + (near == null
                ? "; leat " + command.name() + " --help lists them"
                : "; did you mean " + near + "?"));
  }

  /** The way to a format that was typed as a flag, or null. */
  private static String format(Command command, String typed) {
    boolean is = typed.startsWith("--") && isFormat(command, typed.substring(2));
    return is ? CommonFlags.FORMAT.name + " " + typed.substring(2) : null;
  }

  static boolean isFormat(Command command, String word) {
    return java.util.Arrays.asList(command.formats()).contains(word);
  }

  /** A flag given twice. */
  public static Problem flagTwice(Command command, String flag) {
    return problem("flag-twice", command, flag + " is given twice; it takes one value");
  }

  /** A flag at the end without its value. */
  public static Problem missingValue(Command command, String flag) {
    return problem("missing-value", command, flag + " wants a value behind it");
  }

  /** What picocli says when nothing above fits. */
  public static Problem badCommandLine(Command command, String why) {
    return problem("bad-command-line", command, why);
  }

  /** An operand where none is taken. */
  public static Problem noOperands(Command command, String operand) {
    String meant = null;
    for (int i = 0; i < command.flags().length && meant == null; i++) {
      meant = command.flags()[i].withBare(operand);
    }
    String mend =
        meant == null
            ? "; values with a space want quotes, such as --bore \"13 mm\""
            : "; did you mean " + meant + "?";
    return problem("no-operands", command, "\"" + operand + "\" belongs to no flag" + mend);
  }

  /** A flag the question cannot do without. */
  public static Problem needed(Command command, Flag flag) {
    return problem(
            "needed-flag",
            command,
            flag.name()
                + " is needed ("
                + flag.meaning()
                + "), such as "
                + flag.name()
                + " \""
                + flag.example()
                + "\"")
        .asking(flag.name(), flag.example());
  }

  /** One of several ways to ask is needed. */
  public static Problem neededOneOf(Command command, String ways) {
    return problem("needed-one-of", command, ways);
  }

  /** Two flags that exclude each other. */
  public static Problem notBoth(Command command, String one, String other) {
    return problem(
        "not-both", command, one + " and " + other + " ask for different things; give one of them");
  }

  /** A flag that says something about a question that is not asked. */
  public static Problem withoutItsQuestion(Command command, String flag, String[] questions) {
    String asked = String.join(" or ", questions);
    return problem(
        "without-its-question",
        command,
        flag
            + " belongs to "
            + asked
            + ", which is not asked here: add it, or leave "
            + flag
            + " out");
  }

  /** A plan is needed. */
  public static Problem neededPlan(Command command) {
    return problem(
        "needed-plan",
        command,
        "a plan is needed: name a file, or set LEAT_PLAN; `leat plan new` writes one to start from");
  }

  /** 0 or negative where that means nothing. */
  public static Problem mustBeAbove0(String flag, String typed) {
    return new Problem("must-be-above-0", null, flag, "it must be above 0; got \"" + typed + "\"");
  }

  /** Negative where that means nothing. */
  public static Problem cannotBeNegative(String flag, String typed) {
    return new Problem(
        "cannot-be-negative", null, flag, "it cannot be negative; got \"" + typed + "\"");
  }

  /** A separator that is none. */
  public static Problem notACharacter(String flag, String typed) {
    return new Problem(
        "not-a-character",
        null,
        flag,
        "one character is needed, such as \";\" or tab; got \"" + typed + "\"");
  }

  /** The same sign between columns and decimals. */
  public static Problem sameSeparators(char sign) {
    return new Problem(
        "same-separators",
        null,
        "--delimiter",
        "columns and decimals cannot both be parted by \""
            + sign
            + "\"; write --delimiter \";\" --decimal \",\"");
  }

  /** A word that is none of a list. */
  public static Problem unknownWord(
      String what, String typed, String near, java.util.List<String> known) {
    String mend = meant(near, "; known: " + String.join(", ", known));
    return new Problem("unknown-word", null, what, "no " + what + " \"" + typed + "\"" + mend);
  }

  /** A key of --value that the answer has not. */
  public static Problem noKey(Command command, String key, java.util.List<String> keys) {
    String near = Nearest.of(key, keys);
    return problem(
        "no-key",
        command,
        "the answer has no \""
            + key
            + "\""
            + (keys.isEmpty()
                ? ": it is one text, without columns"
                : meant(near, "; it has " + String.join(", ", keys))));
  }

  /** Repeated flags that do not pair. */
  public static Problem notAsMany(Command command, String one, String other) {
    return problem(
        "not-as-many",
        command,
        one + " is wanted as often as " + other + ", one for each stretch of pipe");
  }

  /** Physics or chemistry refuses an input. */
  public static Problem impossible(String quantity, String reason) {
    return new Problem("impossible", null, quantity, reason);
  }

  /** More than the memory holds. */
  public static Problem tooLarge() {
    return new Problem(
        "out-of-memory",
        null,
        "leat",
        "what is asked does not fit into the memory: ask for fewer rows, marks or steps at a time");
  }

  /** A bug of ours. */
  public static Problem bug(String what) {
    return new Problem(
        "bug",
        null,
        "leat",
        "this is a bug in leat, not a mistake of yours ("
            + what
            + "); please report the command line");
  }

  /** A calendar without an event. */
  public static Problem noEvents() {
    return new Problem(
        "no-events",
        null,
        "--format ics",
        "there is nothing to put into a calendar: no change, no sowing, no time away");
  }

  /** A number of days that is not whole. */
  public static Problem wholeDays(String flag, String typed) {
    return new Problem(
        "whole-days-flag",
        null,
        flag,
        "it counts whole days, such as \"7 d\"; got \"" + typed + "\"");
  }
}

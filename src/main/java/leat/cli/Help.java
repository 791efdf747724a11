package leat.cli;

import java.util.List;
import leat.answer.Wrap;
import leat.plan.Key;
import leat.plan.Keys;

/** Help texts from the one declaration of commands and flags. */
final class Help {
  private static final int COLUMN = 34;
  private static final int LINE = 100;

  /** Room that the words beside a flag want at least; on a narrower screen they stand below it. */
  private static final int LEAST_ROOM = 36;

  private final CommandList commands;
  private final int width;
  private List<String> required = List.of();
  private List<String> requiredAlone = List.of();
  private final StringBuilder out = new StringBuilder();

  /**
   * @param commands the list
   * @param columns width of the screen, or 0 for the usual one
   */
  Help(CommandList commands, int columns) {
    this.commands = commands;
    this.width = columns == 0 ? LINE : columns;
  }

  static String version() {
    String version = Machine.version();
    return "leat " + (version == null ? "(not packaged)" : version) + "\n";
  }

  String overview() {
    words("leat sizes, checks and runs a recirculating hydroponic tower at home.");
    out.append("\nUsage: leat COMMAND [FLAGS]      leat COMMAND --help      leat --version [-v]\n");
    String[] groups = commands.groups();
    List<String[]> all = commands.all();
    for (int g = 0; g < groups.length; g++) {
      out.append('\n').append(groups[g]).append('\n');
      for (int i = 0; i < all.size(); i++) {
        String name = all.get(i)[1];
        if (all.get(i)[0].equals(groups[g])) {
          entry("  ", name, 16, commands.of(name).summary());
        }
      }
    }
    out.append('\n');
    words(
        "A plan says what the tower is: `leat plan new` writes one to start from, `leat check`"
            + " judges it. Flags that every command has: `leat help flags`.");
    return out.toString();
  }

  /** The flags that every command has. */
  String flags() {
    words("These flags belong to every command; those of the plan to each that reads one.");
    out.append("\nFlags\n");
    flags(CommonFlags.everywhere());
    return out.toString();
  }

  String of(Command command) {
    words(sentence(command.summary()));
    out.append("\nUsage: leat ").append(command.name());
    out.append(command.operands().isEmpty() ? "" : " " + command.operands()).append(" [FLAGS]\n");
    examples(command);
    subCommands(command);
    String[] operands = commands.operandWords(command);
    if (operands != null) {
      out.append('\n');
      words(command.operands() + " is one of: " + String.join(", ", operands));
    }
    required = Asking.always(command);
    requiredAlone = Asking.withoutPlan(command);
    Flag[] own = command.flags();
    if (own.length > 0) {
      out.append("\nFlags\n");
      flags(own);
    }
    out.append('\n');
    words("Flags of every command: " + names(CommonFlags.of(command)) + "; see `leat help flags`.");
    return out.toString();
  }

  private void examples(Command command) {
    String[] examples = command.examples();
    out.append("\nExamples\n");
    for (int i = 0; i < examples.length; i++) {
      out.append("  leat ").append(examples[i]).append('\n');
    }
  }

  private void subCommands(Command command) {
    List<String> subs = commands.subs(command.name());
    if (subs.isEmpty()) {
      return;
    }
    out.append("\nCommands\n");
    for (int i = 0; i < subs.size(); i++) {
      String name = command.name() + " " + subs.get(i);
      entry("  ", name, 16, commands.of(name).summary());
    }
  }

  /** A summary as the sentence it is. */
  private static String sentence(String summary) {
    return Character.toUpperCase(summary.charAt(0)) + summary.substring(1) + ".";
  }

  private static String names(Flag[] flags) {
    StringBuilder names = new StringBuilder();
    for (int i = 0; i < flags.length; i++) {
      names.append(i == 0 ? "" : " ").append(flags[i].name);
    }
    return names.toString();
  }

  private void flags(Flag[] flags) {
    for (int i = 0; i < flags.length; i++) {
      Flag flag = flags[i];
      String left =
          (flag.shortName == null ? "    " : flag.shortName + ", ")
              + flag.name
              + (flag.hasValue() ? " " + flag.label : "");
      entry("  ", left, COLUMN - 2, right(flag));
    }
  }

  private String right(Flag flag) {
    StringBuilder right = new StringBuilder(flag.meaning);
    String[] known = commands.words(flag);
    if (known != null) {
      right.append(": ").append(String.join(", ", known));
    }
    if (!flag.example.isEmpty() && (known == null || flag.example.indexOf('=') > 0)) {
      right.append(", such as \"").append(flag.example).append('"');
    }
    String otherwise = flag.byDefault != null ? flag.byDefault : defaultOf(flag.planPath);
    if (flag.required || required.contains(flag.name)) {
      right.append(" (required)");
    } else if (requiredAlone.contains(flag.name)) {
      right.append(" (required without a plan)");
    } else if (otherwise != null) {
      right.append(" (default ").append(otherwise).append(')');
    }
    return right.append(flag.repeatable ? " (repeatable)" : "").toString();
  }

  /** The declared default of the key that a flag sets, or null. */
  private static String defaultOf(String path) {
    Key key = path == null ? null : Keys.PLAN;
    int start = 0;
    while (key != null && start < path.length()) {
      int dot = path.indexOf('.', start);
      int end = dot < 0 ? path.length() : dot;
      String part = path.substring(start, end);
      int bracket = part.indexOf('[');
      key = key.find(bracket < 0 ? part : part.substring(0, bracket));
      start = end + 1;
    }
    return key == null ? null : key.byDefault();
  }

  private void words(String text) {
    out.append(Wrap.text(text, width, "")).append('\n');
  }

  /** A name and what it means, beside it or on a narrow screen below. */
  private void entry(String indent, String name, int room, String meaning) {
    int column = indent.length() + room;
    out.append(indent).append(name);
    boolean below = width - column < LEAST_ROOM;
    if (below) {
      column = 8;
      out.append('\n').append(" ".repeat(column));
    } else {
      out.append(" ".repeat(Math.max(2, room - name.length())));
    }
    int first =
        below ? width - column : width - indent.length() - Math.max(room, name.length() + 2);
    List<String> lines = Wrap.lines(meaning, first, width - column);
    out.append(String.join("\n" + " ".repeat(column), lines)).append('\n');
  }
}

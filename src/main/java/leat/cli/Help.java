package leat.cli;

import java.util.List;

/** Help texts from the one declaration of commands and flags. */
final class Help {
  private static final int COLUMN = 34;
  private static final int LINE = 100;

  private Help() {}

  static String version() {
    String version = Help.class.getPackage().getImplementationVersion();
    return "leat " + (version == null ? "(not packaged)" : version) + "\n";
  }

  static String overview(CommandList commands) {
    StringBuilder out = new StringBuilder();
    out.append("leat sizes, checks and runs a recirculating hydroponic tower at home.\n\n");
    out.append("Usage: leat COMMAND [FLAGS]      leat COMMAND --help      leat --version\n");
    String[] groups = commands.groups();
    List<String[]> all = commands.all();
    for (int g = 0; g < groups.length; g++) {
      out.append('\n').append(groups[g]).append('\n');
      for (int i = 0; i < all.size(); i++) {
        String name = all.get(i)[1];
        if (all.get(i)[0].equals(groups[g]) && name.indexOf(' ') < 0) {
          String summary = commands.of(name).summary();
          out.append("  ").append(padded(name, 14)).append(summary).append('\n');
        }
      }
    }
    out.append(
        "\nA plan says what the tower is: leat plan new writes one to start from, leat check judges it.\n");
    return out.toString();
  }

  static String of(Command command) {
    StringBuilder out = new StringBuilder();
    out.append("leat ")
        .append(command.name())
        .append(": ")
        .append(command.summary())
        .append("\n\n");
    out.append("Usage: leat ").append(command.name());
    out.append(command.operands().isEmpty() ? "" : " " + command.operands()).append(" [FLAGS]\n");
    String[] examples = command.examples();
    out.append("\nExamples\n");
    for (int i = 0; i < examples.length; i++) {
      out.append("  leat ").append(examples[i]).append('\n');
    }
    out.append("\nFlags\n");
    flags(out, command.flags());
    out.append("\nFlags of every command\n");
    flags(out, CommonFlags.of(command));
    return out.toString();
  }

  private static void flags(StringBuilder out, Flag[] flags) {
    for (int i = 0; i < flags.length; i++) {
      Flag flag = flags[i];
      String left =
          (flag.shortName == null ? "    " : flag.shortName + ", ")
              + flag.name
              + (flag.hasValue() ? " " + flag.label : "");
      String right = flag.meaning;
      if (!flag.example.isEmpty()) {
        right += ", such as \"" + flag.example + "\"";
      }
      if (flag.repeatable) {
        right += " (repeatable)";
      }
      out.append("  ").append(padded(left, COLUMN - 2)).append(wrapped(right)).append('\n');
    }
  }

  private static String wrapped(String text) {
    StringBuilder out = new StringBuilder();
    int start = 0;
    int room = LINE - COLUMN;
    while (text.length() - start > room) {
      int end = text.lastIndexOf(' ', start + room);
      if (end <= start) {
        break;
      }
      out.append(text, start, end).append('\n').append(" ".repeat(COLUMN));
      start = end + 1;
    }
    return out.append(text.substring(start)).toString();
  }

  private static String padded(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }
}

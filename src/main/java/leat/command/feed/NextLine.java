package leat.command.feed;

/** A command line as part of a template: its braces are braces. */
final class NextLine {
  private NextLine() {}

  static String of(String commandLine) {
    return commandLine.replace("{", "{{");
  }
}

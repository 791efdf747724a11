package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Row;

/** A command line as part of a template: its braces are braces. */
final class NextLine {
  private NextLine() {}

  static String of(String commandLine) {
    return commandLine.replace("{", "{{");
  }

  /**
   * A Next line.
   *
   * @param line the start as {@link leat.cli.Call#again} gives it; braces in it are kept
   * @param row values of the rest
   * @param template the rest
   */
  static void of(Answer answer, String line, Row row, String template) {
    answer.next(row, of(line) + template);
  }
}

package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Row;

/** A command line as it was typed, then words with values in them. */
final class NextLine {
  private NextLine() {}

  /**
   * A Next line.
   *
   * @param line the start as {@link leat.cli.Call#again} gives it; braces in it are kept
   * @param row values of the rest
   * @param template the rest
   */
  static void of(Answer answer, String line, Row row, String template) {
    answer.next(row, line.replace("{", "{{") + template);
  }
}

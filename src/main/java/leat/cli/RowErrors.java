package leat.cli;

import leat.plan.Problem;

/** Messages about tables of rows that were read in. */
public final class RowErrors {
  private RowErrors() {}

  /** Quotes in a file of rows that do not close. */
  public static Problem brokenRows(String file) {
    return new Problem(
        "broken-rows", null, file, "a quoted cell is not closed, or text follows its quote");
  }

  /** A file of rows that is too large to be a list of pours or dipstick marks. */
  public static Problem tooManyRows(String file) {
    return new Problem("too-many-rows", null, file, "it is larger than 16 MB: another file?");
  }

  /** Rows that the trade refuses as a whole. */
  public static Problem rowsRefused(String file, String quantity, String why) {
    return new Problem("rows-refused", null, file, quantity + ": " + why);
  }

  /** A line without an end. */
  public static Problem lineTooLong(String source) {
    return new Problem(
        "line-too-long", null, source, "a line is longer than 1 MB: these are no rows of a table");
  }
}

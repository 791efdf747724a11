package leat.cli;

import leat.plan.Problem;

/** Messages about tables of rows that were read in. */
public final class RowErrors {
  private RowErrors() {}

  /** Two columns of one name. */
  public static Problem columnTwice(String source, String column) {
    return new Problem(
        "column-twice", null, source, "two columns are named \"" + column + "\"; rename one");
  }

  /** Not one row that could be read. */
  public static Problem allBad(String source, long rows, String first) {
    return new Problem(
        "all-rows-bad",
        null,
        source,
        "none of its " + rows + " rows could be read; the first: " + first);
  }

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

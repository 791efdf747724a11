package leat.cli;

import leat.plan.Problem;
import leat.quantity.Nearest;

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
        rows == 1
            ? "its one row could not be read: " + first
            : "none of its " + rows + " rows could be read; the first: " + first);
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

  /** Rows without even a header. */
  public static Problem emptyRows(String source) {
    return new Problem(
        "empty-rows",
        null,
        source,
        "there are no rows, not even a header line with the column names");
  }

  /** A column that is not there. */
  public static Problem noColumn(String source, String column, java.util.List<String> names) {
    String near = Nearest.of(column, names);
    return new Problem(
        "no-column",
        null,
        source,
        "no column \""
            + column
            + "\""
            + CommandErrors.meant(near, "; it has " + String.join(", ", names)));
  }

  /** A column of the answer that the rows have already. */
  public static Problem nameClash(String source, String column) {
    return new Problem(
        "name-clash",
        null,
        source,
        "the rows have a column \""
            + column
            + "\" already; --prefix leat_ puts something before the answer's names");
  }

  /** A bad row under --strict. */
  public static Problem badRow(String source, long row, String column, String why) {
    return new Problem("bad-row", null, source, "row " + row + ", column " + column + ": " + why);
  }

  /** Rows that come one by one have no page. */
  public static Problem noPageOfRows(Command command) {
    return CommandErrors.problem(
        "no-page-of-rows",
        command,
        "rows that come one by one are csv or json; --chart and --format html are for an answer without them");
  }

  /** Rows that come one by one have no working. */
  public static Problem noWorkingOfRows(Command command) {
    return CommandErrors.problem(
        "no-working-of-rows",
        command,
        "--explain shows the numbers of one answer, not of rows that come one by one; ask one of them without --column");
  }
}

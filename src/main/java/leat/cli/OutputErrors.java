package leat.cli;

import leat.plan.Problem;

/** What is said when an answer cannot go where it was sent. */
public final class OutputErrors {
  private OutputErrors() {}

  /** A chart in a format of bare rows. */
  public static Problem chartInText(Command command, String format) {
    return CommandErrors.problem(
        "chart-in-text",
        command,
        "--chart draws under the text; leave --format " + format + " out, or take --format html");
  }

  /** A page would be written over a terminal. */
  public static Problem pageToScreen(Command command) {
    return CommandErrors.problem(
        "page-to-screen",
        command,
        "a page of html is for a browser: add -o page.html, and open that file");
  }

  /** An answer that is one text to paste has no page. */
  public static Problem noPage(Command command) {
    return CommandErrors.problem(
        "no-page", command, "this answer is a text to keep as it is: leave --format html out");
  }

  /** An output file that cannot be written. */
  public static Problem cannotWrite(String name, String why) {
    return new Problem("cannot-write", null, name, why);
  }

  /** A format where a file is meant to be named. */
  public static Problem formatAsFile(Command command, String format) {
    return CommandErrors.problem(
        "format-as-file",
        command,
        "--output names a file; did you mean --format "
            + format
            + "? A file of that name is --output ./"
            + format);
  }

  /** The answer would be written over what it is worked out from. */
  public static Problem writesOverInput(Command command, String file) {
    return CommandErrors.problem(
        "writes-over-input",
        command,
        "--output " + file + " would write the answer over what is read; name another file");
  }
}

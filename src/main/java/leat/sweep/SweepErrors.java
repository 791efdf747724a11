package leat.sweep;

import java.util.List;
import leat.plan.Problem;
import leat.quantity.Nearest;
import leat.quantity.Unreadable;

/** Messages about a sweep, one named method each. */
public final class SweepErrors {
  private SweepErrors() {}

  private static Problem problem(String code, String at, String message) {
    return new Problem(code, null, at, message);
  }

  /** A range whose ends are the wrong way round. */
  public static Problem fromOverTo(String flag, String typed) {
    return problem(
        "range-backwards",
        flag,
        "the first end must lie under the second, such as 0.8..1.4 m; got \"" + typed + "\"");
  }

  /** Steps of a bare number. */
  public static Problem noSteps(String flag, String typed) {
    return problem(
        "no-steps",
        flag,
        "a list such as 1,2,3 or a range such as 4..8 step 1 is needed; got \"" + typed + "\"");
  }

  /** What the reader of a range says. */
  public static Problem unreadable(String flag, Unreadable e) {
    return problem("range-unreadable", flag, e.message());
  }

  /** A value that is nothing. */
  public static Problem emptyValue(String flag, String typed) {
    return problem("empty-value", flag, "a value is missing beside a comma; got \"" + typed + "\"");
  }

  /** --vary without its equals sign. */
  public static Problem badVary(String typed) {
    return problem(
        "bad-vary",
        "--vary",
        "KEY=VALUES is needed, such as \"towers[*].riser.bore=10mm,12mm,16mm\"; got \""
            + typed
            + "\"");
  }

  /** The same key twice. */
  public static Problem keyTwice(String flag, String path) {
    return problem("key-twice", flag, path + " is varied twice; put all its values in one list");
  }

  /** Nothing is varied. */
  public static Problem nothingVaried() {
    return problem(
        "nothing-varied",
        "leat sweep",
        "nothing is varied: --vary KEY=V1,V2 or --rows designs.csv; --nudge and --doubt N need neither");
  }

  /** A range without steps and without a sample. */
  public static Problem noSample(String path) {
    return problem(
        "no-sample",
        "--vary " + path,
        "from..to wants a step, such as 0.8..1.4 m step 0.2 m, or --sample N for N designs between the ends");
  }

  /** More designs than anybody meant. */
  public static Problem tooManyDesigns(String many) {
    return problem(
        "too-many-designs",
        "leat sweep",
        "that makes " + many + " designs; --yes if you mean it, --sample N for some of them");
  }

  /** A slice that is none. */
  public static Problem badSlice(String typed) {
    return problem(
        "bad-slice",
        "--slice",
        "i/n is needed, such as 2/4, with i from 1 to n; got \"" + typed + "\"");
  }

  /** Slices cannot be ranked. */
  public static Problem sliceRanked(String flag) {
    return problem(
        "slice-ranked",
        "--slice",
        flag + " needs all designs together; rank when the slices are joined");
  }

  /** A measure nobody offers. */
  public static Problem noMeasure(String typed, List<String> names) {
    String near = Nearest.of(typed, names);
    return problem(
        "no-measure",
        "measure",
        "no measure \""
            + typed
            + "\""
            + (near == null
                ? "; leat sweep --measures lists them"
                : "; did you mean " + near + "?"));
  }

  /** A condition that is none. */
  public static Problem badWhere(String typed) {
    return problem(
        "bad-where",
        "--where",
        "a measure, a sign and a number are needed, such as \"margin_pct>20\"; got \""
            + typed
            + "\"");
  }

  /** Nought of what is counted. */
  public static Problem noneAsked(String flag) {
    return problem("none-asked", flag, "1 or more is needed; got \"0\"");
  }

  /** A table without designs. */
  public static Problem noRows(String file) {
    return problem("no-designs", file, "it has a header and no design under it");
  }

  /** What a question about guesses does not vary. */
  public static Problem guessesAlone(String question, String flag) {
    return problem(
        "guesses-alone",
        "leat sweep",
        question + " asks about the guesses of one plan; " + flag + " does not go with it");
  }

  /** A file of a section that is empty. */
  public static Problem emptyFragment(String name) {
    return problem("empty-fragment", name, "it is empty; a fragment holds the keys of its section");
  }
}

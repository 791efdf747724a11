package leat.command;

import leat.plan.Problem;
import leat.quantity.Unreadable;

/** Every message of the commands about the sender, one named method each. */
public final class LevelErrors {
  private LevelErrors() {}

  private static Problem problem(String code, Command command, String message) {
    return new Problem(code, null, "leat " + command.name(), message);
  }

  /** No reading was given. */
  public static Problem noReading(Command command) {
    return problem(
        "no-reading",
        command,
        "a reading in ohm is needed, such as leat level 83 --plan first-tower.yaml; --column NAME"
            + " takes rows from standard input");
  }

  /** Readings and a column of rows at once. */
  public static Problem readingsAndColumn(Command command, String reading) {
    return problem(
        "readings-and-column",
        command,
        "\"" + reading + "\" is a reading, and --column takes them from rows; give one of the two");
  }

  /** Something that is no reading in ohm. */
  static Unreadable notOhms(String typed) {
    return new Unreadable(
        "not-a-reading",
        "expected a reading in ohm, such as 83, or open; got \"" + typed + "\"",
        0,
        typed.length(),
        null);
  }

  /** Something that is no count of an ADC. */
  static Unreadable notCounts(String typed) {
    return new Unreadable(
        "not-counts",
        "expected counts of the ADC, a whole number such as 1286; got \"" + typed + "\"",
        0,
        typed.length(),
        null);
  }

  /** More below 0 than any meter's zero can be off. */
  static Unreadable negativeOhms(String typed) {
    return new Unreadable(
        "negative-reading",
        "a resistance cannot be negative; a meter's zero is off by an ohm or so, not by \""
            + typed
            + "\"",
        0,
        typed.length(),
        null);
  }
}

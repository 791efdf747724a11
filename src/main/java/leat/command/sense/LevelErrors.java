package leat.command.sense;

import leat.cli.Command;
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
        "reading-needed",
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

  /** A fit of readings that never change. */
  public static Problem noStep(String file) {
    return new Problem(
        "no-steps-in-pours",
        null,
        file,
        "the readings never change by a step: pour until they do, or state --same-within smaller");
  }

  /** Readings that neither rise nor fall. */
  public static Problem noDirection(String file) {
    return new Problem(
        "no-direction",
        null,
        file,
        "the readings say neither that the ohms rise nor that they fall as the tank fills; are the"
            + " columns the right ones?");
  }

  /** Litres that look like additions, and nobody said which they are. */
  public static Problem additionsOrTotals(String file) {
    return new Problem(
        "additions-or-totals",
        null,
        file,
        "the ohms follow the rows, not the litres: are these litres what was poured in each time?"
            + " Then --cumulative sums them up; if they are what the tank holds, say --totals");
  }

  /** A column whose name says another unit than one of volume. */
  public static Problem notAVolume(String file, String column) {
    return new Problem(
        "not-a-volume",
        null,
        file,
        "the column \""
            + column
            + "\" is no volume: name one in L, mL, gal or qt with --litres-column");
  }

  /** A fit without a file. */
  public static Problem noPours(Command command) {
    return problem(
        "no-pours",
        command,
        "a file of pours is needed, such as leat level fit pours.csv with the columns litres and"
            + " ohm; - is standard input");
  }

  /** A word that is no range of the trade. */
  public static Problem noRange(String typed) {
    return new Problem(
        "no-range",
        null,
        "--range",
        "known are 0-190, 10-180, 240-33 and 240-30, empty to full in ohm; else --empty and --full; got \""
            + typed
            + "\"");
  }

  /** Ladder without ends. */
  public static Problem noEnds(Command command) {
    return problem(
        "no-ends",
        command,
        "the wanted ohms are needed: --range 240-33, or --empty \"240 ohm\" --full \"33 ohm\"");
  }

  /** Levels of the reeds that nothing says. */
  public static Problem noReedLevels(Command command) {
    return problem(
        "no-reed-levels",
        command,
        "levels of the lowest and the highest reed are needed for this: --first \"45 mm\" --last"
            + " \"280 mm\"");
  }

  /** A row to leave out that is not there. */
  public static Problem noRow(String file, int row, int rows) {
    return new Problem(
        "no-row", null, file, "there is no row " + row + " to leave out; it has " + rows);
  }

  /** A reading that the ADC cannot give. */
  public static Problem impossibleReading(String typed, String why) {
    return new Problem("impossible-reading", null, "reading", why + "; got \"" + typed + "\"");
  }
}

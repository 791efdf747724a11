package leat.command.feed;

import java.util.List;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.numeric.Impossible;
import leat.plan.Problem;
import leat.plan.Refused;
import leat.quantity.Unreadable;
import leat.system.SaltsOf;

/** Messages of the feed's commands ec, dose, crops and oxygen, one named method each. */
public final class EcErrors {
  private EcErrors() {}

  /** A ppm reading of which nobody knows the scale. */
  public static Unreadable ppmWithoutScale(String typed, String ec500, String ec640, String ec700) {
    return new Unreadable(
        "ppm-without-scale",
        "ppm is not one unit: meters show the EC times 500, 640 or 700, so \""
            + typed
            + "\" is "
            + ec500
            + ", "
            + ec640
            + " or "
            + ec700
            + " mS/cm; the meter's manual says which: --scale 500, --scale 640 or --scale 700",
        0,
        typed.length(),
        null);
  }

  /** Bare numbers in a column whose name does not tell their unit. */
  public static Unreadable noUnitInRows(Unreadable bare) {
    return new Unreadable(
        "no-unit-in-rows",
        bare.message() + "; for a whole column say --unit and mS/cm, uS/cm, dS/m, mS/m or ppm",
        bare.start(),
        bare.end(),
        null);
  }

  /** Nothing to convert. */
  public static Problem noReading(Command command) {
    return new Problem(
        "no-reading",
        null,
        "leat " + command.name(),
        "a reading is needed, such as \"1.85 mS/cm\", or --ion NO3=620, or rows with --column");
  }

  /** A check wants one reading. */
  public static Problem oneReading(Command command) {
    return new Problem(
        "one-reading",
        null,
        "leat " + command.name(),
        "--standard checks one reading, the one the meter shows in the standard, such as"
            + " \"1.36 mS/cm\"");
  }

  /** Two temperature functions. */
  public static Problem twoFunctions(Command command) {
    return CommandErrors.notBoth(command, "--coefficient", "--natural-water");
  }

  /** A name that is no ion. */
  public static Problem noIon(String typed, String why, String near) {
    return new Problem(
        "no-ion",
        null,
        "--ion",
        "\""
            + typed
            + "\": "
            + why
            + (near == null || !why.startsWith("an ") ? "" : "; did you mean \"" + near + "\"?"));
  }

  /** An amount without its ion. */
  public static Problem noIonAmount(String typed) {
    return new Problem(
        "no-ion-amount",
        null,
        "--ion",
        "an ion and how much of it is needed, such as \"Ca=3 mmol/L\"; got \"" + typed + "\"");
  }

  /** A label that is none. */
  public static Problem noLabel(String typed) {
    return new Problem(
        "no-label",
        null,
        "--feed",
        "the figures of a label are needed, such as \"4-2-6\" for N-P-K, or \"MgO=1\"; got \""
            + typed
            + "\"");
  }

  /** Figures that no label can have. */
  public static Problem badFeedLabel(String typed, String why) {
    return new Problem("bad-feed-label", null, "--feed", "\"" + typed + "\": " + why);
  }

  /** A name that is no element. */
  public static Problem noElement(String flag, String typed, String why, String near) {
    return new Problem(
        "no-element",
        null,
        flag,
        "\""
            + typed
            + "\": "
            + why
            + (near == null || !why.startsWith("an ") ? "" : "; did you mean \"" + near + "\"?"));
  }

  /** A name that is no salt: those that begin so, or the nearest. */
  public static Problem noSalt(String flag, String typed, List<String> names) {
    String meant = SaltsOf.meant(typed, names);
    return new Problem(
        "no-salt",
        null,
        flag,
        "no salt \""
            + typed
            + "\""
            + (meant.isEmpty()
                ? "; leat dose salts --list names them, and feed.salts of a plan adds your own"
                : "; did you mean " + meant + "?"));
  }

  /** A salt weighed twice. */
  public static Problem saltTwice(String flag, String typed) {
    return new Problem("salt-twice", null, flag, "\"" + typed + "\" is named twice");
  }

  /** A temperature the trade refuses is told of {@code --at}; anything else stays as it is. */
  static RuntimeException ofTemperature(Call call, String quantity, Impossible e) {
    return quantity.equals(e.quantity()) && call.has("--at")
        ? new Refused(CommandErrors.impossible(call.place("at"), e.getMessage()))
        : e;
  }

  /** A name that is no crop. */
  public static Problem noCrop(String typed, String near) {
    return new Problem(
        "no-crop",
        null,
        "leat crops",
        "no band is known for \""
            + typed
            + "\""
            + (near == null
                ? "; leat crops --list names the crops"
                : "; did you mean \"" + near + "\"?"));
  }
}

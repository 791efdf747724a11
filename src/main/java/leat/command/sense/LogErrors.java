package leat.command.sense;

import java.util.List;
import leat.cli.Command;
import leat.plan.Problem;
import leat.quantity.Nearest;

/** Messages of {@code leat log}, one named method each. */
public final class LogErrors {
  private LogErrors() {}

  /** No file was named. */
  public static Problem noFile(Command command) {
    return new Problem(
        "log-needed",
        null,
        "leat " + command.name(),
        "a file of rows is needed, such as leat log readings.csv --plan terrace.yaml; - reads"
            + " standard input");
  }

  /** A header without one row below it. */
  public static Problem noRows(String file) {
    return new Problem(
        "log-no-rows", null, file, "there is a header, but not one row below it: no reading yet");
  }

  /** A log that never read a level. */
  public static Problem noLevel(String file) {
    return new Problem(
        "log-no-level",
        null,
        file,
        "no reading of this log belongs to a step of the plan's sender: what is in the tank is not"
            + " known; measure it with a stick, or see leat log "
            + file);
  }

  /** A log whose sender says nothing sure now. */
  public static Problem notSure(String file, String alarm, String since) {
    return new Problem(
        "log-not-sure",
        null,
        file,
        "no sure reading of the level: "
            + alarm
            + " since "
            + since
            + "; mend that first, or measure the level with a stick");
  }

  /** A log that ends before the season begins, or after its end. */
  public static Problem outsideSeason(String file, String day, String from, String to) {
    return new Problem(
        "log-outside-season",
        null,
        file,
        "the season lasts from "
            + from
            + " to "
            + to
            + ", the log goes on to "
            + day
            + ": there is no day of the season to go on with");
  }

  /** A column that is not there, and how the plan names it. */
  public static Problem noColumn(String file, String column, List<String> header, String key) {
    String near = Nearest.of(column, header);
    String right = near == null ? "NAME" : near;
    return new Problem(
        "log-no-column",
        null,
        file,
        "no column \""
            + column
            + "\"; it has "
            + String.join(", ", header)
            + "; name it in the plan: log: {"
            + key
            + ": "
            + right
            + "}");
  }

  /** A date in an order that can be read in two ways. */
  public static Problem timeFormat(String file, long row, String typed) {
    return new Problem(
        "time-format",
        null,
        file,
        "row "
            + row
            + ": the time \""
            + typed
            + "\" can be read in two ways; write it as 2027-06-04T18:30:00+02:00, without an offset"
            + " for local time, or as Unix seconds");
  }

  /** A moment of a flag that is none. */
  public static Problem notAMoment(String flag, String typed) {
    return new Problem(
        "not-a-moment",
        null,
        flag,
        "a moment is needed, such as 2027-06-04T18:30:00+02:00 (date -Is prints it); got \""
            + typed
            + "\"");
  }
}

package leat.command.sense;

import java.util.List;
import leat.log.LogCell;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;

/** Names of the columns (or, in a file of time, name, value, of the sensors) of a log. */
final class LogNames {
  private static final String OHM = "ohm";
  private static final String COUNTS = "counts";

  /** Keys of the plan and usual names, in the order of {@link LogCell}. */
  private static final String[] KEYS = {"reading", "ec", "temperature", "pump", "cap", "rain"};

  private static final String[] USUAL = {
    OHM, "ec_mS_cm", "water_C", "pump", "cap_counts", "rain_mm"
  };

  private final Section log;

  LogNames(Plan plan) {
    log = plan.section("log");
  }

  /** Name of the column of the time. */
  String time() {
    return log.has("time") ? log.text("time") : "time";
  }

  /** Whether the file has a row for each value: time, name, value. */
  boolean isLong() {
    return log.has("name") || log.has("value");
  }

  /** Column of the sensor's name in a long file. */
  String name() {
    return log.has("name") ? log.text("name") : "name";
  }

  /** Column of the value in a long file. */
  String value() {
    return log.has("value") ? log.text("value") : "value";
  }

  /** What parts the columns, or null. */
  String delimiter() {
    return log.text("delimiter");
  }

  /** Place of a column that must be there. */
  static int need(List<String> header, String name, String key, String source) {
    int at = header.indexOf(name);
    if (at < 0) {
      throw new Refused(LogErrors.noColumn(source, name, header, key));
    }
    return at;
  }

  /** Place of a cell's column; -1 without one. A column that the plan names must be there. */
  int column(List<String> header, LogCell cell, String source) {
    String key = KEYS[cell.ordinal()];
    if (log.has(key)) {
      return need(header, log.text(key), key, source);
    }
    return header.indexOf(cell == LogCell.READING ? reading(header) : USUAL[cell.ordinal()]);
  }

  /** A column of the same thing by another name, as in another unit; null for none. */
  String alike(List<String> header, LogCell cell) {
    String usual = USUAL[cell.ordinal()];
    int word = usual.indexOf('_');
    if (word < 0 || log.has(KEYS[cell.ordinal()]) || header.contains(usual)) {
      return null;
    }
    for (String name : header) {
      if (name.toLowerCase(java.util.Locale.ROOT).startsWith(usual.substring(0, word + 1))) {
        return name;
      }
    }
    return null;
  }

  private String reading(List<String> header) {
    String in = log.text("reading_in");
    if (in != null) {
      return in;
    }
    return header.contains(COUNTS) && !header.contains(OHM) ? COUNTS : OHM;
  }

  /** Name of a cell's sensor in a long file. */
  String sensor(LogCell cell) {
    String key = KEYS[cell.ordinal()];
    if (log.has(key)) {
      return log.text(key);
    }
    return cell == LogCell.READING && isCounts(List.of()) ? COUNTS : USUAL[cell.ordinal()];
  }

  /** Whether the readings are counts. */
  boolean isCounts(List<String> header) {
    String in = log.text("reading_in");
    if (in != null) {
      return COUNTS.equals(in);
    }
    String named = log.has("reading") ? log.text("reading") : reading(header);
    return named.endsWith(COUNTS);
  }
}

package leat.command.sense;

import java.nio.charset.StandardCharsets;
import java.util.List;
import leat.cli.CellNumber;
import leat.cli.RowLines;
import leat.log.LogCell;
import leat.log.LogPass;
import leat.log.LogRow;
import leat.log.LogSystem;

/**
 * A file with a row for each value (time, name, value): values that come together make one row of
 * the log. A switch writes only its changes, so the pump's last state stays.
 */
final class LongRows {
  /** Values that come within this belong to one row, ms. Common practice, no source. */
  private static final long TOGETHER_MS = 30_000;

  private static final LogCell[] CELLS = LogCell.all();

  private final LogPass pass;
  private final LogNames names;
  private final LogSystem system;
  private final byte[][] sensors = new byte[CELLS.length][];
  private final LogRow row = new LogRow();
  private int name;
  private int value;
  private int seen;
  private double pump = Double.NaN;
  private boolean reading;

  LongRows(LogPass pass, LogNames names, LogSystem system) {
    this.pass = pass;
    this.names = names;
    this.system = system;
    for (LogCell cell : CELLS) {
      sensors[cell.ordinal()] = names.sensor(cell).getBytes(StandardCharsets.UTF_8);
    }
  }

  void columns(List<String> header, String source) {
    name = LogNames.need(header, names.name(), "name", source);
    value = LogNames.need(header, names.value(), "value", source);
  }

  /** Whether the sender's reading was among the values. */
  boolean hasReading() {
    return reading;
  }

  /** Which cell a line is of; null for a sensor that is not known. */
  LogCell cellOf(RowLines lines) {
    return name < lines.cells() ? cell(lines) : null;
  }

  /** Takes a value in; false when it is a bad one. */
  boolean take(LogCell cell, RowLines lines, long time) {
    int bit = 1 << cell.ordinal();
    if (seen != 0 && ((seen & bit) != 0 || Math.abs(time - row.time) > TOGETHER_MS)) {
      finish();
    }
    if (seen == 0) {
      row.clear();
      row.time = time;
    }
    seen |= bit;
    reading |= cell == LogCell.READING;
    double number =
        value < lines.cells()
            ? CellNumber.of(lines.bytes(), lines.start(value), lines.end(value))
            : Double.NaN;
    boolean good = cell.put(row, number, system);
    pump = cell == LogCell.PUMP ? row.pump : pump;
    return good;
  }

  private LogCell cell(RowLines lines) {
    int from = lines.start(name);
    int to = lines.end(name);
    if (to - from >= 2 && lines.bytes()[from] == '"') {
      from++;
      to--;
    }
    for (int c = 0; c < sensors.length; c++) {
      byte[] sensor = sensors[c];
      if (java.util.Arrays.equals(sensor, 0, sensor.length, lines.bytes(), from, to)) {
        return CELLS[c];
      }
    }
    return null;
  }

  /** The values since the last row make a row. */
  void finish() {
    if (seen != 0) {
      row.pump = (seen & 1 << LogCell.PUMP.ordinal()) != 0 ? row.pump : pump;
      pass.accept(row);
      seen = 0;
    }
  }
}

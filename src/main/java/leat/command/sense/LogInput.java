package leat.command.sense;

import java.io.IOException;
import java.util.List;
import leat.cli.Call;
import leat.cli.CellNumber;
import leat.cli.RowErrors;
import leat.cli.RowInput;
import leat.cli.RowLines;
import leat.log.LogCell;
import leat.log.LogPass;
import leat.log.LogReport;
import leat.log.LogRow;
import leat.log.LogSystem;
import leat.log.LogTimes;
import leat.log.RowSink;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.system.LogOf;

/** Files of a logger, in order, through one pass: columns by name, bad cells counted. */
final class LogInput {
  private static final LogCell[] CELLS = LogCell.all();

  private final Call call;
  private final Plan plan;
  private final LogNames names;

  /** Fewer bad cells than this say nothing of a column (our choice). */
  private static final int FEW = 3;

  private final RowSink sink;
  private final LogRow row = new LogRow();
  private LogSystem system;
  private LogPass pass;
  private LogTimes times;
  private LongRows longRows;
  private RowInput input;

  private List<String> header = List.of();
  private int time;
  private final int[] columns = new int[CELLS.length];
  private boolean anyTime;
  private final long[] good = new long[CELLS.length];
  private final long[] refused = new long[CELLS.length];
  private String firstBad;

  long rows;
  long badCells;
  long localTimes;
  long otherTimes;
  long headersAgain;
  long clockNotSet;
  boolean otherZone;
  boolean hasReading;

  LogInput(Call call, RowSink sink) {
    this.call = call;
    this.plan = call.plan();
    this.names = new LogNames(plan);
    this.sink = sink;
  }

  /** Name of a column that is there and of which no cell could be used; null for none such. */
  String allBad(LogCell cell) {
    int c = cell.ordinal();
    return good[c] == 0 && refused[c] >= FEW ? names.sensor(cell) : null;
  }

  /** Name of a column that is passed over, though it looks like this cell's; null for none. */
  String passedOver(LogCell cell) {
    return names.isLong() ? null : names.alike(header, cell);
  }

  /** Name of the column (or sensor) of the reading. */
  String readingColumn() {
    return names.sensor(LogCell.READING);
  }

  /** What the log is read against, once its first header is known. */
  LogSystem system() {
    return system;
  }

  /** Reads all files; {@code waiting} is flushed before the input is waited for. */
  LogReport read(List<String> files, java.io.Flushable waiting) {
    for (String file : files) {
      try (RowInput in = new RowInput(call, file, names.delimiter())) {
        input = in;
        if (waiting != null) {
          in.lines().beforeWaiting(waiting);
        }
        file(in.lines());
      } catch (IOException e) {
        throw new Refused(List.of(PlanErrors.cannotRead(file, "it cannot be read")), 3);
      }
    }
    return finish(files.get(0));
  }

  private LogReport finish(String file) {
    if (system == null) {
      throw new Refused(RowErrors.emptyRows(input.name()));
    }
    if (longRows != null) {
      longRows.finish();
    }
    LogReport report = pass.finish();
    if (rows == 0) {
      throw new Refused(LogErrors.noRows(file));
    }
    if (report.isEmpty()) {
      throw new Refused(RowErrors.allBad(file, rows, "row 1: " + firstBad));
    }
    return report;
  }

  private void file(RowLines lines) throws IOException {
    if (!lines.advance()) {
      return;
    }
    lines.split();
    if (!isGoingOn(lines)) {
      header(input.names());
    } else {
      record(lines);
    }
    while (lines.advance()) {
      lines.split();
      record(lines);
    }
  }

  /** Whether a later file goes on without a header of its own. */
  private boolean isGoingOn(RowLines lines) {
    return system != null
        && lines.cells() == header.size()
        && times.read(lines.bytes(), lines.start(time), lines.end(time)).isTime();
  }

  private void header(List<String> found) {
    time = LogNames.need(found, names.time(), "time", input.name());
    header = found;
    if (system == null) {
      system = LogOf.of(plan, names.isCounts(names.isLong() ? List.of() : found), call.taken());
      pass = new LogPass(system, LogOf.limits(plan), sink);
      times = new LogTimes(system.zone(), names.time());
      longRows = names.isLong() ? new LongRows(pass, names, system) : null;
    }
    if (longRows != null) {
      longRows.columns(found, input.name());
      return;
    }
    columns(found);
  }

  private void columns(List<String> found) {
    int known = 0;
    for (LogCell cell : CELLS) {
      columns[cell.ordinal()] = names.column(found, cell, input.name());
      known += columns[cell.ordinal()] >= 0 ? 1 : 0;
    }
    if (known == 0) {
      throw new Refused(
          LogErrors.noColumn(input.name(), names.sensor(LogCell.READING), found, "reading"));
    }
    hasReading |= columns[LogCell.READING.ordinal()] >= 0;
  }

  private void record(RowLines lines) {
    if (lines.isUnfinished() && lines.cells() < header.size()) {
      return;
    }
    rows++;
    if (!isTimed(lines)) {
      return;
    }
    if (longRows == null) {
      cells(lines);
      pass.accept(row);
    } else {
      LogCell cell = longRows.cellOf(lines);
      if (cell != null) {
        count(cell.ordinal(), longRows.take(cell, lines, times.millis()));
      }
      hasReading |= longRows.hasReading();
    }
  }

  private boolean isTimed(RowLines lines) {
    if (time >= lines.cells()) {
      return bad("it has no time");
    }
    LogTimes.Status status = times.read(lines.bytes(), lines.start(time), lines.end(time));
    if (!status.isTime()) {
      return otherThanTime(status, lines);
    }
    localTimes += times.isLocal() ? 1 : 0;
    otherTimes += times.isLocal() ? 0 : 1;
    if (!anyTime) {
      otherZone = times.isOfOtherZone();
      anyTime = true;
    }
    return true;
  }

  private boolean otherThanTime(LogTimes.Status status, RowLines lines) {
    switch (status) {
      case HEADER_AGAIN:
        headersAgain++;
        header(input.names());
        return false;
      case CLOCK_NOT_SET:
        clockNotSet++;
        firstBad = firstBad == null ? "its clock was not set" : firstBad;
        return false;
      case OTHER_FORMAT:
        if (!anyTime) {
          throw new Refused(LogErrors.timeFormat(input.name(), rows, lines.text(time)));
        }
        return bad("another order of the date");
      default:
        return bad("\"" + lines.text(time) + "\" is no time");
    }
  }

  private boolean bad(String why) {
    badCells++;
    firstBad = firstBad == null ? why : firstBad;
    return false;
  }

  private void cells(RowLines lines) {
    row.clear();
    row.time = times.millis();
    byte[] bytes = lines.bytes();
    int n = lines.cells();
    for (int c = 0; c < columns.length; c++) {
      int at = columns[c];
      if (at >= 0) {
        double value = at < n ? CellNumber.of(bytes, lines.start(at), lines.end(at)) : Double.NaN;
        count(c, CELLS[c].put(row, value, system));
      }
    }
  }

  private void count(int cell, boolean isGood) {
    if (isGood) {
      good[cell]++;
    } else {
      badCells++;
      refused[cell]++;
    }
  }
}

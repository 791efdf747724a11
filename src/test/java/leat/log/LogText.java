package leat.log;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** A log's text to rows, as plainly as can be; the command's own reader is another. */
final class LogText {
  /** A row as the pass takes it, kept for shuffling and cutting. */
  record Line(long time, double[] cells) {
    void into(LogRow row) {
      row.time = time;
      row.reading = cells[0];
      row.ec = cells[1];
      row.celsius = cells[2];
      row.pump = cells[3];
      row.cap = cells[4];
      row.rain = cells[5];
    }
  }

  private static final String[] NAMES = {
    "", "ec_mS_cm", "water_C", "pump", "cap_counts", "rain_mm"
  };

  final List<Line> lines = new ArrayList<>();
  boolean counts;
  int headers;
  int notSet;

  static LogText of(String text, ZoneId zone) {
    LogText log = new LogText();
    String[] rows = text.replace("\uFEFF", "").split("\r?\n");
    boolean semicolons = rows[0].contains(";");
    String[] header = rows[0].split(semicolons ? ";" : ",");
    int[] column = new int[NAMES.length];
    for (int c = 0; c < NAMES.length; c++) {
      column[c] = List.of(header).indexOf(NAMES[c]);
    }
    log.counts = List.of(header).contains("counts");
    column[0] = List.of(header).indexOf(log.counts ? "counts" : "ohm");
    LogTimes times = new LogTimes(zone, "time");
    for (int i = 1; i < rows.length; i++) {
      if (rows[i].isBlank()) {
        continue;
      }
      String[] cells = rows[i].split(semicolons ? ";" : ",", -1);
      LogTimes.Status status = times.read(cells[0]);
      log.headers += status == LogTimes.Status.HEADER_AGAIN ? 1 : 0;
      log.notSet += status == LogTimes.Status.CLOCK_NOT_SET ? 1 : 0;
      if (!status.isTime()) {
        continue;
      }
      double[] values = new double[NAMES.length];
      for (int c = 0; c < values.length; c++) {
        values[c] = column[c] < 0 ? Double.NaN : number(cells[column[c]], semicolons);
      }
      log.lines.add(new Line(times.millis(), values));
    }
    return log;
  }

  private static double number(String cell, boolean comma) {
    try {
      return Double.parseDouble(comma ? cell.replace(',', '.') : cell);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  static LogReport pass(LogSystem system, List<Line> lines) {
    LogPass pass = new LogPass(system, LogLimits.DEFAULT);
    LogRow row = new LogRow();
    for (Line line : lines) {
      line.into(row);
      pass.accept(row);
    }
    return pass.finish();
  }
}

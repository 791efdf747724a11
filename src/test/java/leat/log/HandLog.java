package leat.log;

import java.util.ArrayList;
import java.util.List;

/** A log made row by row, by the step that the sender of LogFixtures shows. */
final class HandLog {
  final List<LogRow> rows = new ArrayList<>();
  private final LogSystem system;
  private long time;
  private final long every;
  private double pump;
  private double ec = Double.NaN;
  private double cap = Double.NaN;

  /** Rows from a moment on, so far apart; nothing is kept up by a run unless the system says so. */
  HandLog(LogSystem system, long from, long every) {
    this.system = system;
    this.time = from;
    this.every = every;
  }

  /** The next row comes at a moment. */
  HandLog at(long moment) {
    time = moment;
    return this;
  }

  HandLog pump(boolean on) {
    pump = on ? 1 : 0;
    return this;
  }

  HandLog ec(double value) {
    ec = value;
    return this;
  }

  HandLog cap(double counts) {
    cap = counts;
    return this;
  }

  HandLog steps(int... steps) {
    for (int step : steps) {
      show(step, 1);
    }
    return this;
  }

  HandLog show(int step, int n) {
    return read(10.4 + 20 * step, n);
  }

  HandLog read(double ohm, int n) {
    for (int i = 0; i < n; i++) {
      LogRow row = LogFixtures.row(time);
      row.reading = ohm;
      row.pump = pump;
      row.ec = ec;
      row.cap = cap;
      rows.add(row);
      time += every;
    }
    return this;
  }

  /** Rows until a moment, without it. */
  HandLog until(long moment, int step) {
    while (time < moment) {
      show(step, 1);
    }
    return this;
  }

  HandLog rain(int step, double mm) {
    show(step, 1);
    rows.get(rows.size() - 1).rain = mm;
    return this;
  }

  long now() {
    return time - every;
  }

  LogReport report() {
    return report(null);
  }

  LogReport report(RowSink sink) {
    LogPass pass = new LogPass(system, LogLimits.DEFAULT, sink);
    for (LogRow row : rows) {
      pass.accept(row);
    }
    return pass.finish();
  }
}

package leat.command.sense;

import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Output;
import leat.cli.RowsOut;
import leat.log.LogRow;
import leat.log.RowSink;

/** Every row of the log in order of time, with what was read from it. */
final class LogRowsOut implements RowSink {
  static final Column TIME = Column.plain("time", "time");
  static final Column STEP = Column.plain("step", "step at rest");
  static final Column READ = Column.plain("step_read", "step read");
  static final Column VOLUME = Column.of("volume_L", "volume", Show.L);
  static final Column LOW = Column.of("volume_low_L", "at least", Show.L);
  static final Column HIGH = Column.of("volume_high_L", "at most", Show.L);
  static final Column FLAGS = Column.plain("flags", "flags");
  static final Column[] ALL = {TIME, STEP, READ, VOLUME, LOW, HIGH, FLAGS};

  private final RowsOut out;
  private LogInput input;
  private LogDates dates;

  LogRowsOut(Call call, Output output) {
    out = new RowsOut(call, output, ALL);
  }

  /** Reads the files and writes their rows as they are judged. */
  void run(Call call) {
    boolean done = false;
    try {
      input = new LogInput(call, this);
      input.read(call.operands(), out);
      done = true;
    } finally {
      out.finish(done);
    }
  }

  @Override
  public void row(LogRow row, double volume, double low, double high) {
    if (dates == null) {
      dates = new LogDates(input.system().zone());
    }
    Row told = out.next();
    told.set(TIME, dates.iso(row.time));
    told.setAny(STEP, row.rest() < 0 ? null : Integer.valueOf(row.rest() + 1));
    told.setAny(READ, row.step() < 0 ? null : Integer.valueOf(row.step() + 1));
    told.set(VOLUME, LogSummary.known(volume));
    told.set(LOW, LogSummary.known(low));
    told.set(HIGH, LogSummary.known(high));
    told.set(FLAGS, flags(row));
    out.write(told);
  }

  private static String flags(LogRow row) {
    String sender = row.isOpen() ? "open" : row.isShort() ? "short" : row.isOdd() ? "odd" : null;
    boolean runs = row.pump == 1;
    return sender == null ? runs ? "pump" : null : runs ? sender + " pump" : sender;
  }
}

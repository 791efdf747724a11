package leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Column;
import leat.answer.CsvWriter;
import leat.answer.Format;
import leat.answer.Row;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.quantity.JsonText;
import leat.quantity.Unreadable;

/**
 * Rows in, the same rows with the answer's columns behind them out, one by one in constant memory.
 * A bad row keeps its place with blank answers and a status; {@code --strict} stops at the first.
 */
public final class RowStream {
  public static final Flag COLUMN =
      Flag.of(
          "--column",
          "NAME",
          Kind.TEXT,
          "ohm",
          "reads rows from standard input (or --rows) and answers for this column of each");
  public static final Flag ROWS =
      Flag.of(
              "--rows",
              "FILE",
              Kind.TEXT,
              "in.csv",
              "file of rows instead of standard input, with --column")
          .belongsTo("--column");
  public static final Flag PREFIX =
      Flag.of(
              "--prefix",
              "TEXT",
              Kind.TEXT,
              "leat_",
              "put before the answer's column names, where they clash")
          .belongsTo("--column");
  public static final Flag STRICT =
      Flag.on("--strict", "stops with exit code 2 at the first bad row").belongsTo("--column");

  /** What answers one cell. */
  public abstract static class Function {
    /** Answer's columns; one of them must be a status that a bad row can carry. */
    public abstract Column[] columns();

    /** The column that holds the status. */
    public abstract Column status();

    /**
     * Fills the row for a cell.
     *
     * @throws Unreadable for a cell that is no reading
     * @throws Impossible for one that physics refuses
     */
    public abstract void answer(String cell, Row into);
  }

  final Function function;

  /** The column of --value, or null for all. */
  final Column only;

  final Call call;
  private final Format format;
  private CellAnswers answers;

  public RowStream(Call call, Function function) {
    this.call = call;
    this.function = function;
    this.format = call.format();
    call.wantsRowsOnly();
    if (call.has("--explain")) {
      throw new Refused(RowErrors.noWorkingOfRows(call.command));
    }
    this.only = RowsOut.only(call, function.columns());
  }

  /** Reads to the end; returns the exit code. */
  public int run(Output output) {
    String column = call.text("--column");
    OutputStream out = output.open();
    boolean done = false;
    try (InputStream in = input()) {
      copy(in, column, out);
      output.close(out);
      done = true;
    } catch (IOException e) {
      throw output.failed(e);
    } finally {
      output.finish(done);
    }
    tellBad();
    return 0;
  }

  private void tellBad() {
    long rows = answers.rows();
    long bad = answers.bad();
    if (rows > 0 && bad == rows) {
      throw new Refused(RowErrors.allBad(source(), rows, answers.firstBad()));
    }
    if (bad > 0 && !format.quiet) {
      String first = " rows could not be read; the first: " + answers.firstBad() + "\n";
      Run.tell(call.terminal, "Mind: " + bad + " of " + rows + first);
    }
  }

  private InputStream input() throws IOException {
    String name = call.text("--rows");
    if (name == null || "-".equals(name)) {
      return call.terminal.takeInput();
    }
    return RowInput.file(call, name);
  }

  String source() {
    String name = call.text("--rows");
    return name == null ? "standard input" : name;
  }

  private void copy(InputStream in, String column, OutputStream out) throws IOException {
    RowLines lines = new RowLines(in, source());
    char delimiter = RowInput.delimiter(call, firstLine(lines));
    lines.delimiter(delimiter);
    List<String> names = header(lines);
    int at = find(names, column);
    RowInput.refuseTwins(names, source());
    if (only == null) {
      refuseClash(names);
    }
    CsvWriter writer =
        call.has("--delimiter")
            ? format.csv()
            : new CsvWriter(delimiter, decimal(delimiter, lines), format.raw);
    RowSink sink = new RowSink(out);
    lines.beforeWaiting(sink);
    begin(sink, names, writer);
    answers = new CellAnswers(this, column, isJson() ? null : writer, delimiter != ',');
    try {
      while (lines.advance()) {
        lines.split();
        put(sink, names, lines, answers.of(lines, at, names.size()), writer);
      }
    } catch (Refused e) {
      // the rows before a bad one were answered
      sink.flush();
      throw e;
    }
    if (isJson()) {
      sink.put(new StringBuilder("\n]\n"));
    }
    sink.flush();
  }

  private boolean isJson() {
    return "json".equals(format.name);
  }

  private String firstLine(RowLines lines) throws IOException {
    String first = lines.peek();
    if (first == null || first.isBlank()) {
      throw new Refused(RowErrors.emptyRows(source()));
    }
    return first;
  }

  /** The names of the columns, which are the first record. */
  private static List<String> header(RowLines lines) throws IOException {
    lines.advance();
    lines.split();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < lines.cells(); i++) {
      names.add(lines.text(i));
    }
    return names;
  }

  private void begin(RowSink sink, List<String> names, CsvWriter writer) throws IOException {
    StringBuilder text = new StringBuilder();
    if (isJson()) {
      text.append('[');
    } else if (only == null) {
      header(text, names, writer);
    }
    sink.put(text);
  }

  private void put(
      RowSink sink, List<String> names, RowLines lines, byte[] answer, CsvWriter writer)
      throws IOException {
    if (only == null && isJson()) {
      jsonRow(sink, names, lines);
    } else if (only == null) {
      csvRow(sink, names.size(), lines, writer);
    }
    sink.put(answer, 0, answer.length);
  }

  /** The sign of the appended numbers: as typed, else as in the first row of what was read. */
  private char decimal(char delimiter, RowLines lines) throws IOException {
    if (call.has("--decimal")) {
      return format.csv().decimal();
    }
    String row = delimiter == ',' ? null : lines.peek();
    for (int i = 1; row != null && i < row.length() - 1; i++) {
      char c = row.charAt(i);
      if ((c == ',' || c == '.')
          && Character.isDigit(row.charAt(i - 1))
          && Character.isDigit(row.charAt(i + 1))) {
        return c;
      }
    }
    return '.';
  }

  private int find(List<String> names, String column) {
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).strip().equals(column)) {
        return i;
      }
    }
    throw new Refused(RowErrors.noColumn(source(), column, names));
  }

  String prefixed(Column column) {
    String prefix = call.text("--prefix");
    return prefix == null ? column.key() : prefix + column.key();
  }

  private void refuseClash(List<String> names) {
    Column[] columns = function.columns();
    for (int c = 0; c < columns.length; c++) {
      for (int i = 0; i < names.size(); i++) {
        if (names.get(i).strip().equals(prefixed(columns[c]))) {
          throw new Refused(RowErrors.nameClash(source(), prefixed(columns[c])));
        }
      }
    }
  }

  private void header(StringBuilder line, List<String> names, CsvWriter writer) {
    for (int i = 0; i < names.size(); i++) {
      writer.separate(line, i);
      writer.word(line, names.get(i));
    }
    Column[] columns = function.columns();
    for (int c = 0; c < columns.length; c++) {
      writer.separate(line, names.size() + c);
      writer.word(line, prefixed(columns[c]));
    }
    line.append('\n');
  }

  /** The record as it came, held to the header's number of cells. */
  private static void csvRow(RowSink sink, int columns, RowLines lines, CsvWriter writer)
      throws IOException {
    int n = lines.cells();
    if (lines.isBroken() || lines.hasCarriageReturn() || n > columns) {
      sink.put(mended(columns, lines, writer));
    } else {
      sink.put(lines.bytes(), lines.from(), lines.to() - lines.from());
    }
    for (int i = n; i < columns; i++) {
      sink.put((byte) writer.delimiter());
    }
  }

  private static StringBuilder mended(int columns, RowLines lines, CsvWriter writer) {
    StringBuilder mended = new StringBuilder();
    int n = lines.cells();
    for (int i = 0; i < Math.min(n, columns); i++) {
      writer.separate(mended, i);
      String cell = i == columns - 1 && n > columns ? lines.rest(i) : lines.text(i);
      if (!cell.isEmpty()) {
        writer.word(mended, cell);
      }
    }
    return mended;
  }

  private void jsonRow(RowSink sink, List<String> names, RowLines lines) throws IOException {
    StringBuilder line = new StringBuilder(answers.rows() == 1 ? "\n{" : ",\n{");
    for (int i = 0; i < names.size(); i++) {
      line.append(i == 0 ? "" : ", ").append(JsonText.string(names.get(i))).append(": ");
      line.append(JsonText.string(i < lines.cells() ? lines.text(i) : ""));
    }
    sink.put(line);
  }
}

package leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Bare;
import leat.answer.Column;
import leat.answer.CsvWriter;
import leat.answer.Format;
import leat.answer.Row;
import leat.answer.Rows;
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

  private final Call call;
  private final Function function;
  private final Format format;
  private final Column only;
  private long rows;
  private long bad;
  private String firstBad;

  public RowStream(Call call, Function function) {
    this.call = call;
    this.function = function;
    this.format = call.format();
    call.wantsRowsOnly();
    if (call.has("--explain")) {
      throw new Refused(CommandErrors.noWorkingOfRows(call.command));
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
    if (rows > 0 && bad == rows) {
      throw new Refused(RowErrors.allBad(source(), rows, firstBad));
    }
    if (bad > 0 && !format.quiet) {
      Run.tell(
          call.terminal,
          "Mind: "
              + bad
              + " of "
              + rows
              + " rows could not be read; the first: "
              + firstBad
              + "\n");
    }
    return 0;
  }

  private InputStream input() throws IOException {
    String name = call.text("--rows");
    if (name == null || "-".equals(name)) {
      return call.terminal.takeInput();
    }
    return RowInput.file(call, name);
  }

  private String source() {
    String name = call.text("--rows");
    return name == null ? "standard input" : name;
  }

  private void copy(InputStream in, String column, OutputStream out) throws IOException {
    RowLines lines = new RowLines(in, source());
    String first = lines.peek();
    if (first == null || first.isBlank()) {
      throw new Refused(CommandErrors.emptyRows(source()));
    }
    char delimiter = RowInput.delimiter(call, first);
    lines.delimiter(delimiter);
    lines.advance();
    lines.split();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < lines.cells(); i++) {
      names.add(lines.text(i));
    }
    int at = find(names, column);
    RowInput.refuseTwins(names, source());
    if (only == null) {
      refuseClash(names);
    }
    boolean json = "json".equals(format.name);
    CsvWriter writer =
        call.has("--delimiter")
            ? format.csv()
            : new CsvWriter(delimiter, decimal(delimiter, lines), format.raw);
    Sink sink = new Sink(out);
    lines.beforeWaiting(sink);
    StringBuilder text = new StringBuilder();
    if (json) {
      text.append('[');
    } else if (only == null) {
      header(text, names, writer);
    }
    sink.put(text);
    boolean decimalComma = delimiter != ',';
    Answers answers = new Answers(column, json ? null : writer, decimalComma);
    try {
      while (lines.advance()) {
        rows++;
        lines.split();
        byte[] answer = answers.of(lines, at, names.size());
        if (only != null) {
          sink.put(answer, 0, answer.length);
        } else if (json) {
          jsonRow(sink, names, lines, answer);
        } else {
          csvRow(sink, names.size(), lines, answer, writer);
        }
      }
    } catch (Refused e) {
      // the rows before a bad one were answered
      sink.flush();
      throw e;
    }
    if (json) {
      sink.put(new StringBuilder("\n]\n"));
    }
    sink.flush();
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
    throw new Refused(CommandErrors.noColumn(source(), column, names));
  }

  private String prefixed(Column column) {
    String prefix = call.text("--prefix");
    return prefix == null ? column.key() : prefix + column.key();
  }

  private void refuseClash(List<String> names) {
    Column[] columns = function.columns();
    for (int c = 0; c < columns.length; c++) {
      for (int i = 0; i < names.size(); i++) {
        if (names.get(i).strip().equals(prefixed(columns[c]))) {
          throw new Refused(CommandErrors.nameClash(source(), prefixed(columns[c])));
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

  /** The record as it came, held to the header's number of cells, then the answer. */
  private static void csvRow(
      Sink sink, int columns, RowLines lines, byte[] answer, CsvWriter writer) throws IOException {
    int n = lines.cells();
    if (lines.isBroken() || lines.hasCarriageReturn() || n > columns) {
      StringBuilder mended = new StringBuilder();
      for (int i = 0; i < Math.min(n, columns); i++) {
        writer.separate(mended, i);
        String cell = i == columns - 1 && n > columns ? lines.rest(i) : lines.text(i);
        if (!cell.isEmpty()) {
          writer.word(mended, cell);
        }
      }
      sink.put(mended);
    } else {
      sink.put(lines.bytes(), lines.from(), lines.to() - lines.from());
    }
    for (int i = n; i < columns; i++) {
      sink.put((byte) writer.delimiter());
    }
    sink.put(answer, 0, answer.length);
  }

  private void jsonRow(Sink sink, List<String> names, RowLines lines, byte[] answer)
      throws IOException {
    StringBuilder line = new StringBuilder(rows == 1 ? "\n{" : ",\n{");
    for (int i = 0; i < names.size(); i++) {
      line.append(i == 0 ? "" : ", ").append(JsonText.string(names.get(i))).append(": ");
      line.append(JsonText.string(i < lines.cells() ? lines.text(i) : ""));
    }
    sink.put(line);
    sink.put(answer, 0, answer.length);
  }

  /**
   * The answers to cells as the bytes that stand behind a record. The function depends on nothing
   * but its cell, so what was answered lately is kept: readings repeat.
   */
  private final class Answers {
    private static final int KEPT = 1 << 12;
    private static final int LONGEST_KEPT = 24;
    private static final int NUMBERS = 1 << 8;

    private final byte[][] cells = new byte[KEPT][];
    private final byte[][] kept = new byte[KEPT][];
    private final String column;
    private final CsvWriter writer;
    private final boolean decimalComma;
    private final Column[] columns = function.columns();
    private final Rows scratch = new Rows(columns);
    private final StringBuilder text = new StringBuilder();
    private final long[] numberBits = new long[columns.length * NUMBERS];
    private final String[] numberTexts = new String[columns.length * NUMBERS];

    /** {@code writer} null for JSON. */
    Answers(String column, CsvWriter writer, boolean decimalComma) {
      this.column = column;
      this.writer = writer;
      this.decimalComma = decimalComma;
    }

    byte[] of(RowLines lines, int at, int expected) {
      if (lines.isBroken()) {
        return bad("a quote is not closed, or text follows it");
      }
      if (lines.cells() > expected) {
        return bad("it has " + lines.cells() + " cells, the header " + expected);
      }
      if (at >= lines.cells()) {
        return answer("");
      }
      byte[] b = lines.bytes();
      int start = lines.start(at);
      int length = lines.end(at) - start;
      if (length > LONGEST_KEPT) {
        return answer(lines.text(at));
      }
      int hash = length;
      for (int i = start; i < start + length; i++) {
        hash = hash * 31 + b[i];
      }
      int slot = (hash ^ hash >>> 12) & KEPT - 1;
      byte[] known = cells[slot];
      if (known != null
          && java.util.Arrays.equals(known, 0, known.length, b, start, start + length)) {
        return kept[slot];
      }
      long before = bad;
      byte[] answer = answer(lines.text(at));
      if (bad == before) {
        cells[slot] = java.util.Arrays.copyOfRange(b, start, start + length);
        kept[slot] = answer;
      }
      return answer;
    }

    private byte[] answer(String typed) {
      String cell = typed.strip();
      if (decimalComma && cell.indexOf('.') < 0) {
        cell = cell.replace(',', '.');
      }
      Row row = scratch.next();
      try {
        function.answer(cell, row);
      } catch (Unreadable e) {
        return bad(e.message());
      } catch (Impossible e) {
        return bad(e.getMessage());
      }
      return bytes(row);
    }

    private byte[] bad(String why) {
      if (call.has("--strict")) {
        throw new Refused(CommandErrors.badRow(source(), rows, column, why));
      }
      bad++;
      if (firstBad == null) {
        firstBad = "row " + rows + ", column " + column + ": " + why;
      }
      Row row = scratch.next();
      row.set(function.status(), "bad-row");
      return bytes(row);
    }

    private byte[] bytes(Row row) {
      text.setLength(0);
      if (only != null) {
        Bare.append(text, row.get(only), only);
        if (text.isEmpty()) {
          call.sawBlankValue();
        }
        return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
      }
      for (int c = 0; c < columns.length; c++) {
        if (writer == null) {
          text.append(", ").append(JsonText.string(prefixed(columns[c]))).append(": ");
        } else {
          text.append(writer.delimiter());
        }
        Object value = row.get(columns[c]);
        if (value instanceof Double number) {
          text.append(number(c, number));
        } else {
          write(text, value, columns[c]);
        }
      }
      text.append(writer == null ? "}" : "\n");
      return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The text of a number of a column, kept too: bands repeat even where readings do not. */
    private String number(int c, Double number) {
      long bits = Double.doubleToLongBits(number);
      int slot = c * NUMBERS + ((int) (bits * 0x9E3779B97F4A7C15L >>> 56) & NUMBERS - 1);
      if (numberTexts[slot] == null || numberBits[slot] != bits) {
        StringBuilder own = new StringBuilder();
        write(own, number, columns[c]);
        numberBits[slot] = bits;
        numberTexts[slot] = own.toString();
      }
      return numberTexts[slot];
    }

    private void write(StringBuilder into, Object value, Column column) {
      if (writer == null) {
        leat.answer.JsonValue.append(into, value, column);
      } else {
        writer.value(into, value, column);
      }
    }
  }

  /** Bytes on their way out, in large pieces. */
  private static final class Sink implements java.io.Flushable {
    private final OutputStream out;
    private final byte[] buffer = new byte[1 << 16];
    private int filled;

    Sink(OutputStream out) {
      this.out = out;
    }

    void put(byte[] bytes, int from, int length) throws IOException {
      if (length > buffer.length - filled) {
        flush();
        if (length > buffer.length) {
          out.write(bytes, from, length);
          return;
        }
      }
      System.arraycopy(bytes, from, buffer, filled, length);
      filled += length;
    }

    void put(byte one) throws IOException {
      if (filled == buffer.length) {
        flush();
      }
      buffer[filled++] = one;
    }

    void put(StringBuilder text) throws IOException {
      byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
      put(bytes, 0, bytes.length);
    }

    @Override
    public void flush() throws IOException {
      out.write(buffer, 0, filled);
      filled = 0;
      out.flush();
    }
  }
}

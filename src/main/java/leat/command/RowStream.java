package leat.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PushbackInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
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
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Rows in, the same rows with the answer's columns behind them out, one by one in constant memory.
 * A bad row keeps its place with blank answers and a status; {@code --strict} stops at the first.
 */
final class RowStream {
  static final Flag COLUMN =
      Flag.of(
          "--column",
          "NAME",
          Kind.TEXT,
          "ohm",
          "reads rows from standard input (or --rows) and answers for this column of each");
  static final Flag ROWS =
      Flag.of(
          "--rows",
          "FILE",
          Kind.TEXT,
          "in.csv",
          "file of rows instead of standard input, with --column");
  static final Flag PREFIX =
      Flag.of(
          "--prefix",
          "TEXT",
          Kind.TEXT,
          "leat_",
          "put before the answer's column names, where they clash");
  static final Flag STRICT = Flag.on("--strict", "stops with exit code 2 at the first bad row");

  /** What answers one cell. */
  abstract static class Function {
    /** Answer's columns; one of them must be a status that a bad row can carry. */
    abstract Column[] columns();

    /** The column that holds the status. */
    abstract Column status();

    /**
     * Fills the row for a cell.
     *
     * @throws Unreadable for a cell that is no reading
     * @throws Impossible for one that physics refuses
     */
    abstract void answer(String cell, Row into);
  }

  private final Call call;
  private final Function function;
  private final Format format;
  private long rows;
  private long bad;
  private String firstBad;

  RowStream(Call call, Function function) {
    this.call = call;
    this.function = function;
    this.format = call.format();
  }

  /** Reads to the end; returns the exit code. */
  int run(Output output) {
    String column = call.text("--column");
    OutputStream out = output.open();
    boolean done = false;
    try (InputStream in = input()) {
      copy(in, column, out);
      out.flush();
      if (call.has("--output")) {
        out.close();
      }
      done = true;
    } catch (IOException e) {
      throw output.failed(e);
    } finally {
      output.finish(done);
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
    java.io.File file = call.terminal.file(name);
    if (!file.isFile()) {
      throw new Refused(
          List.of(
              leat.plan.PlanErrors.cannotRead(
                  name, file.isDirectory() ? "this is a folder" : "no such file")),
          3);
    }
    return new java.io.FileInputStream(file);
  }

  private String source() {
    String name = call.text("--rows");
    return name == null ? "standard input" : name;
  }

  private void copy(InputStream in, String column, OutputStream out) throws IOException {
    BufferedReader reader =
        new BufferedReader(new InputStreamReader(skipMark(in), StandardCharsets.UTF_8), 1 << 16);
    reader.mark(1 << 15);
    String header = reader.readLine();
    if (header == null) {
      throw new Refused(CommandErrors.emptyRows(source()));
    }
    reader.reset();
    char delimiter =
        call.has("--delimiter")
            ? format.csv().delimiter()
            : header.indexOf(';') >= 0 && header.indexOf(',') < 0 ? ';' : ',';
    CSVFormat csv =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).get();
    CSVParser parser = CSVParser.builder().setReader(reader).setFormat(csv).get();
    Iterator<CSVRecord> records = parser.iterator();
    CSVRecord names = records.next();
    int at = find(names, column);
    refuseClash(names);
    StringBuilder line = new StringBuilder();
    boolean json = "json".equals(format.name);
    CsvWriter writer =
        json
            ? null
            : call.has("--delimiter")
                ? format.csv()
                : new CsvWriter(delimiter, call.has("--decimal") ? format.csv().decimal() : '.');
    line.append(json ? "[" : "");
    if (!json) {
      header(line, names, writer);
    }
    Rows scratch = new Rows(function.columns());
    while (records.hasNext()) {
      CSVRecord record = records.next();
      rows++;
      Row row = scratch.next();
      answer(record, at, delimiter, column, row);
      if (json) {
        jsonRow(line, names, record, row);
      } else {
        csvRow(line, names, record, row, writer);
      }
      if (line.length() > 1 << 16) {
        out.write(line.toString().getBytes(StandardCharsets.UTF_8));
        line.setLength(0);
      }
    }
    line.append(json ? "\n]\n" : "");
    out.write(line.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static InputStream skipMark(InputStream in) throws IOException {
    PushbackInputStream pushback = new PushbackInputStream(in, 3);
    byte[] first = pushback.readNBytes(3);
    boolean mark =
        first.length == 3
            && first[0] == (byte) 0xEF
            && first[1] == (byte) 0xBB
            && first[2] == (byte) 0xBF;
    if (!mark) {
      pushback.unread(first);
    }
    return pushback;
  }

  private int find(CSVRecord names, String column) {
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).strip().equals(column)) {
        return i;
      }
    }
    throw new Refused(CommandErrors.noColumn(source(), column, names.toList()));
  }

  private String prefixed(Column column) {
    String prefix = call.text("--prefix");
    return prefix == null ? column.key() : prefix + column.key();
  }

  private void refuseClash(CSVRecord names) {
    Column[] columns = function.columns();
    for (int c = 0; c < columns.length; c++) {
      for (int i = 0; i < names.size(); i++) {
        if (names.get(i).strip().equals(prefixed(columns[c]))) {
          throw new Refused(CommandErrors.nameClash(source(), prefixed(columns[c])));
        }
      }
    }
  }

  private void answer(CSVRecord record, int at, char delimiter, String column, Row row) {
    String cell = at < record.size() ? record.get(at).strip() : "";
    if (delimiter == ';' && cell.indexOf('.') < 0) {
      cell = cell.replace(',', '.');
    }
    try {
      function.answer(cell, row);
    } catch (Unreadable e) {
      bad(row, column, e.message());
    } catch (Impossible e) {
      bad(row, column, e.getMessage());
    }
  }

  private void bad(Row row, String column, String why) {
    String what = "row " + rows + ", column " + column + ": " + why;
    if (call.has("--strict")) {
      throw new Refused(CommandErrors.badRow(source(), rows, column, why));
    }
    bad++;
    if (firstBad == null) {
      firstBad = what;
    }
    row.clear();
    row.set(function.status(), "bad-row");
  }

  private void header(StringBuilder line, CSVRecord names, CsvWriter writer) {
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

  private void csvRow(
      StringBuilder line, CSVRecord names, CSVRecord record, Row row, CsvWriter writer) {
    int n = Math.max(names.size(), record.size());
    for (int i = 0; i < n; i++) {
      writer.separate(line, i);
      if (i < record.size() && !record.get(i).isEmpty()) {
        writer.word(line, record.get(i));
      }
    }
    Column[] columns = function.columns();
    for (int c = 0; c < columns.length; c++) {
      writer.separate(line, n + c);
      writer.value(line, row.get(columns[c]), columns[c]);
    }
    line.append('\n');
  }

  private void jsonRow(StringBuilder line, CSVRecord names, CSVRecord record, Row row) {
    line.append(rows == 1 ? "\n{" : ",\n{");
    for (int i = 0; i < names.size(); i++) {
      line.append(i == 0 ? "" : ", ").append(JsonText.string(names.get(i))).append(": ");
      line.append(JsonText.string(i < record.size() ? record.get(i) : ""));
    }
    Column[] columns = function.columns();
    for (int c = 0; c < columns.length; c++) {
      line.append(", ").append(JsonText.string(prefixed(columns[c]))).append(": ");
      leat.answer.JsonValue.append(line, row.get(columns[c]), columns[c]);
    }
    line.append('}');
  }
}

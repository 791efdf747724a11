package leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Unreadable;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A small file of rows under named columns, read whole: comma or semicolon, decimal comma with the
 * semicolon, a byte order mark, either line end.
 */
public final class RowTable {
  private static final int MOST_BYTES = 16 << 20;

  private final String name;
  private final List<String> header = new ArrayList<>();
  private final List<CSVRecord> rows = new ArrayList<>();
  private final boolean decimalComma;

  /** Reads a file, or standard input for "-". */
  public RowTable(Call call, String name) {
    this.name = "-".equals(name) ? "standard input" : name;
    String text = text(call, name);
    int end = text.indexOf('\n');
    String first = end < 0 ? text : text.substring(0, end);
    char delimiter = RowInput.delimiter(call, first);
    this.decimalComma = delimiter != ',';
    CSVFormat csv =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).get();
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(csv).get()) {
      rows.addAll(parser.getRecords());
    } catch (IOException | java.io.UncheckedIOException e) {
      throw new Refused(RowErrors.brokenRows(this.name));
    }
    if (rows.isEmpty()) {
      throw new Refused(RowErrors.emptyRows(this.name));
    }
    CSVRecord names = rows.remove(0);
    for (int i = 0; i < names.size(); i++) {
      header.add(names.get(i).strip());
    }
  }

  private static String text(Call call, String name) {
    // buffered, because readNBytes of a FileInputStream asks for the position, which a pipe has not
    try (InputStream in = new java.io.BufferedInputStream(open(call, name))) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new Refused(RowErrors.tooManyRows(name));
      }
      String text = new String(bytes, StandardCharsets.UTF_8);
      return text.startsWith("\ufeff") ? text.substring(1) : text;
    } catch (IOException e) {
      throw new Refused(List.of(PlanErrors.cannotRead(name, "it cannot be read")), 3);
    }
  }

  private static InputStream open(Call call, String name) throws IOException {
    if ("-".equals(name)) {
      return call.terminal.takeInput();
    }
    return RowInput.file(call, name);
  }

  /** Names of its columns. */
  public List<String> names() {
    return List.copyOf(header);
  }

  /** Number of rows. */
  public int size() {
    return rows.size();
  }

  /** Name of the file. */
  public String name() {
    return name;
  }

  /** Whether there is such a column. */
  public boolean has(String column) {
    return header.indexOf(column) >= 0;
  }

  /** Index of the first of these columns that is there; refused when none is. */
  public int column(String... names) {
    for (int i = 0; i < names.length; i++) {
      int at = header.indexOf(names[i]);
      if (at >= 0) {
        return at;
      }
    }
    throw new Refused(RowErrors.noColumn(name, names[0], header));
  }

  /** A cell, stripped; empty when the row is short. */
  public String cell(int row, int column) {
    CSVRecord record = rows.get(row);
    String cell = column < record.size() ? record.get(column).strip() : "";
    return decimalComma && cell.indexOf('.') < 0 ? cell.replace(',', '.') : cell;
  }

  /** A cell as a quantity, bare or with its unit, in the base unit. */
  public double quantity(int row, int column, Unit bare) {
    try {
      return QuantityReader.read(cell(row, column), bare).value();
    } catch (Unreadable e) {
      throw bad(row, column, e.message());
    }
  }

  /** The refusal of a cell, with its row (the first below the header is 1) and column. */
  public Refused bad(int row, int column, String why) {
    return new Refused(RowErrors.badRow(name, row + 1L, header.get(column), why));
  }

  /** The refusal of the rows as a whole by the trade. */
  public Refused bad(Impossible e) {
    return new Refused(RowErrors.rowsRefused(name, e.quantity(), e.getMessage()));
  }
}

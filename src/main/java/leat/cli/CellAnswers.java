package leat.cli;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import leat.answer.Bare;
import leat.answer.Column;
import leat.answer.CsvWriter;
import leat.answer.JsonValue;
import leat.answer.Row;
import leat.answer.Rows;
import leat.numeric.Impossible;
import leat.plan.Refused;
import leat.quantity.JsonText;
import leat.quantity.Unreadable;

/**
 * The answers to cells as the bytes that stand behind a record. The function depends on nothing but
 * its cell, so what was answered lately is kept: readings repeat.
 */
final class CellAnswers {
  private static final int KEPT = 1 << 12;
  private static final int LONGEST_KEPT = 24;
  private static final int NUMBERS = 1 << 8;

  private final byte[][] cells = new byte[KEPT][];
  private final byte[][] kept = new byte[KEPT][];
  private final RowStream stream;
  private final String column;
  private final CsvWriter writer;
  private final boolean decimalComma;
  private final Column[] columns;
  private final Rows scratch;
  private final StringBuilder text = new StringBuilder();
  private final long[] numberBits;
  private final String[] numberTexts;
  private long rows;
  private long bad;
  private String firstBad;

  /** {@code writer} null for JSON. */
  CellAnswers(RowStream stream, String column, CsvWriter writer, boolean decimalComma) {
    this.stream = stream;
    this.column = column;
    this.writer = writer;
    this.decimalComma = decimalComma;
    this.columns = stream.function.columns();
    this.scratch = new Rows(columns);
    this.numberBits = new long[columns.length * NUMBERS];
    this.numberTexts = new String[columns.length * NUMBERS];
  }

  /** How many rows were answered. */
  long rows() {
    return rows;
  }

  /** How many of them could not be read. */
  long bad() {
    return bad;
  }

  /** What was wrong with the first of these, or null. */
  String firstBad() {
    return firstBad;
  }

  /** The answer to the cell of a record. */
  byte[] of(RowLines lines, int at, int expected) {
    rows++;
    if (lines.isBroken()) {
      return bad("a quote is not closed, or text follows it");
    }
    if (lines.cells() > expected) {
      return bad("it has " + lines.cells() + " cells, the header " + expected);
    }
    if (at >= lines.cells()) {
      return answer("");
    }
    int length = lines.end(at) - lines.start(at);
    return length > LONGEST_KEPT ? answer(lines.text(at)) : lately(lines, at);
  }

  /** The answer that was kept, or a new one, kept in its place. */
  private byte[] lately(RowLines lines, int at) {
    byte[] b = lines.bytes();
    int start = lines.start(at);
    int end = lines.end(at);
    int hash = end - start;
    for (int i = start; i < end; i++) {
      hash = hash * 31 + b[i];
    }
    int slot = (hash ^ hash >>> 12) & KEPT - 1;
    byte[] known = cells[slot];
    if (known != null && Arrays.equals(known, 0, known.length, b, start, end)) {
      return kept[slot];
    }
    long before = bad;
    byte[] answer = answer(lines.text(at));
    if (bad == before) {
      cells[slot] = Arrays.copyOfRange(b, start, end);
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
      stream.function.answer(cell, row);
    } catch (Unreadable e) {
      return bad(e.message());
    } catch (Impossible e) {
      return bad(e.getMessage());
    }
    return bytes(row);
  }

  private byte[] bad(String why) {
    if (stream.call.has("--strict")) {
      throw new Refused(RowErrors.badRow(stream.source(), rows, column, why));
    }
    bad++;
    if (firstBad == null) {
      firstBad = "row " + rows + ", column " + column + ": " + why;
    }
    Row row = scratch.next();
    row.set(stream.function.status(), "bad-row");
    return bytes(row);
  }

  private byte[] bytes(Row row) {
    text.setLength(0);
    if (stream.only != null) {
      Bare.append(text, row.get(stream.only), stream.only);
      if (text.isEmpty()) {
        stream.call.sawBlankValue();
      }
      text.append('\n');
    }
    for (int c = 0; stream.only == null && c < columns.length; c++) {
      begin(columns[c]);
      Object value = row.get(columns[c]);
      if (value instanceof Double number) {
        text.append(number(c, number));
      } else {
        write(text, value, columns[c]);
      }
    }
    if (stream.only == null) {
      text.append(writer == null ? "}" : "\n");
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void begin(Column column) {
    if (writer == null) {
      text.append(", ").append(JsonText.string(stream.prefixed(column))).append(": ");
    } else {
      text.append(writer.delimiter());
    }
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
      JsonValue.append(into, value, column);
    } else {
      writer.value(into, value, column);
    }
  }
}

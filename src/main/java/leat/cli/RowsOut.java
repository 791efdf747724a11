package leat.cli;

import java.io.Flushable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Bare;
import leat.answer.Column;
import leat.answer.CsvWriter;
import leat.answer.JsonValue;
import leat.answer.Row;
import leat.answer.Rows;
import leat.plan.Refused;
import leat.quantity.JsonText;

/**
 * Rows written one by one as they come, as CSV or as a JSON array; format text is CSV, too; of
 * --value the bare values of its column.
 */
public final class RowsOut implements Flushable {
  private static final int FULL = 1 << 15;

  private final Output output;
  private final OutputStream out;
  private final Column[] columns;
  private final CsvWriter csv;
  private final Column only;
  private final Call call;
  private final Rows scratch;
  private final StringBuilder text = new StringBuilder(2 * FULL);
  private boolean first = true;

  /** Opens the output and writes the header. */
  public RowsOut(Call call, Output output, Column... columns) {
    this(call, output, true, columns);
  }

  /** The same; a part that follows another has no header. */
  public RowsOut(Call call, Output output, boolean header, Column... columns) {
    call.wantsRowsOnly();
    this.output = output;
    this.columns = columns;
    this.csv = "json".equals(call.format().name) ? null : call.format().csv();
    this.call = call;
    this.only = only(call, columns);
    this.scratch = new Rows(columns);
    this.out = output.open();
    if (csv == null) {
      text.append('[');
      return;
    }
    for (int c = 0; header && only == null && c < columns.length; c++) {
      csv.separate(text, c);
      csv.word(text, columns[c].key());
    }
    text.append(header && only == null ? "\n" : "");
  }

  /** The column of --value, or null for all. */
  static Column only(Call call, Column[] columns) {
    String key = CommonFlags.valueKey(call);
    Column only = key == null ? null : Bare.find(columns, key);
    if (key != null && only == null) {
      List<String> keys = new ArrayList<>();
      Bare.add(keys, columns);
      throw new Refused(CommandErrors.noKey(call.command, key, keys));
    }
    return only;
  }

  /** A row to fill; it is the same object each time. */
  public Row next() {
    return scratch.next();
  }

  /** Writes a filled row. */
  public void write(Row row) {
    if (csv == null) {
      text.append(first ? "\n{" : ",\n{");
    }
    first = false;
    if (only != null) {
      int before = text.length();
      Bare.append(text, row.get(only), only);
      if (text.length() == before) {
        call.sawBlankValue();
      }
    }
    for (int c = 0; only == null && c < columns.length; c++) {
      if (csv == null) {
        text.append(c == 0 ? "" : ", ").append(JsonText.string(columns[c].key())).append(": ");
        JsonValue.append(text, row.get(columns[c]), columns[c]);
      } else {
        csv.separate(text, c);
        csv.value(text, row.get(columns[c]), columns[c]);
      }
    }
    text.append(csv == null ? "}" : "\n");
    if (text.length() > FULL) {
      put();
    }
  }

  private void put() {
    try {
      out.write(text.toString().getBytes(StandardCharsets.UTF_8));
      text.setLength(0);
    } catch (IOException e) {
      throw output.failed(e);
    }
  }

  /** What is ready goes out before the input is waited for. */
  @Override
  public void flush() {
    put();
    try {
      out.flush();
    } catch (IOException e) {
      throw output.failed(e);
    }
  }

  /** The end: closes the output, or drops it when the work was not done. */
  public void finish(boolean done) {
    boolean whole = false;
    try {
      if (done) {
        text.append(csv == null ? "\n]\n" : "");
        put();
        output.close(out);
        whole = true;
      }
    } catch (IOException e) {
      throw output.failed(e);
    } finally {
      output.finish(whole);
    }
  }
}

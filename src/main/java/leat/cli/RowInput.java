package leat.cli;

import java.io.Closeable;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import leat.plan.PlanErrors;
import leat.plan.Refused;

/** A file of rows under a header, or standard input for "-", read record by record. */
public final class RowInput implements Closeable {
  private final InputStream in;
  private final RowLines lines;
  private final String name;

  /**
   * Opens it and stands before the header.
   *
   * @param delimiter what a plan says parts the columns; null to see it in the header
   */
  public RowInput(Call call, String file, String delimiter) throws IOException {
    name = "-".equals(file) ? "standard input" : file;
    in = "-".equals(file) ? call.terminal.takeInput() : file(call, file);
    lines = new RowLines(in, name);
    String first = lines.peek();
    boolean planned = delimiter != null && delimiter.length() == 1 && !call.has("--delimiter");
    if (first != null) {
      lines.delimiter(planned ? delimiter.charAt(0) : delimiter(call, first));
    }
  }

  /** A file by name, refused when it is not there. */
  static InputStream file(Call call, String name) throws IOException {
    java.io.File file = call.terminal.file(name);
    if (!file.exists() || file.isDirectory()) {
      throw new Refused(
          List.of(
              PlanErrors.cannotRead(
                  name, file.isDirectory() ? "this is a folder" : "no such file")),
          3);
    }
    return new Inlet(new FileInputStream(file), name);
  }

  /** What parts the columns: as typed, else as the header shows. */
  static char delimiter(Call call, String header) {
    if (call.has("--delimiter")) {
      return call.format().csv().delimiter();
    }
    if (header.indexOf(',') >= 0) {
      return ',';
    }
    return header.indexOf(';') >= 0 ? ';' : header.indexOf('\t') >= 0 ? '\t' : ',';
  }

  static void refuseTwins(List<String> names, String source) {
    for (int i = 0; i < names.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (!names.get(i).isBlank() && names.get(i).strip().equals(names.get(k).strip())) {
          throw new Refused(RowErrors.columnTwice(source, names.get(i).strip()));
        }
      }
    }
  }

  /** Its records. */
  public RowLines lines() {
    return lines;
  }

  /** Name of the file, for messages. */
  public String name() {
    return name;
  }

  /** Cells of the record as names of columns; two of one name are refused. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < lines.cells(); i++) {
      names.add(lines.text(i).strip());
    }
    refuseTwins(names, name);
    return names;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}

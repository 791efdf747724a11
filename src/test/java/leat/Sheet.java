package leat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A sheet of check values under src/test/resources/reference, read row by row with its provenance.
 */
public final class Sheet {
  private final String name;
  private final List<Row> rows;

  private Sheet(String name, List<Row> rows) {
    this.name = name;
    this.rows = rows;
  }

  public static Sheet of(String name) {
    try (InputStream in = Sheet.class.getResourceAsStream("/reference/" + name)) {
      if (in == null) {
        throw new IllegalStateException("no sheet " + name);
      }
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      List<Row> rows = new ArrayList<>();
      try (CSVParser parser =
          CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), format)) {
        for (CSVRecord record : parser) {
          rows.add(new Row(name, record.toMap(), record.get(0)));
        }
      }
      return new Sheet(name, rows);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Only the rows in which these columns are filled. */
  public Sheet having(String... columns) {
    return where(
        r -> {
          for (String c : columns) {
            if (r.text(c).isBlank()) {
              return false;
            }
          }
          return true;
        });
  }

  public Sheet where(Predicate<Row> wanted) {
    return new Sheet(name, rows.stream().filter(wanted).toList());
  }

  /** Guards a filter: fails when fewer rows are left. */
  public Stream<Row> atLeast(int n) {
    if (rows.size() < n) {
      throw new AssertionError(
          name + ": " + rows.size() + " rows left, at least " + n + " expected");
    }
    return rows.stream();
  }

  public List<Row> rows() {
    return rows;
  }

  /** One row; {@link #num} fails on a blank or a word. */
  public record Row(String sheet, Map<String, String> cells, String id) {
    public String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalStateException(sheet + " has no column " + column);
      }
      return cell.strip();
    }

    public double num(String column) {
      return Double.parseDouble(text(column));
    }

    public double numOr(String column, double otherwise) {
      return text(column).isEmpty() ? otherwise : num(column);
    }

    public boolean has(String column) {
      return !text(column).isEmpty();
    }

    /** A list of numbers such as "1;2;3". */
    public double[] list(String column, String separator) {
      return Stream.of(text(column).split(separator))
          .map(String::strip)
          .filter(s -> !s.isEmpty())
          .mapToDouble(Double::parseDouble)
          .toArray();
    }

    public String idAndProvenance() {
      String provenance = cells.getOrDefault("provenance", cells.getOrDefault("note", ""));
      return sheet + " " + id + " (" + provenance + ")";
    }

    @Override
    public String toString() {
      return id;
    }
  }
}

package leat.answer;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.Visible;

/**
 * One column of an answer as bare values, a line each: numbers in the column's metric unit without
 * it, words as they are, an empty line for unknown.
 */
public final class Bare {
  private final Answer answer;
  private final Column column;
  private boolean blank;

  private Bare(Answer answer, Column column) {
    this.answer = answer;
    this.column = column;
  }

  /**
   * The column of this key: of the figures that json has on top, such as the sum of a season; else
   * of the rows that csv has too, else of the arrays that only json has; null when there is none.
   */
  public static Bare of(Answer answer, String key) {
    if (answer.head != null && find(answer.head.columns, key) != null) {
      return new Bare(answer.head, find(answer.head.columns, key));
    }
    Column own = find(answer.columns, key);
    if (own != null) {
      return new Bare(answer, own);
    }
    for (int i = 0; i < answer.arrays.size(); i++) {
      Column one = find(answer.arrays.get(i).columns, key);
      if (one != null) {
        return new Bare(answer.arrays.get(i), one);
      }
    }
    return null;
  }

  /** The column of this key, or null. */
  public static Column find(Column[] columns, String key) {
    for (int i = 0; i < columns.length; i++) {
      if (columns[i].key().equals(key)) {
        return columns[i];
      }
    }
    return null;
  }

  /** Every key that can be asked for; empty for an answer that is one text. */
  public static List<String> keys(Answer answer) {
    List<String> keys = new ArrayList<>();
    add(keys, answer.columns);
    if (answer.head != null) {
      add(keys, answer.head.columns);
    }
    for (int i = 0; i < answer.arrays.size(); i++) {
      add(keys, answer.arrays.get(i).columns);
    }
    return keys;
  }

  /** Adds the keys of columns that are not there yet. */
  public static void add(List<String> keys, Column[] columns) {
    for (int i = 0; i < columns.length; i++) {
      if (keys.indexOf(columns[i].key()) < 0) {
        keys.add(columns[i].key());
      }
    }
  }

  /** All lines. */
  public String lines() {
    StringBuilder out = new StringBuilder();
    for (int r = 0; r < answer.rows.size(); r++) {
      int before = out.length();
      append(out, answer.rows.get(r).get(column), column);
      blank |= out.length() == before;
      out.append('\n');
    }
    return out.toString();
  }

  /** Whether a line was empty. */
  public boolean blank() {
    return blank;
  }

  /** One value without its line's end. */
  public static void append(StringBuilder out, Object value, Column column) {
    if (value instanceof Double number) {
      out.append(CsvWriter.number(number, column));
    } else if (value != null) {
      out.append(Visible.of(String.valueOf(value)));
    }
  }
}

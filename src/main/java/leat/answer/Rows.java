package leat.answer;

/** One row used again and again, for streams. */
public final class Rows {
  private final Row row;

  /** Rows with these columns. */
  public Rows(Column... columns) {
    this.row = new Row(columns);
  }

  /** The row, emptied. */
  public Row next() {
    row.clear();
    return row;
  }
}

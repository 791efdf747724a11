package leat.answer.chart;

/** A field of characters over two scales. */
final class Canvas {
  private final char[][] cells;
  private final Scale along;
  private final Scale up;

  Canvas(int columns, int rows, Scale along, Scale up) {
    this.cells = new char[rows][columns];
    for (char[] row : cells) {
      java.util.Arrays.fill(row, ' ');
    }
    this.along = along;
    this.up = up;
  }

  /** Ends a line of text without blanks before its end. */
  static void endLine(StringBuilder out) {
    int end = out.length();
    while (end > 0 && out.charAt(end - 1) == ' ') {
      end--;
    }
    out.setLength(end);
    out.append('\n');
  }

  int columns() {
    return cells[0].length;
  }

  int rows() {
    return cells.length;
  }

  /** The column of a place along. */
  int column(double shown) {
    return (int) Math.round(along.share(shown) * (columns() - 1));
  }

  /** The row of a value. */
  int row(double shown) {
    return (int) Math.round((1 - up.share(shown)) * (rows() - 1));
  }

  private boolean holds(int row, int column) {
    return row >= 0 && row < rows() && column >= 0 && column < columns();
  }

  void put(int row, int column, char c) {
    if (holds(row, column)) {
      cells[row][column] = c;
    }
  }

  /** The same where nothing is yet. */
  void under(int row, int column, char c) {
    if (holds(row, column) && cells[row][column] == ' ') {
      cells[row][column] = c;
    }
  }

  /** A stretch of a column from one value to another. */
  void stretch(int column, double from, double to, char c) {
    int a = row(from);
    int b = row(to);
    for (int r = Math.min(a, b); r <= Math.max(a, b); r++) {
      put(r, column, c);
    }
  }

  String row(int r) {
    return new String(cells[r]);
  }
}

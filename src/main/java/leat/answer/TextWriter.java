package leat.answer;

import java.util.List;
import leat.quantity.Unit;
import leat.quantity.Visible;

/** Writes an answer for a reader: sentence, figures, Taken, Mind, Next. */
final class TextWriter {
  private static final int LABEL = 20;
  private static final int WIDEST_CELL = 30;

  /** Blanks between the columns of a table. */
  private static final int GAP = 3;

  /** Words are not broken into a narrower column than this. */
  private static final int LEAST_ROOM = 24;

  /** Words of a verdict, and how a terminal colours them: red, yellow, green. */
  private static final String[] VERDICTS = {"FAIL", "fail", "warn", "pass"};

  private static final String[] COLORS = {"\u001b[31m", "\u001b[31m", "\u001b[33m", "\u001b[32m"};
  private static final String PLAIN = "\u001b[0m";

  private final boolean us;
  private final boolean quiet;
  private final boolean explain;
  private final int width;
  private final boolean painted;
  private final StringBuilder out = new StringBuilder();

  TextWriter(boolean us, boolean quiet, boolean explain, int width, boolean painted) {
    this.width = width;
    this.painted = painted;
    this.us = us;
    this.quiet = quiet;
    this.explain = explain;
  }

  /** The text, with the charts between figures and notes. */
  String write(Answer answer, String charts) {
    if (!answer.sentence.isEmpty()) {
      out.append(wrapped(answer.sentence.render(us), "")).append('\n');
    }
    for (int b = 0; b < answer.blocks.size(); b++) {
      if (!answer.headings.get(b).isEmpty()) {
        out.append(wrapped(answer.headings.get(b).render(us), "")).append('\n');
      }
      block(answer.blocks.get(b));
    }
    if (answer.tableColumns != null) {
      table(answer);
    }
    out.append(charts);
    if (explain) {
      workings(answer.workings);
    }
    if (quiet) {
      safety(answer);
    } else {
      notes(answer);
    }
    return out.toString();
  }

  private void block(List<Answer.Line> lines) {
    int cells = 0;
    for (int i = 0; i < lines.size(); i++) {
      cells = Math.max(cells, lines.get(i).cells.length);
    }
    String[][] texts = new String[lines.size()][];
    int[] widths = new int[cells];
    int label = LABEL;
    for (int i = 0; i < lines.size(); i++) {
      Answer.Line line = lines.get(i);
      label = Math.max(label, line.label.length());
      texts[i] = new String[line.cells.length];
      for (int c = 0; c < line.cells.length; c++) {
        texts[i][c] = line.cells[c].render(us);
        if (c < line.cells.length - 1 && texts[i][c].length() <= WIDEST_CELL) {
          widths[c] = Math.max(widths[c], texts[i][c].length());
        }
      }
    }
    for (int i = 0; i < lines.size(); i++) {
      line(Visible.of(lines.get(i).label), label + 2, texts[i], widths);
    }
  }

  /** One line of figures; on a narrow screen its last cells go on below. */
  private void line(String label, int room, String[] cells, int[] widths) {
    int first = out.length();
    int start = first;
    out.append("  ").append(padded(label, room));
    for (int c = 0; c < cells.length; c++) {
      boolean last = c == cells.length - 1;
      int column = out.length() - start;
      if (width > 0 && column + cells[c].length() > width) {
        start = below(start, column, last || column < width - LEAST_ROOM, cells[c]);
        out.append(last ? "" : "  ");
      } else {
        out.append(last ? cells[c] : padded(cells[c], Math.max(widths[c] + 2, 12)));
      }
    }
    endLine();
    paint(first, label);
  }

  /** Puts a cell that does not fit into lines of its own; where the last of them starts. */
  private int below(int start, int column, boolean hanging, String cell) {
    int at = column;
    int line = start;
    if (!hanging || width - column < LEAST_ROOM) {
      endLine();
      line = out.length();
      at = 4;
      out.append(" ".repeat(at));
    }
    List<String> lines = Wrap.lines(cell, width - at, width - at);
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0) {
        out.append('\n');
        line = out.length();
        out.append(" ".repeat(at));
      }
      out.append(lines.get(i));
    }
    return line;
  }

  /** Colours the verdict at the start of a label. */
  private void paint(int from, String label) {
    for (int i = 0; painted && i < VERDICTS.length; i++) {
      String word = VERDICTS[i];
      if (label.equals(word) || label.startsWith(word + " ")) {
        int at = out.indexOf(word, from);
        if (at >= 0) {
          out.insert(at + word.length(), PLAIN).insert(at, COLORS[i]);
        }
        return;
      }
    }
  }

  private void table(Answer answer) {
    Column[] columns = answer.tableColumns;
    int n = columns.length;
    String[][] texts = new String[answer.rows.size() + 1][n];
    boolean[] right = new boolean[n];
    int[] widths = new int[n];
    for (int c = 0; c < n; c++) {
      texts[0][c] = heading(columns[c]);
      widths[c] = texts[0][c].length();
    }
    for (int r = 0; r < answer.rows.size(); r++) {
      for (int c = 0; c < n; c++) {
        Object value = answer.rows.get(r).get(columns[c]);
        right[c] |= value instanceof Number;
        texts[r + 1][c] = cell(value, columns[c]);
        widths[c] = Math.max(widths[c], texts[r + 1][c].length());
      }
    }
    int from = 0;
    while (from < n) {
      from = piece(texts, right, widths, from);
    }
  }

  /**
   * As many columns of a table as fit beside each other, the first column before each piece;
   * returns the column that comes next.
   */
  private int piece(String[][] texts, boolean[] right, int[] widths, int from) {
    int n = widths.length;
    int used = from == 0 ? 2 : 2 + widths[0] + GAP;
    int to = from;
    while (to < n
        && (width == 0 || to == from || used + widths[to] <= width || roomFor(to, used, right))) {
      used += widths[to] + GAP;
      to++;
    }
    for (int r = 0; r < texts.length; r++) {
      int start = out.length();
      out.append("  ");
      if (from > 0) {
        cell(texts[r][0], widths[0], right[0], false);
      }
      for (int c = from; c < to; c++) {
        boolean last = c == to - 1;
        int column = out.length() - start;
        if (last && !right[c] && width > 0 && column + texts[r][c].length() > width) {
          below(start, column, true, texts[r][c]);
        } else {
          cell(texts[r][c], widths[c], right[c], last);
        }
      }
      endLine();
      paintCells(start, texts[r]);
    }
    return to;
  }

  private boolean roomFor(int column, int used, boolean[] right) {
    return column == right.length - 1 && !right[column] && width - used >= LEAST_ROOM;
  }

  private void cell(String text, int room, boolean right, boolean last) {
    String gap = " ".repeat(room - text.length());
    out.append(right ? gap + text : text + gap).append(last ? "" : " ".repeat(GAP));
  }

  private void paintCells(int from, String[] cells) {
    for (int c = 0; painted && c < cells.length; c++) {
      paint(from, cells[c]);
    }
  }

  private String heading(Column column) {
    Unit unit = column.show() == null ? null : us ? column.show().us() : column.show().metric();
    return unit == null ? column.label() : column.label() + " " + unit.symbol();
  }

  private String cell(Object value, Column column) {
    if (value == null) {
      return "-";
    }
    if (value instanceof Double number) {
      return column.show() == null ? column.bare(number) : Phrase.text(number, column.show(), us);
    }
    return Visible.of(String.valueOf(value));
  }

  private void workings(List<Working> workings) {
    for (int i = 0; i < workings.size(); i++) {
      Working w = workings.get(i);
      out.append("Working: ").append(w.what).append('\n');
      out.append("  ").append(w.formula).append('\n');
      String with = w.with.render(us);
      if (!with.isEmpty()) {
        out.append(wrapped("  with " + with, "    ")).append('\n');
      }
      out.append("  = ").append(w.result(us)).append('\n');
      String from = "  range " + w.range + "; source " + w.source;
      out.append(wrapped(from, "    ")).append('\n');
    }
  }

  /** The workings alone, for standard error beside a csv. */
  static String workings(List<Working> workings, boolean us) {
    TextWriter writer = new TextWriter(us, false, true, 0, false);
    writer.workings(workings);
    return writer.out.toString();
  }

  private void notes(Answer answer) {
    if (!answer.taken.isEmpty()) {
      out.append(wrapped(takenLine(answer, us), "  ")).append('\n');
    }
    for (int i = 0; i < answer.minds.size(); i++) {
      String mind = "Mind: " + answer.minds.get(i).text.render(us);
      out.append(wrapped(mind, "  ")).append('\n');
    }
    for (int i = 0; i < answer.nexts.size(); i++) {
      String next = "Next: " + answer.nexts.get(i).render(us);
      // a command line must stay whole to be pasted, and so must lines of a plan
      boolean whole = next.contains("leat ") || next.contains("write  ") || next.contains("\n");
      out.append(whole ? next : wrapped(next, "  ")).append('\n');
    }
  }

  /** What could hurt somebody, in one last line however long it is: scripts take the last line. */
  private void safety(Answer answer) {
    boolean first = true;
    for (int i = 0; i < answer.minds.size(); i++) {
      if (answer.minds.get(i).safety) {
        out.append(first ? "Mind: " : " ").append(answer.minds.get(i).text.render(us));
        first = false;
      }
    }
    if (!first) {
      out.append('\n');
    }
  }

  static String takenLine(Answer answer, boolean us) {
    StringBuilder line = new StringBuilder("Taken: ");
    for (int i = 0; i < answer.taken.size(); i++) {
      line.append(i == 0 ? "" : "; ").append(answer.taken.get(i).render(us));
    }
    return line.append('.').toString();
  }

  /** Lines stay whole, and the class that breaks them is not loaded, where no width is known. */
  private String wrapped(String text, String indent) {
    return width == 0 ? text : Wrap.text(text, width, indent);
  }

  private static String padded(String text, int width) {
    return text.length() > width - 2 ? text + "  " : text + " ".repeat(width - text.length());
  }

  private void endLine() {
    int end = out.length();
    while (end > 0 && out.charAt(end - 1) == ' ') {
      end--;
    }
    out.setLength(end);
    out.append('\n');
  }
}

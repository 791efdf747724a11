package leat.answer;

import java.util.List;
import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Visible;

/** Writes an answer for a reader: sentence, figures, Taken, Mind, Next. */
final class TextWriter {
  private static final int LABEL = 20;
  private static final int WIDEST_CELL = 30;
  private static final int LINE = 110;

  private final boolean us;
  private final boolean quiet;
  private final boolean explain;
  private final StringBuilder out = new StringBuilder();

  TextWriter(boolean us, boolean quiet, boolean explain) {
    this.us = us;
    this.quiet = quiet;
    this.explain = explain;
  }

  String write(Answer answer) {
    if (!answer.sentence.isEmpty()) {
      out.append(answer.sentence.render(us)).append('\n');
    }
    for (int b = 0; b < answer.blocks.size(); b++) {
      if (!answer.headings.get(b).isEmpty()) {
        out.append(answer.headings.get(b).render(us)).append('\n');
      }
      block(answer.blocks.get(b));
    }
    if (answer.tableColumns != null) {
      table(answer);
    }
    if (explain) {
      workings(answer.workings);
    }
    if (!quiet) {
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
      out.append("  ").append(padded(Visible.of(lines.get(i).label), label + 2));
      for (int c = 0; c < texts[i].length; c++) {
        boolean last = c == texts[i].length - 1;
        out.append(last ? texts[i][c] : padded(texts[i][c], Math.max(widths[c] + 2, 12)));
      }
      endLine();
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
    for (int r = 0; r < texts.length; r++) {
      out.append("  ");
      for (int c = 0; c < n; c++) {
        int gap = widths[c] - texts[r][c].length();
        out.append(right[c] ? " ".repeat(gap) + texts[r][c] : texts[r][c] + " ".repeat(gap));
        out.append(c == n - 1 ? "" : "   ");
      }
      endLine();
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
      return column.show() == null
          ? NumberText.significant(number, column.digits())
          : Phrase.text(number, column.show(), us);
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
        out.append("  with ").append(with).append('\n');
      }
      out.append("  = ");
      if (w.show == null) {
        out.append(NumberText.significant(w.result, w.digits));
      } else {
        out.append(Phrase.of(w.result, w.show).render(us));
      }
      out.append('\n');
      out.append("  range ").append(w.range).append("; source ").append(w.source).append('\n');
    }
  }

  private void notes(Answer answer) {
    if (!answer.taken.isEmpty()) {
      out.append(takenLine(answer, us)).append('\n');
    }
    for (int i = 0; i < answer.minds.size(); i++) {
      out.append(wrapped("Mind: " + answer.minds.get(i).text.render(us))).append('\n');
    }
    for (int i = 0; i < answer.nexts.size(); i++) {
      out.append("Next: ").append(answer.nexts.get(i).render(us)).append('\n');
    }
  }

  static String takenLine(Answer answer, boolean us) {
    StringBuilder line = new StringBuilder("Taken: ");
    for (int i = 0; i < answer.taken.size(); i++) {
      line.append(i == 0 ? "" : "; ").append(answer.taken.get(i).render(us));
    }
    return wrapped(line.append('.').toString());
  }

  /** Breaks at spaces so that no line is longer than a wide terminal, unless one word is. */
  private static String wrapped(String text) {
    if (text.length() <= LINE) {
      return text;
    }
    StringBuilder result = new StringBuilder();
    int start = 0;
    while (text.length() - start > LINE) {
      int end = text.lastIndexOf(' ', start + LINE);
      if (end <= start) {
        break;
      }
      result.append(text, start, end).append("\n  ");
      start = end + 1;
    }
    return result.append(text.substring(start)).toString();
  }

  private static String padded(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
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

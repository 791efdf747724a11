package leat.html;

import java.util.List;
import leat.answer.Told;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.answer.chart.Series;

/** Tables of a page as markup: figures, rows, the numbers of a chart. */
final class Tables {
  /** Rows of a page's table; the rest is in csv. */
  static final int MOST = 10_000;

  /** Lines of a chart's own table. */
  private static final int MOST_LINES = 400;

  /** Columns that can be set to the right; see {@link #rules}. */
  private static final int MOST_RIGHT = 40;

  /** So few rows stand beside each other. */
  private static final int FEW = 4;

  /** A longer table gets a field to filter by. */
  private static final int SHORT = 12;

  private final BarePaths paths;
  private final StringBuilder out = new StringBuilder();

  Tables(BarePaths paths) {
    this.paths = paths;
  }

  /** The rules of style behind the classes of columns of numbers. */
  static String rules() {
    StringBuilder css = new StringBuilder();
    for (int c = 1; c <= MOST_RIGHT; c++) {
      css.append(c == 1 ? "" : ", ").append(".n").append(c).append(" tr > :nth-child(").append(c);
      css.append(')');
    }
    return css.append(" { text-align: right; }").toString();
  }

  private String text(String words) {
    return HtmlPage.text(paths.of(words));
  }

  /** Lines of figures: label, cells, the words behind. */
  String figures(List<Told.Figure> figures) {
    int cells = 1;
    for (Told.Figure figure : figures) {
      cells = Math.max(cells, figure.cells().size());
    }
    out.append("<table class=\"figures\"><tbody>\n");
    for (Told.Figure figure : figures) {
      String label = figure.label() == null ? "" : figure.label().strip();
      String verdict = verdict(label);
      out.append(verdict.isEmpty() ? "<tr>" : "<tr class=\"" + verdict + "\">");
      out.append("<th scope=\"row\">").append(text(label)).append("</th>");
      int n = figure.cells().size();
      for (int c = 0; c < n; c++) {
        boolean last = c == n - 1 && n < cells;
        out.append(last ? "<td colspan=\"" + (cells - c) + "\">" : "<td>");
        out.append(text(figure.cells().get(c))).append("</td>");
      }
      out.append("</tr>\n");
    }
    return out.append("</tbody></table>\n").toString();
  }

  private static String verdict(String label) {
    int blank = label.indexOf(' ');
    String word = blank < 0 ? label : label.substring(0, blank);
    return switch (word) {
      case "FAIL", "fail" -> "fail";
      case "warn" -> "warn";
      case "pass" -> "pass";
      default -> "";
    };
  }

  /** Rows: one as a list of its values, several as a table that sorts and, when long, filters. */
  String rows(Told.Table table, String caption) {
    if (table.rows().size() == 1) {
      return single(table);
    }
    if (table.rows().size() <= FEW && table.heads().size() > FEW) {
      return turned(table);
    }
    boolean isLong = table.rows().size() > SHORT;
    out.append("<div class=\"rows\">");
    if (isLong) {
      out.append("<p class=\"screen script\"><label>Show rows with <input type=\"search\"");
      out.append(
          " class=\"filter\"/></label> <span class=\"count soft\" role=\"status\"></span></p>");
    }
    out.append("<div class=\"box\" tabindex=\"0\" role=\"region\" aria-label=\"")
        .append(text(caption))
        .append("\">\n<table class=\"sorts")
        .append(right(table.numbers()))
        .append("\"><thead><tr>");
    for (int c = 0; c < table.heads().size(); c++) {
      out.append("<th scope=\"col\">");
      out.append(text(table.heads().get(c))).append("</th>");
    }
    out.append("</tr></thead><tbody>\n");
    for (String[] row : table.rows()) {
      out.append("<tr>");
      for (int c = 0; c < row.length; c++) {
        out.append("<td>").append(text(row[c])).append("</td>");
      }
      out.append("</tr>\n");
    }
    out.append("</tbody></table></div></div>\n");
    if (table.all() > table.rows().size()) {
      out.append("<p class=\"soft\">The first ")
          .append(table.rows().size())
          .append(" of ")
          .append(table.all())
          .append(" rows; --format csv has all.</p>\n");
    }
    return out.toString();
  }

  /** Classes that set the columns of numbers to the right: a class a cell would cost too much. */
  private static String right(boolean[] numbers) {
    StringBuilder classes = new StringBuilder();
    for (int c = 0; c < numbers.length && c < MOST_RIGHT; c++) {
      classes.append(numbers[c] ? " n" + (c + 1) : "");
    }
    return classes.toString();
  }

  /** Few rows of many columns, turned: a line a column. */
  private String turned(Told.Table table) {
    out.append("<table class=\"figures\"><tbody>\n");
    for (int c = 0; c < table.heads().size(); c++) {
      out.append("<tr><th scope=\"row\">").append(text(table.heads().get(c))).append("</th>");
      for (String[] row : table.rows()) {
        out.append("<td>").append(text(row[c])).append("</td>");
      }
      out.append("</tr>\n");
    }
    return out.append("</tbody></table>\n").toString();
  }

  private String single(Told.Table table) {
    out.append("<div class=\"columns\"><table class=\"figures\"><tbody>\n");
    for (int c = 0; c < table.heads().size(); c++) {
      out.append("<tr><th scope=\"row\">").append(text(table.heads().get(c))).append("</th><td>");
      out.append(text(table.rows().get(0)[c])).append("</td></tr>\n");
    }
    return out.append("</tbody></table></div>\n").toString();
  }

  /** The numbers of a chart: a line a place, a column a series. */
  String chart(Chart chart, boolean us) {
    Aligned lines = Aligned.of(chart.series());
    boolean[] numbers = new boolean[chart.series().size() + 1];
    java.util.Arrays.fill(numbers, 1, numbers.length, true);
    out.append("<table class=\"small").append(right(numbers)).append("\"><thead><tr>");
    out.append("<th scope=\"col\">").append(text(or(chart.x().heading(us), "place")));
    for (Series series : chart.series()) {
      String unit = chart.y().symbol(us);
      out.append("</th><th scope=\"col\">").append(text(series.label()));
      out.append(unit.isEmpty() ? "" : ", " + text(unit));
    }
    out.append("</th></tr></thead><tbody>\n");
    int every = Math.max(1, (lines.size() + MOST_LINES - 1) / MOST_LINES);
    for (int r = 0; r < lines.size(); r += every) {
      out.append("<tr><td>").append(text(chart.x().text(chart.x().shown(lines.place(r), us))));
      for (int s = 0; s < chart.series().size(); s++) {
        int i = lines.index(r, s);
        out.append("</td><td>").append(i < 0 ? "" : value(chart, chart.series().get(s), i, us));
      }
      out.append("</td></tr>\n");
    }
    out.append("</tbody></table>\n");
    if (every > 1) {
      out.append("<p class=\"soft\">One line of ").append(every).append(".</p>\n");
    }
    return out.toString();
  }

  private String value(Chart chart, Series series, int i, boolean us) {
    if (chart.isBars() && Double.isNaN(series.y()[i])) {
      return "";
    }
    Axis y = chart.y();
    String number = y.text(y.shown(series.y()[i], us));
    if (series.hasLow()) {
      number = y.text(y.shown(series.low()[i], us)) + " to " + number;
    }
    String said = series.said(i, us);
    return text(said.isEmpty() ? number : number + " (" + said + ")");
  }

  private static String or(String words, String otherwise) {
    return words.isEmpty() ? otherwise : words;
  }
}

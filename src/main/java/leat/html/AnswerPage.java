package leat.html;

import java.util.List;
import leat.answer.Told;
import leat.answer.Wrap;
import leat.answer.chart.Chart;
import leat.answer.chart.Series;
import leat.answer.chart.TextChart;

/**
 * An answer as a page: sentence, figures, charts each with its table, rows, what was taken, what to
 * mind, what comes next, and how the page was made.
 */
public final class AnswerPage {
  private static final int TEXT_CHART = 72;

  private final Told told;
  private final MadeBy made;
  private final BarePaths paths;
  private final StringBuilder out = new StringBuilder();

  /**
   * @param told the answer in words
   * @param made how the page came to be
   * @param paths takes the folders of this machine off all words
   */
  public AnswerPage(Told told, MadeBy made, BarePaths paths) {
    this.told = told;
    this.made = made;
    this.paths = paths;
  }

  /** The whole file. */
  public String write() {
    HtmlPage page = HtmlPage.styled(paths.of(made.title()));
    page.style(Parts.read("/leat/html/answer.css")).style(Tables.rules());
    out.append("<main>\n");
    head();
    charts();
    rows();
    notes();
    out.append("</main>\n");
    footer();
    page.body(out.toString());
    if (!told.charts().isEmpty()) {
      page.style(Parts.read("/uplot/uPlot.min.css"));
      page.script(withoutAddress(Parts.read("/uplot/uPlot.iife.min.js")));
      // the script takes the name of the SVG language from here: it holds no address itself
      page.body("<svg class=\"ns\" aria-hidden=\"true\"></svg>\n");
      page.data("charts", new ChartData(told.us(), paths).of(told.charts()));
      page.script(Parts.read("/leat/html/charts.js"));
    }
    return page.script(Parts.read("/leat/html/page.js")).write();
  }

  /** The library's first line names its home: the page holds no address, and names the library. */
  private static String withoutAddress(String script) {
    int end = script.indexOf("*/");
    return script.startsWith("/*!") ? script.substring(end + 2).strip() : script;
  }

  private String text(String words) {
    return HtmlPage.text(paths.of(words));
  }

  private void head() {
    out.append("<p class=\"soft\">").append(text(made.title())).append("</p>\n");
    String[] lines = sentence().split("\n", -1);
    out.append("<h1>").append(text(lines[0].isEmpty() ? made.title() : lines[0]));
    out.append("</h1>\n");
    for (int i = 1; i < lines.length; i++) {
      out.append("<p>").append(text(lines[i])).append("</p>\n");
    }
    for (Told.Block block : told.blocks()) {
      if (!block.heading().isEmpty() && !block.heading().equals(sentence())) {
        out.append("<h2>").append(text(block.heading())).append("</h2>\n");
      }
      if (!block.figures().isEmpty()) {
        out.append(new Tables(paths).figures(block.figures()));
      }
    }
  }

  /** The sentence; where an answer has one block only, that one's heading is it. */
  private String sentence() {
    List<Told.Block> blocks = told.blocks();
    boolean one = told.sentence().isEmpty() && blocks.size() == 1;
    return one ? blocks.get(0).heading() : told.sentence();
  }

  private void charts() {
    List<Chart> charts = told.charts();
    for (int i = 0; i < charts.size(); i++) {
      Chart chart = charts.get(i);
      String id = "chart" + i;
      out.append("<section class=\"drawn\" aria-labelledby=\"").append(id).append("\">\n<h2 id=\"");
      out.append(id).append("\">").append(text(chart.title())).append("</h2>\n");
      if (chart.isEmpty()) {
        out.append("<p>Nothing to draw: no number is known here.</p></section>\n");
        continue;
      }
      out.append("<div class=\"chart\" data-chart=\"").append(i).append("\"><pre>");
      out.append(text(TextChart.of(chart, told.us(), TEXT_CHART, true)));
      out.append("</pre></div>\n");
      thinned(chart);
      out.append("<details><summary>Numbers of this chart</summary><div class=\"box\">");
      out.append(new Tables(paths).chart(chart, told.us()));
      out.append("</div></details></section>\n");
    }
  }

  private void thinned(Chart chart) {
    for (Series series : chart.series()) {
      if (series.size() > ChartData.MOST && series.kind() != Series.Kind.POINTS) {
        out.append("<p class=\"soft\">").append(text(series.label())).append(": ");
        out.append(series.size());
        out.append(" values, of which the least and the greatest of each stretch are drawn.</p>\n");
      }
    }
  }

  private void rows() {
    for (Told.Table table : told.tables(Tables.MOST)) {
      if (table.rows().isEmpty()) {
        continue;
      }
      String name = table.name().isEmpty() ? "All values" : capital(table.name());
      out.append("<h2>").append(text(name)).append("</h2>\n");
      out.append(new Tables(paths).rows(table, name));
    }
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  private void notes() {
    for (Told.Formula one : told.formulas()) {
      out.append("<h2>Working: ").append(text(one.what())).append("</h2>\n<pre>");
      out.append(text(one.formula())).append('\n');
      out.append(one.with().isEmpty() ? "" : "with " + text(one.with()) + "\n");
      out.append("= ").append(text(one.result())).append("</pre>\n<p class=\"soft\">Range ");
      out.append(text(one.range())).append("; source ").append(text(one.source()));
      out.append("</p>\n");
    }
    if (!told.taken().isEmpty()) {
      list("Taken", told.taken());
    }
    List<Told.Note> minds = told.minds();
    for (int i = 0; i < minds.size(); i++) {
      out.append(i == 0 ? "<h2>Mind</h2>\n<ul>\n" : "");
      out.append(minds.get(i).safety() ? "<li class=\"safety\">" : "<li>");
      out.append(text(minds.get(i).text())).append("</li>\n");
    }
    out.append(minds.isEmpty() ? "" : "</ul>\n");
    List<String> nexts = told.nexts();
    for (int i = 0; i < nexts.size(); i++) {
      out.append(i == 0 ? "<h2>Next</h2>\n" : "");
      next(nexts.get(i));
    }
  }

  private void list(String heading, List<String> lines) {
    out.append("<h2>").append(heading).append("</h2>\n<ul>\n");
    for (String line : lines) {
      out.append("<li>").append(text(line)).append("</li>\n");
    }
    out.append("</ul>\n");
  }

  /** A command or a line of a plan stands alone, to be copied; the words follow it. */
  private void next(String line) {
    String command = Wrap.commandIn(line);
    int write = line.indexOf("write  ");
    if (command == null && write >= 0) {
      command = line.substring(write + "write  ".length()).strip();
    } else if (command == null && line.indexOf('\n') >= 0) {
      command = line.substring(line.indexOf('\n') + 1);
    }
    if (command == null) {
      out.append("<p>").append(text(line)).append("</p>\n");
      return;
    }
    int at = line.indexOf(command);
    String before = line.substring(0, at).strip();
    String after = line.substring(at + command.length()).strip();
    out.append(before.isEmpty() ? "" : "<p>" + text(before) + "</p>\n");
    copied(command);
    out.append(after.isEmpty() ? "" : "<p>" + text(after) + "</p>\n");
  }

  private void copied(String command) {
    out.append("<div class=\"copied\"><pre>").append(text(command));
    out.append("</pre><button type=\"button\" class=\"copy script\">Copy</button></div>\n");
  }

  private void footer() {
    out.append("<footer>\n<p>Made by</p>\n");
    copied(made.command());
    for (String line : made.lines()) {
      out.append("<p class=\"soft\">").append(text(line)).append("</p>\n");
    }
    if (!told.charts().isEmpty()) {
      out.append("<details class=\"screen\"><summary>Charts by uPlot; its licence</summary><pre>");
      out.append(HtmlPage.text(Parts.read("/uplot/LICENSE").strip()));
      out.append("</pre></details>\n");
    }
    out.append("</footer>\n");
  }
}

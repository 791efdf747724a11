package leat.paper;

import java.util.ArrayList;
import java.util.List;
import leat.html.HtmlPage;
import leat.html.Parts;

/** One printed side: a title, short tables and lists in two columns, a line at the foot. */
public final class CardPage {
  private final String title;
  private final PaperSize paper;
  private final List<String> under = new ArrayList<>();
  private final StringBuilder sections = new StringBuilder();
  private final List<String> foot = new ArrayList<>();

  /** A card of this title. */
  public CardPage(String title, PaperSize paper) {
    this.title = title;
    this.paper = paper;
  }

  /** A line at the foot. */
  public CardPage foot(String line) {
    foot.add(line);
    return this;
  }

  /** A table; the first column holds words or readings, the others numbers. */
  public CardPage table(String heading, String[] head, List<String[]> rows, String... below) {
    open("", heading);
    sections.append("<table>\n<thead><tr>");
    for (int i = 0; i < head.length; i++) {
      cell("th", head[i], i > 0 ? "number" : "");
    }
    sections.append("</tr></thead>\n<tbody>\n");
    for (String[] row : rows) {
      sections.append("<tr>");
      for (int i = 0; i < row.length; i++) {
        cell("td", row[i], i > 0 ? "number" : "reading");
      }
      sections.append("</tr>\n");
    }
    sections.append("</tbody>\n</table>\n");
    paragraphs(below);
    return close();
  }

  /** A table of words in two columns. */
  public CardPage words(String heading, List<String[]> rows) {
    open("", heading);
    sections.append("<table>\n<tbody>\n");
    for (String[] row : rows) {
      sections.append("<tr>");
      for (String word : row) {
        cell("td", word, "");
      }
      sections.append("</tr>\n");
    }
    sections.append("</tbody>\n</table>\n");
    return close();
  }

  /** Sentences. */
  public CardPage lines(String heading, List<String> lines) {
    open("", heading);
    paragraphs(lines.toArray(new String[0]));
    return close();
  }

  /** What somebody can be hurt by, in a frame. */
  public CardPage cautions(String heading, List<String> lines) {
    open(" class=\"care\"", heading);
    sections.append("<ul>\n");
    for (String line : lines) {
      sections.append("<li>").append(HtmlPage.text(line)).append("</li>\n");
    }
    sections.append("</ul>\n");
    return close();
  }

  private void open(String attributes, String heading) {
    sections.append("<section").append(attributes).append(">\n<h2>");
    sections.append(HtmlPage.text(heading)).append("</h2>\n");
  }

  private CardPage close() {
    sections.append("</section>\n");
    return this;
  }

  private void cell(String tag, String words, String kind) {
    sections.append('<').append(tag).append(kind.isEmpty() ? ">" : " class=\"" + kind + "\">");
    sections.append(HtmlPage.text(words)).append("</").append(tag).append('>');
  }

  private void paragraphs(String... lines) {
    for (String line : lines) {
      if (!line.isEmpty()) {
        sections.append("<p>").append(HtmlPage.text(line)).append("</p>\n");
      }
    }
  }

  /** The file. */
  public String write() {
    StringBuilder body = new StringBuilder("<header>\n<h1>");
    body.append(HtmlPage.text(title)).append("</h1>\n");
    for (String line : under) {
      body.append("<p>").append(HtmlPage.text(line)).append("</p>\n");
    }
    body.append("</header>\n<main class=\"columns\">\n").append(sections).append("</main>\n");
    body.append("<footer>\n");
    for (String line : foot) {
      body.append("<p>").append(HtmlPage.text(line)).append("</p>\n");
    }
    body.append("</footer>\n");
    return new HtmlPage(title)
        .style(paper.rule("9mm 10mm") + Parts.read("/leat/paper/card.css"))
        .body(body.toString())
        .write();
  }
}

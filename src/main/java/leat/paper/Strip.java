package leat.paper;

import java.util.ArrayList;
import java.util.List;
import leat.html.HtmlPage;
import leat.numeric.Impossible;

/**
 * A dipstick in true scale: a strip from the tank's floor to its rim, on as many sheets as it
 * needs, each an SVG whose unit is a millimetre. Sheets overlap; the strip is cut along its dashes
 * and joined where equal letters meet.
 */
public final class Strip {
  private static final double MARGIN = 14;
  private static final double LEFT = 14;
  private static final double WIDTH = 74;
  private static final double OVERLAP = 10;
  private static final double RULER = 100;
  private static final int MOST_SHEETS = 26;

  /** Words nearer than this run into each other, mm. */
  private static final double WORDS_APART = 3.4;

  /** Words nearer to a line across than this are left out, mm. */
  private static final double LINE_APART = 1.6;

  private static final String STYLE =
      """
      html { background: #fff; color: #000; color-scheme: only light; }
      body { margin: 0; }
      svg { display: block; break-after: page; font-family: system-ui, "DejaVu Sans", sans-serif; }
      svg:last-of-type { break-after: auto; }
      """;

  private final String title;
  private final PaperSize paper;
  private final double height;
  private final List<StripMark> marks;
  private final List<String> notes = new ArrayList<>();
  private final double room;
  private final int sheets;

  /**
   * @param title what the strip is of
   * @param paper the sheets
   * @param height of the rim over the floor, mm
   * @param marks all marks
   * @throws Impossible if it needs over 26 sheets
   */
  public Strip(String title, PaperSize paper, double height, List<StripMark> marks) {
    this.title = title;
    this.paper = paper;
    this.height = height;
    this.marks = marks;
    this.room = paper.height() - 2 * MARGIN;
    this.sheets = sheets();
  }

  private int sheets() {
    if (height <= room) {
      return 1;
    }
    double more = Math.ceil((height - room) / (room - OVERLAP) - 1e-9);
    if (more >= MOST_SHEETS) {
      throw new Impossible("height", "a strip has at most 26 sheets, about 6 m");
    }
    return 1 + (int) more;
  }

  /** Number of sheets. */
  public int size() {
    return sheets;
  }

  /** A line beside the strip. */
  public Strip note(String line) {
    notes.add(line);
    return this;
  }

  /** The file. */
  public String write() {
    StringBuilder body = new StringBuilder("<main>\n");
    for (int s = 0; s < sheets; s++) {
      sheet(body, s);
    }
    body.append("</main>\n");
    return new HtmlPage(title).style(paper.rule("0") + STYLE).body(body.toString()).write();
  }

  /** Height over the floor at the lower end of a sheet, mm. */
  private double bottom(int sheet) {
    return sheet * (room - OVERLAP);
  }

  private void sheet(StringBuilder out, int s) {
    double bottom = bottom(s);
    double top = Math.min(height, bottom + room);
    // a hair less than the page, so that rounding makes no empty page of it
    String size = Mm.of(paper.height() - 0.4);
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"");
    out.append(Mm.of(paper.width())).append("mm\" height=\"").append(size);
    out.append("mm\" viewBox=\"0 0 ").append(Mm.of(paper.width())).append(' ').append(size);
    out.append("\">\n<title>").append(HtmlPage.text(title)).append(", sheet ");
    out.append(s + 1).append(" of ").append(sheets).append("</title>\n");
    frame(out, y(bottom, top), y(bottom, bottom));
    marks(out, s, bottom, top);
    joins(out, s, bottom, top);
    beside(out, s);
    out.append("</svg>\n");
  }

  private double y(double bottom, double mm) {
    return paper.height() - MARGIN - (mm - bottom);
  }

  private static void frame(StringBuilder out, double top, double foot) {
    out.append("<rect class=\"cut\" x=\"").append(Mm.of(LEFT)).append("\" y=\"");
    out.append(Mm.of(top)).append("\" width=\"").append(Mm.of(WIDTH)).append("\" height=\"");
    out.append(Mm.of(foot - top));
    out.append(
        "\" fill=\"none\" stroke=\"#555\" stroke-width=\"0.2\" stroke-dasharray=\"2 1.5\"/>\n");
  }

  private void marks(StringBuilder out, int s, double bottom, double top) {
    double[] last = new double[StripMark.Kind.values().length];
    java.util.Arrays.fill(last, Double.NEGATIVE_INFINITY);
    for (StripMark mark : marks) {
      if (mark.mm() < bottom - 1e-9 || mark.mm() > top + 1e-9) {
        continue;
      }
      int kind = mark.kind().ordinal();
      boolean room = mark.mm() - last[kind] >= WORDS_APART && !isStruck(mark);
      draw(out, mark, y(bottom, mark.mm()), room);
      if (room && !mark.words().isEmpty()) {
        last[kind] = mark.mm();
      }
    }
  }

  /** Whether a line across would strike its words. */
  private boolean isStruck(StripMark mark) {
    for (StripMark other : marks) {
      boolean near = Math.abs(other.mm() - mark.mm()) < LINE_APART;
      if (near && other.kind() == StripMark.Kind.ACROSS) {
        return true;
      }
    }
    return false;
  }

  private static void draw(StringBuilder out, StripMark mark, double y, boolean worded) {
    double right = LEFT + WIDTH;
    switch (mark.kind()) {
      case VOLUME -> {
        line(out, "volume", LEFT, y, LEFT + 8, y, 0.25);
        words(out, mark, LEFT + 9, y, "start", worded);
      }
      case LEVEL -> {
        line(out, "level", right - 6, y, right, y, 0.25);
        words(out, mark, right - 7, y, "end", worded);
      }
      case TICK -> line(out, "tick", right - 3, y, right, y, 0.15);
      default -> {
        line(out, "across", LEFT, y, right, y, 0.6);
        text(out, LEFT + WIDTH / 2, y - 2, "middle", 2.7, mark.words());
      }
    }
  }

  private static void words(
      StringBuilder out, StripMark mark, double x, double y, String anchor, boolean worded) {
    if (worded) {
      text(out, x, y, anchor, 2.9, mark.words());
    }
  }

  private static void line(
      StringBuilder out, String kind, double x1, double y1, double x2, double y2, double wide) {
    out.append("<line class=\"").append(kind).append("\" x1=\"").append(Mm.of(x1));
    out.append("\" y1=\"").append(Mm.of(y1)).append("\" x2=\"").append(Mm.of(x2));
    out.append("\" y2=\"").append(Mm.of(y2)).append("\" stroke=\"#000\" stroke-width=\"");
    out.append(Mm.of(wide)).append("\"/>\n");
  }

  private static void text(
      StringBuilder out, double x, double y, String anchor, double size, String words) {
    if (words.isEmpty()) {
      return;
    }
    out.append("<text x=\"").append(Mm.of(x)).append("\" y=\"").append(Mm.of(y));
    out.append("\" font-size=\"").append(Mm.of(size)).append("\" text-anchor=\"").append(anchor);
    out.append("\" dominant-baseline=\"central\">").append(HtmlPage.text(words));
    out.append("</text>\n");
  }

  /** Where two sheets meet: the upper one is cut there and laid on the lower one's line. */
  private void joins(StringBuilder out, int s, double bottom, double top) {
    if (s > 0) {
      join(out, y(bottom, bottom + OVERLAP / 2), (char) ('A' + s - 1), "cut here, lay it on line ");
    }
    if (s < sheets - 1) {
      join(out, y(bottom, top - OVERLAP / 2), (char) ('A' + s), "the next sheet is laid on line ");
    }
  }

  private static void join(StringBuilder out, double y, char letter, String words) {
    line(out, "join", LEFT - 6, y, LEFT, y, 0.4);
    line(out, "join", LEFT + WIDTH, y, LEFT + WIDTH + 6, y, 0.4);
    text(out, LEFT - 7, y, "end", 3.2, String.valueOf(letter));
    text(out, LEFT + WIDTH + 8, y, "start", 3.2, words + letter);
  }

  /** Title, notes and the line that shows whether the printer keeps the scale. */
  private void beside(StringBuilder out, int s) {
    double x = paper.width() - MARGIN - RULER;
    double y = MARGIN + 20;
    text(out, x, y, "start", 4.4, shortened(title));
    text(out, x, y + 6, "start", 3.2, "Sheet " + (s + 1) + " of " + sheets + ", " + paper.word());
    for (int i = 0; i < notes.size(); i++) {
      text(out, x, y + 24 + 4.6 * i, "start", 3, notes.get(i));
    }
    double ruler = y + 14;
    out.append("<path class=\"ruler\" d=\"M").append(Mm.of(x)).append(' ').append(Mm.of(ruler));
    out.append("h").append(Mm.of(RULER)).append("\" stroke=\"#d00000\" stroke-width=\"0.6\"");
    out.append(" fill=\"none\"/>\n");
    text(
        out,
        x,
        ruler + 3.4,
        "start",
        3,
        "This line is 100 mm: print at 100 %, not fitted to the page.");
  }

  private static String shortened(String words) {
    int most = 44;
    return words.length() <= most ? words : words.substring(0, most - 3) + "...";
  }
}

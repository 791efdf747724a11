package leat.answer.chart;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.Visible;

/**
 * A chart in plain characters: each series has a sign of its own, so that nothing hangs on colour;
 * frames and bars are drawn with box characters where the terminal takes them.
 */
public final class TextChart {
  /** Columns where no width is known. */
  public static final int USUAL_WIDTH = 80;

  private static final int ROWS = 14;
  private static final int STEPS = 5;
  private static final String SIGNS = "*o+x#@%&";
  private static final String BANDS = ".,'";
  private static final String EVENTS = ":;!~";
  private static final char LIMIT = '-';
  private static final char MOMENT = '|';

  private final Chart chart;
  private final boolean us;
  private final int width;
  private final boolean boxes;
  private final StringBuilder out = new StringBuilder();
  private final List<String> legend = new ArrayList<>();

  private TextChart(Chart chart, boolean us, int width, boolean boxes) {
    this.chart = chart;
    this.us = us;
    this.width = width;
    this.boxes = boxes;
  }

  /**
   * The lines of a chart.
   *
   * @param chart what is drawn
   * @param us in US customary units
   * @param width of the lines, 0 for the usual
   * @param boxes whether box characters may be used
   */
  public static String of(Chart chart, boolean us, int width, boolean boxes) {
    int columns = width <= 0 ? USUAL_WIDTH : width;
    if (chart.isBars()) {
      return TextBars.of(chart, us, columns, boxes);
    }
    return new TextChart(chart, us, columns, boxes).write();
  }

  private String write() {
    out.append(Visible.of(chart.title())).append('\n');
    if (chart.isEmpty()) {
      return out.append("  nothing to draw\n").toString();
    }
    Scale up = Scale.up(chart, us, STEPS);
    Scale along = Scale.along(chart, us);
    Ticks left = Ticks.of(chart.y(), up, STEPS);
    int room = 0;
    for (String word : left.words) {
      room = Math.max(room, word.length());
    }
    int steps = Math.max(1, (int) Math.round((up.high() - up.low()) / up.step()));
    int rows = steps * Math.max(2, (ROWS + steps / 2) / steps) + 1;
    Canvas canvas = new Canvas(Math.max(10, width - room - 4), rows, along, up);
    fill(canvas);
    out.append("  ").append(chart.y().heading(us)).append('\n');
    for (int r = 0; r < rows; r++) {
      line(canvas, r, left, room);
    }
    below(canvas, along, room);
    legend();
    return out.toString();
  }

  private void fill(Canvas canvas) {
    List<Series> series = chart.series();
    int sign = 0;
    int band = 0;
    List<Character> signs = new ArrayList<>();
    for (Series one : series) {
      boolean flat = one.kind() == Series.Kind.BAND;
      signs.add(
          flat ? BANDS.charAt(band++ % BANDS.length()) : SIGNS.charAt(sign++ % SIGNS.length()));
    }
    for (int i = 0; i < series.size(); i++) {
      if (series.get(i).kind() == Series.Kind.BAND) {
        new Trace(chart, us, canvas).band(series.get(i), signs.get(i));
      }
    }
    for (int i = series.size() - 1; i >= 0; i--) {
      Series one = series.get(i);
      if (one.kind() == Series.Kind.POINTS) {
        new Trace(chart, us, canvas).points(one, signs.get(i));
      } else if (one.kind() != Series.Kind.BAND) {
        new Trace(chart, us, canvas).line(one, signs.get(i));
      }
    }
    for (int i = 0; i < series.size(); i++) {
      if (series.get(i).kind() == Series.Kind.POINTS) {
        new Trace(chart, us, canvas).points(series.get(i), signs.get(i));
      }
      legend.add(signs.get(i) + " " + series.get(i).label());
    }
    marks(canvas);
    events(canvas);
  }

  private void marks(Canvas canvas) {
    for (Mark mark : chart.marks()) {
      Axis axis = mark.across() ? chart.y() : chart.x();
      double at = axis.shown(mark.value(), us);
      char sign = mark.across() ? LIMIT : MOMENT;
      if (mark.across()) {
        int row = canvas.row(at);
        for (int c = 0; c < canvas.columns(); c++) {
          canvas.under(row, c, sign);
        }
      } else {
        for (int r = 0; r < canvas.rows(); r++) {
          canvas.under(r, canvas.column(at), sign);
        }
      }
      String symbol = axis.symbol(us);
      legend.add(
          sign + " " + mark.label() + " " + axis.text(at) + (symbol.isEmpty() ? "" : " " + symbol));
    }
  }

  private void events(Canvas canvas) {
    List<String> told = new ArrayList<>();
    for (Span event : chart.events()) {
      boolean first = !told.contains(event.label());
      if (first) {
        told.add(event.label());
      }
      char sign = EVENTS.charAt(told.indexOf(event.label()) % EVENTS.length());
      int from = canvas.column(chart.x().shown(event.from(), us));
      int to = canvas.column(chart.x().shown(event.to(), us));
      for (int c = from; c <= Math.max(from, to); c++) {
        for (int r = 0; r < canvas.rows(); r++) {
          canvas.under(r, c, sign);
        }
      }
      if (first) {
        legend.add(sign + " " + event.label());
      }
    }
  }

  private void line(Canvas canvas, int r, Ticks left, int room) {
    String word = "";
    for (int i = 0; i < left.at.size(); i++) {
      if (canvas.row(left.at.get(i)) == r) {
        word = left.words.get(i);
      }
    }
    String side = word.isEmpty() ? (boxes ? "\u2502" : "|") : (boxes ? "\u2524" : "+");
    out.append("  ").append(" ".repeat(room - word.length())).append(word).append(side);
    out.append(canvas.row(r));
    Canvas.endLine(out);
  }

  /** The axis along: a line, words below it, what it counts. */
  private void below(Canvas canvas, Scale along, int room) {
    String margin = " ".repeat(room + 2);
    Ticks ticks = Ticks.of(chart.x(), along, Math.max(2, canvas.columns() / 9));
    StringBuilder line = new StringBuilder((boxes ? "\u2500" : "-").repeat(canvas.columns()));
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < ticks.at.size(); i++) {
      int c = canvas.column(ticks.at.get(i));
      line.setCharAt(c, boxes ? '\u252c' : '+');
      String word = ticks.words.get(i);
      int start = Math.max(0, c - word.length() / 2);
      start = Math.min(start, Math.max(0, canvas.columns() + 1 - word.length()));
      if (start > 0 && words.length() > 0 && start < words.length() + 1) {
        continue;
      }
      words.append(" ".repeat(Math.max(0, start - words.length()))).append(word);
    }
    out.append(margin).append(boxes ? "\u2514" : "+").append(line).append('\n');
    out.append(margin).append(' ').append(words);
    Canvas.endLine(out);
    String heading = chart.x().heading(us);
    if (!heading.isEmpty()) {
      out.append(margin).append(' ').append(heading).append('\n');
    }
  }

  private void legend() {
    int used = 0;
    for (String entry : legend) {
      String word = Visible.of(entry);
      if (used > 0 && used + 3 + word.length() > width) {
        out.append('\n');
        used = 0;
      }
      out.append(used == 0 ? "  " : "   ").append(word);
      used += (used == 0 ? 2 : 3) + word.length();
    }
    out.append('\n');
  }
}

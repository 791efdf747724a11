package leat.answer.chart;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.Visible;

/** Bars by name in plain characters: a line a bar, its value or words behind it. */
final class TextBars {
  private static final int LONGEST_NAME = 26;
  private static final int LONGEST_WORDS = 28;
  private static final int LEAST_BAR = 16;
  private static final char[] SIGNS = {'#', '=', '-', '+'};
  private static final char[] BLOCKS = {'\u2588', '\u2593', '\u2592', '\u2591'};

  private final Chart chart;
  private final boolean us;
  private final int width;
  private final boolean boxes;
  private final StringBuilder out = new StringBuilder();
  private Scale scale;
  private int names;
  private int room;

  private TextBars(Chart chart, boolean us, int width, boolean boxes) {
    this.chart = chart;
    this.us = us;
    this.width = width;
    this.boxes = boxes;
  }

  static String of(Chart chart, boolean us, int width, boolean boxes) {
    return new TextBars(chart, us, width, boxes).write();
  }

  private char sign(int series) {
    char[] signs = boxes ? BLOCKS : SIGNS;
    return signs[series % signs.length];
  }

  private String write() {
    out.append(Visible.of(chart.title())).append('\n');
    if (chart.isEmpty()) {
      return out.append("  nothing to draw\n").toString();
    }
    scale = Scale.up(chart, us, 4);
    String[] all = chart.x().names();
    int words = 0;
    for (int i = 0; i < all.length; i++) {
      names = Math.max(names, name(all[i]).length());
      for (Series series : chart.series()) {
        words = Math.max(words, words(series, i).length());
      }
    }
    room = Math.max(LEAST_BAR, width - names - words - 5);
    for (int i = 0; i < all.length; i++) {
      boolean first = true;
      for (int s = 0; s < chart.series().size(); s++) {
        if (!Double.isNaN(chart.series().get(s).y()[i])) {
          line(first ? name(all[i]) : "", chart.series().get(s), i, sign(s));
          first = false;
        }
      }
      if (first) {
        line(name(all[i]), null, i, ' ');
      }
    }
    axis();
    legend();
    return out.toString();
  }

  private static String name(String name) {
    String shown = Visible.of(name);
    return shown.length() <= LONGEST_NAME ? shown : shown.substring(0, LONGEST_NAME - 2) + "..";
  }

  private String words(Series series, int i) {
    if (Double.isNaN(series.y()[i])) {
      return "";
    }
    String said = series.said(i, us);
    if (said.isEmpty()) {
      String symbol = chart.y().symbol(us);
      said = chart.y().text(chart.y().shown(series.y()[i], us));
      said = symbol.isEmpty() ? said : said + " " + symbol;
    }
    String shown = Visible.of(said);
    return shown.length() <= LONGEST_WORDS ? shown : shown.substring(0, LONGEST_WORDS - 2) + "..";
  }

  private int at(double shown) {
    return (int) Math.round(Math.max(0, Math.min(1, scale.share(shown))) * room);
  }

  private void line(String name, Series series, int i, char sign) {
    char[] bar = new char[room + 1];
    java.util.Arrays.fill(bar, ' ');
    for (Mark mark : chart.marks()) {
      if (mark.across()) {
        bar[at(chart.y().shown(mark.value(), us))] = '|';
      }
    }
    if (series != null) {
      double low = series.hasLow() ? chart.y().shown(series.low()[i], us) : 0;
      double high = chart.y().shown(series.y()[i], us);
      int from = Math.min(at(low), at(high));
      int to = Math.max(at(low), at(high));
      for (int c = from; c < Math.max(to, low == high ? from : from + 1); c++) {
        bar[c] = sign;
      }
    }
    out.append("  ").append(name).append(" ".repeat(names - name.length() + 1)).append(bar);
    out.append(' ').append(series == null ? "-" : words(series, i));
    Canvas.endLine(out);
  }

  private void axis() {
    Ticks ticks = Ticks.of(chart.y(), scale, Math.max(2, room / 10));
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < ticks.at.size(); i++) {
      String word = ticks.words.get(i);
      int start = Math.max(0, at(ticks.at.get(i)) - word.length() / 2);
      if (words.length() == 0 || start > words.length()) {
        words.append(" ".repeat(start - words.length())).append(word);
      }
    }
    out.append(" ".repeat(names + 3)).append(words);
    Canvas.endLine(out);
    out.append(" ".repeat(names + 3)).append(chart.y().heading(us));
    Canvas.endLine(out);
  }

  private void legend() {
    List<String> entries = new ArrayList<>();
    for (int s = 0; s < chart.series().size(); s++) {
      if (chart.series().size() > 1) {
        entries.add(sign(s) + " " + chart.series().get(s).label());
      }
    }
    for (Mark mark : chart.marks()) {
      if (mark.across()) {
        entries.add("| " + mark.label());
      }
    }
    if (!entries.isEmpty()) {
      out.append("  ").append(Visible.of(String.join("   ", entries))).append('\n');
    }
  }
}

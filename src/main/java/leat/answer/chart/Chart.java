package leat.answer.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.chart.Series.Kind;

/**
 * What is drawn: series over two axes, marks and events. It draws nothing; text and page read it.
 */
public final class Chart {
  private final String title;
  private final Axis x;
  private final Axis y;
  private final List<Series> series = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final List<Span> events = new ArrayList<>();

  private Chart(String title, Axis x, Axis y) {
    this.title = title;
    this.x = x;
    this.y = y;
  }

  /** An empty chart: one sentence of what it shows, and its axes. */
  public static Chart of(String title, Axis x, Axis y) {
    return new Chart(title, x, y);
  }

  private Chart add(Kind kind, String label, double[] xs, double[] lows, double[] ys, Phrase[] w) {
    series.add(new Series(kind, label, xs, lows, ys, w, ""));
    return this;
  }

  /** Values joined by lines. */
  public Chart line(String label, double[] xs, double[] ys) {
    return add(Kind.LINE, label, xs, null, ys, null);
  }

  /** Values that hold until the next. */
  public Chart steps(String label, double[] xs, double[] ys) {
    return add(Kind.STEPS, label, xs, null, ys, null);
  }

  /** Values alone, each with words or none. */
  public Chart points(String label, double[] xs, double[] ys, Phrase... words) {
    return add(Kind.POINTS, label, xs, null, ys, words.length == 0 ? null : words);
  }

  /** What lies between two lines; bands come first, under all else. */
  public Chart band(String label, double[] xs, double[] lows, double[] highs) {
    int at = 0;
    while (at < series.size() && series.get(at).kind() == Kind.BAND) {
      at++;
    }
    series.add(at, new Series(Kind.BAND, label, xs, lows, highs, null, ""));
    return this;
  }

  /** A bar for each name of the x axis, from 0; NaN for none. */
  public Chart bars(String label, double[] values, Phrase... words) {
    return add(Kind.BARS, label, places(), null, values, words.length == 0 ? null : words);
  }

  /** A bar for each name of the x axis, between two values. */
  public Chart bars(String label, double[] from, double[] to, Phrase... words) {
    return add(Kind.BARS, label, places(), from, to, words.length == 0 ? null : words);
  }

  /** The tone of the last series that is no band: good, doubt or bad. */
  public Chart tone(String tone) {
    int last = series.size() - 1;
    series.set(last, series.get(last).in(tone));
    return this;
  }

  private double[] places() {
    double[] places = new double[x.names().length];
    for (int i = 0; i < places.length; i++) {
      places[i] = i;
    }
    return places;
  }

  /** A limit: a line at a value of y. */
  public Chart limit(String label, double value) {
    marks.add(new Mark(label, value, true));
    return this;
  }

  /** A line at a place of x. */
  public Chart mark(String label, double place) {
    marks.add(new Mark(label, place, false));
    return this;
  }

  /** An event from a place of x to another. */
  public Chart event(String label, double from, double to) {
    events.add(new Span(label, from, to));
    return this;
  }

  /** What it shows. */
  public String title() {
    return title;
  }

  /** The axis along. */
  public Axis x() {
    return x;
  }

  /** The axis up. */
  public Axis y() {
    return y;
  }

  /** What is drawn, in order. */
  public List<Series> series() {
    return Collections.unmodifiableList(series);
  }

  /** Limits and moments. */
  public List<Mark> marks() {
    return Collections.unmodifiableList(marks);
  }

  /** Events. */
  public List<Span> events() {
    return Collections.unmodifiableList(events);
  }

  /** Whether it has bars by name. */
  public boolean isBars() {
    return x.isNames();
  }

  /** Whether there is any number to draw. */
  public boolean isEmpty() {
    for (Series one : series) {
      for (double value : one.y()) {
        if (!Double.isNaN(value)) {
          return false;
        }
      }
    }
    return true;
  }
}

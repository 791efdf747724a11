package leat.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.answer.chart.Chart;
import leat.answer.chart.Series;

/**
 * Several series over one list of places: the plotting library wants as many values of each. Values
 * at one place share a line of the table; a series with two values at one place has a second line.
 */
final class Aligned {
  private record Spot(double x, int series, int index) {}

  private final List<Series> series;
  private final List<Double> places = new ArrayList<>();
  private final List<int[]> rows = new ArrayList<>();

  private Aligned(List<Series> series) {
    this.series = series;
  }

  static Aligned of(List<Series> series) {
    Aligned aligned = new Aligned(series);
    List<Spot> spots = new ArrayList<>();
    for (int s = 0; s < series.size(); s++) {
      for (int i = 0; i < series.get(s).size(); i++) {
        spots.add(new Spot(series.get(s).x()[i], s, i));
      }
    }
    spots.sort(Comparator.comparingDouble(Spot::x));
    for (Spot spot : spots) {
      aligned.put(spot);
    }
    return aligned;
  }

  private void put(Spot spot) {
    int at = rows.size() - 1;
    while (at >= 0 && places.get(at) == spot.x() && rows.get(at)[spot.series()] < 0) {
      at--;
    }
    if (at == rows.size() - 1) {
      int[] row = new int[series.size()];
      java.util.Arrays.fill(row, -1);
      places.add(spot.x());
      rows.add(row);
    }
    rows.get(at + 1)[spot.series()] = spot.index();
  }

  /** A place. */
  double place(int row) {
    return places.get(row);
  }

  /** Which value of a series lies there; -1 for none. */
  int index(int row, int ofSeries) {
    return rows.get(row)[ofSeries];
  }

  /** Number of places. */
  int size() {
    return rows.size();
  }

  /** {@code "data":[places, values of each series (low ends first)], "words":[...]}. */
  void write(ChartData data, Chart chart) {
    StringBuilder out = data.out();
    out.append("\"data\":[\n[");
    for (int i = 0; i < places.size(); i++) {
      out.append(i == 0 ? "" : ",");
      data.number(chart.x().shown(places.get(i), data.us()));
    }
    out.append(']');
    for (int s = 0; s < series.size(); s++) {
      if (series.get(s).hasLow()) {
        values(data, chart, s, series.get(s).low());
      }
      values(data, chart, s, series.get(s).y());
    }
    out.append("],\n\"words\":[");
    for (int s = 0; s < series.size(); s++) {
      out.append(s == 0 ? "" : ",");
      words(data, s);
    }
    out.append(']');
  }

  /** A place where a series has no value is left out (undefined to the script), a gap is null. */
  private void values(ChartData data, Chart chart, int s, double[] values) {
    StringBuilder out = data.out();
    out.append(",\n[");
    for (int r = 0; r < rows.size(); r++) {
      out.append(r == 0 ? "" : ",");
      int i = rows.get(r)[s];
      if (i < 0) {
        out.append("\"\"");
      } else {
        data.number(chart.y().shown(values[i], data.us()));
      }
    }
    out.append(']');
  }

  private void words(ChartData data, int s) {
    if (series.get(s).words() == null) {
      data.out().append("null");
      return;
    }
    String[] words = new String[rows.size()];
    for (int r = 0; r < words.length; r++) {
      int i = rows.get(r)[s];
      words[r] = i < 0 ? "" : series.get(s).said(i, data.us());
    }
    data.words(words);
  }
}

package leat.answer.chart;

/** One series on a canvas. */
final class Trace {
  private final Chart chart;
  private final boolean us;
  private final Canvas canvas;

  Trace(Chart chart, boolean us, Canvas canvas) {
    this.chart = chart;
    this.us = us;
    this.canvas = canvas;
  }

  private double x(Series series, int i) {
    return chart.x().shown(series.x()[i], us);
  }

  private double shown(double value) {
    return chart.y().shown(value, us);
  }

  void points(Series series, char sign) {
    for (int i = 0; i < series.size(); i++) {
      double y = shown(series.y()[i]);
      if (!Double.isNaN(y)) {
        canvas.put(canvas.row(y), canvas.column(x(series, i)), sign);
      }
    }
  }

  /** A line or steps: in each column the stretch from its least to its greatest value. */
  void line(Series series, char sign) {
    points(series, sign);
    boolean steps = series.kind() == Series.Kind.STEPS;
    for (int i = 1; i < series.size(); i++) {
      double from = shown(series.y()[i - 1]);
      double to = shown(series.y()[i]);
      if (!Double.isNaN(from) && !Double.isNaN(to)) {
        int a = canvas.column(x(series, i - 1));
        int b = canvas.column(x(series, i));
        for (int c = a; c < b; c++) {
          double left = steps ? from : between(from, to, c - 0.5, a, b);
          double right = steps ? from : between(from, to, c + 0.5, a, b);
          canvas.stretch(c, left, right, sign);
        }
        canvas.stretch(b, steps ? from : between(from, to, b - 0.5, a, b), to, sign);
      }
    }
  }

  private static double between(double from, double to, double at, int a, int b) {
    double share = b == a ? 1 : Math.max(0, Math.min(1, (at - a) / (b - a)));
    return from + (to - from) * share;
  }

  void band(Series series, char sign) {
    for (int i = 0; i < series.size(); i++) {
      double low = shown(series.low()[i]);
      double high = shown(series.y()[i]);
      int next = i + 1 < series.size() ? i + 1 : i;
      if (!Double.isNaN(low) && !Double.isNaN(high)) {
        int a = canvas.column(x(series, i));
        int b = Math.max(a + 1, canvas.column(x(series, next)));
        double nextLow = orElse(shown(series.low()[next]), low);
        double nextHigh = orElse(shown(series.y()[next]), high);
        for (int c = a; c < b; c++) {
          canvas.stretch(c, between(low, nextLow, c, a, b), between(high, nextHigh, c, a, b), sign);
        }
      }
    }
  }

  private static double orElse(double value, double otherwise) {
    return Double.isNaN(value) ? otherwise : value;
  }
}

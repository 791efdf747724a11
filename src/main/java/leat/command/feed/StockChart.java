package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;

/** How much of what cold water can hold each salt of a bottle takes. */
final class StockChart {
  private StockChart() {}

  static Chart of(Answer rows) {
    List<String> names = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (int r = 0; r < rows.size(); r++) {
      Object share = rows.row(r).get(StockRows.SHARE);
      names.add(rows.row(r).get(StockRows.BOTTLE) + ": " + rows.row(r).get(StockRows.SALT));
      shares.add(share == null ? Double.NaN : (Double) share);
    }
    double[] values = new double[shares.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = shares.get(i);
    }
    return Chart.of(
            "Share of what the cold bottle can hold",
            Axis.names("salt", names.toArray(new String[0])),
            Axis.of("of what dissolves", Show.PERCENT))
        .bars("share", values)
        .limit("settles out", 1);
  }
}

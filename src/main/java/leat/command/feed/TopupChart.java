package leat.command.feed;

import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;

/** What is drained and what is poured. */
final class TopupChart {
  private TopupChart() {}

  static Chart of(Row row) {
    double feed = value(row.get(TopupColumns.FEED));
    double[] litres = {
      value(row.get(TopupColumns.DRAIN)), value(row.get(TopupColumns.WATER)), feed
    };
    Phrase[] words = {null, null, Double.isNaN(feed) ? null : Phrase.of(feed, Show.ML)};
    return Chart.of(
            "What to drain and what to pour",
            Axis.names("what", "drain", "plain water", "feed"),
            Axis.of("volume", Show.L))
        .bars("volume", litres, words);
  }

  private static double value(Object value) {
    return value == null ? Double.NaN : (Double) value;
  }
}

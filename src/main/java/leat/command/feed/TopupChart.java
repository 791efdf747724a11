package leat.command.feed;

import leat.answer.Answer;
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

  /** The same where salts are weighed: water here, grams in a chart of their own. */
  static Chart water(Row row) {
    double[] litres = {value(row.get(TopupColumns.DRAIN)), value(row.get(TopupColumns.WATER))};
    return Chart.of(
            "What to drain and what to pour",
            Axis.names("what", "drain", "plain water"),
            Axis.of("volume", Show.L))
        .bars("volume", litres);
  }

  static Chart salts(Answer salts) {
    String[] names = new String[salts.size()];
    double[] grams = new double[names.length];
    for (int i = 0; i < names.length; i++) {
      names[i] = (String) salts.row(i).get(TopupSaltColumns.SALT);
      grams[i] = value(salts.row(i).get(TopupSaltColumns.GRAMS));
    }
    return Chart.of("What to weigh", Axis.names("salt", names), Axis.of("weigh", SaltGrams.SHOW))
        .bars("weigh", grams);
  }

  private static double value(Object value) {
    return value == null ? Double.NaN : (Double) value;
  }
}

package leat.answer;

import leat.answer.chart.Chart;
import leat.answer.chart.TextChart;

/** The charts of an answer in plain characters, one under the other. */
final class TextCharts {
  private TextCharts() {}

  static String of(Answer answer, boolean us, int width, boolean boxes) {
    StringBuilder out = new StringBuilder();
    for (Chart chart : answer.charts) {
      out.append('\n').append(TextChart.of(chart, us, width, boxes));
    }
    if (answer.charts.isEmpty()) {
      return "No chart: this answer has no numbers to draw.\n";
    }
    return out.append('\n').toString();
  }
}

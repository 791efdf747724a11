package leat.html;

import java.util.ArrayList;
import java.util.List;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.answer.chart.Mark;
import leat.answer.chart.Scale;
import leat.answer.chart.Series;
import leat.answer.chart.Span;
import leat.answer.chart.Thinned;
import leat.quantity.JsonText;
import leat.quantity.NumberText;

/**
 * The charts of a page as JSON for its script: axes with their ends, and one aligned table of
 * values, the places first, as the plotting library wants it.
 */
final class ChartData {
  /** Values of a series that a picture can show; longer ones are thinned. */
  static final int MOST = 4000;

  private final boolean us;
  private final BarePaths paths;
  private final StringBuilder out = new StringBuilder();

  ChartData(boolean us, BarePaths paths) {
    this.us = us;
    this.paths = paths;
  }

  String of(List<Chart> charts) {
    out.append('[');
    for (int i = 0; i < charts.size(); i++) {
      out.append(i == 0 ? "\n" : ",\n");
      chart(charts.get(i));
    }
    return out.append("\n]").toString();
  }

  private void chart(Chart chart) {
    out.append('{');
    axis("x", chart.x(), Scale.along(chart, us));
    axis("y", chart.y(), Scale.up(chart, us, 5));
    List<Series> series = new ArrayList<>();
    for (Series one : chart.series()) {
      series.add(Thinned.of(one, MOST));
    }
    out.append("\n\"series\":[");
    for (int i = 0; i < series.size(); i++) {
      Series one = series.get(i);
      out.append(i == 0 ? "{" : ",{");
      field("label", one.label());
      field("kind", one.kind().word());
      field("tone", one.tone());
      out.append("\"low\":").append(one.hasLow()).append('}');
    }
    out.append("],\n\"marks\":[");
    for (int i = 0; i < chart.marks().size(); i++) {
      Mark mark = chart.marks().get(i);
      out.append(i == 0 ? "{" : ",{");
      field("label", mark.label());
      out.append("\"across\":").append(mark.across()).append(",\"at\":");
      number((mark.across() ? chart.y() : chart.x()).shown(mark.value(), us));
      out.append('}');
    }
    out.append("],\n\"events\":[");
    for (int i = 0; i < chart.events().size(); i++) {
      Span event = chart.events().get(i);
      out.append(i == 0 ? "{" : ",{");
      field("label", event.label());
      out.append("\"from\":");
      number(chart.x().shown(event.from(), us));
      out.append(",\"to\":");
      number(chart.x().shown(event.to(), us));
      out.append('}');
    }
    out.append("],\n");
    Aligned.of(series).write(this, chart);
    out.append('}');
  }

  private void axis(String name, Axis axis, Scale scale) {
    out.append('"').append(name).append("\":{");
    field("label", axis.label());
    field("unit", axis.symbol(us));
    out.append("\"time\":").append(axis.isTime()).append(",\"digits\":").append(axis.digits());
    if (axis.isNames()) {
      out.append(",\"names\":");
      words(axis.names());
    }
    out.append(",\"min\":");
    number(scale.low());
    out.append(",\"max\":");
    number(scale.high());
    out.append(",\"step\":");
    number(scale.step());
    out.append("},\n");
  }

  void words(String[] words) {
    out.append('[');
    for (int i = 0; i < words.length; i++) {
      out.append(i == 0 ? "" : ",").append(JsonText.string(paths.of(words[i])));
    }
    out.append(']');
  }

  private void field(String key, String value) {
    out.append('"').append(key).append("\":").append(JsonText.string(paths.of(value))).append(',');
  }

  StringBuilder out() {
    return out;
  }

  boolean us() {
    return us;
  }

  void number(double shown) {
    out.append(Double.isNaN(shown) ? "null" : NumberText.shortest(shown));
  }
}

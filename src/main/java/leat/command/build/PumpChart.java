package leat.command.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.hydraulics.Derate;
import leat.hydraulics.ManifoldFlow;
import leat.system.PumpPicture;
import leat.system.Waterway;

/** The pump's curve and that of the risers, which meet at the flow that runs. */
final class PumpChart {
  private PumpChart() {}

  static Chart of(Waterway way, double[] levels, String[] names) {
    Chart chart =
        Chart.of(
            "Pump and risers: they meet at the flow that runs",
            Axis.of("flow of all towers", Show.L_MIN),
            Axis.of("head", Show.M));
    pump(chart, way);
    for (int l = levels.length - 1; l >= 0; l--) {
      PumpPicture.Curve risers = PumpPicture.ofRisers(way, levels[l]);
      chart.line("risers, tank " + names[l], risers.flows(), risers.heads());
    }
    points(chart, way, levels, names);
    band(chart, way);
    return chart;
  }

  private static void pump(Chart chart, Waterway way) {
    PumpPicture.Curve printed = PumpPicture.of(way.printed());
    PumpPicture.Curve pump = PumpPicture.of(way.curve());
    if (way.believed().kind() == Derate.Kind.NOT_NAMED) {
      chart.line("pump as printed", printed.flows(), printed.heads());
    } else {
      chart.line("pump as believed", pump.flows(), pump.heads());
      chart.line("pump as printed", printed.flows(), printed.heads());
    }
  }

  private static void points(Chart chart, Waterway way, double[] levels, String[] names) {
    double[] flows = new double[levels.length];
    double[] heads = new double[levels.length];
    Phrase[] words = new Phrase[levels.length];
    for (int l = 0; l < levels.length; l++) {
      int at = levels.length - 1 - l;
      ManifoldFlow flow = way.flows(levels[l]);
      flows[l] = flow.totalFlow();
      heads[l] = flow.pumpHead();
      words[l] =
          Phrase.of("tank " + names[l] + ": ")
              .add(flows[l], Show.L_MIN)
              .add(at < 0 ? "" : " in all");
    }
    chart.points("runs here", flows, heads, words);
  }

  private static void band(Chart chart, Waterway way) {
    PumpPicture.Doubt doubt = PumpPicture.doubt(way.believed());
    if (doubt == null) {
      return;
    }
    PumpPicture.Curve low = PumpPicture.of(way.printed().derated(doubt.low()));
    PumpPicture.Curve high = PumpPicture.of(way.printed().derated(doubt.high()));
    boolean told = way.believed().kind() == Derate.Kind.MEASURED;
    chart.band(
        told ? "doubt of the watch" : "70 % to all of the print",
        low.flows(),
        low.heads(),
        high.heads());
  }
}

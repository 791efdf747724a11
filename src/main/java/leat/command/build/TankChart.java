package leat.command.build;

import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.level.Tank;
import leat.plan.Section;
import leat.system.TankPicture;

/** A tank's litres over its height, with its marks and the levels asked for. */
final class TankChart {
  private TankChart() {}

  static Chart of(Tank tank, Section section, double[] levels, double[] volumes) {
    Chart chart =
        Chart.of(
            "Litres over the height of the tank",
            Axis.of("level", Show.MM),
            Axis.of("in the tank", Show.L));
    double[] all = TankPicture.levels(tank);
    chart.line("holds", all, TankPicture.volumes(tank, all));
    if (levels.length > 0) {
      chart.points("asked", levels, volumes);
    }
    mark(chart, "full", section.maybe("full"));
    mark(chart, "refill mark", section.maybe("low"));
    mark(chart, "overflow", section.maybe("rim_overflow"));
    return chart;
  }

  private static void mark(Chart chart, String word, Double level) {
    if (level != null) {
      chart.mark(word, level);
    }
  }
}

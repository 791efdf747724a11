package leat.command.build;

import leat.answer.Answer;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.level.Tank;
import leat.plan.Section;
import leat.system.TankPicture;

/** A tank's litres over its height, with its marks and the levels asked for. */
final class TankChart {
  private TankChart() {}

  static Chart of(Answer answer, Tank tank, Section section, boolean asked) {
    Chart chart =
        Chart.of(
            "Litres over the height of the tank",
            Axis.of("level", Show.MM),
            Axis.of("in the tank", Show.L));
    double[] all = TankPicture.levels(tank);
    chart.line("holds", all, TankPicture.volumes(tank, all));
    if (asked) {
      asked(chart, answer);
    }
    mark(chart, "full", section.maybe("full"));
    mark(chart, "refill mark", section.maybe("low"));
    mark(chart, "overflow", section.maybe("rim_overflow"));
    return chart;
  }

  /** The levels of the answer's rows. */
  private static void asked(Chart chart, Answer answer) {
    double[] levels = new double[answer.size()];
    double[] volumes = new double[levels.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (Double) answer.row(i).get(TankCommand.LEVEL);
      volumes[i] = (Double) answer.row(i).get(TankCommand.VOLUME);
    }
    chart.points("asked", levels, volumes);
  }

  private static void mark(Chart chart, String word, Double level) {
    if (level != null) {
      chart.mark(word, level);
    }
  }
}

package leat.command.build;

import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.stability.Equilibrium;
import leat.stability.Situation;
import leat.system.StandingOf;
import leat.system.StandingPicture;

/** The safety factor against tipping as the tank fills, with grown and with young plants. */
final class WindChart {
  private WindChart() {}

  static Chart of(StandingOf standing, double pressure) {
    double[] volumes = StandingPicture.volumes(standing);
    Chart chart =
        Chart.of(
            "Safety against tipping in the site's gust, as the tank fills",
            Axis.of("solution in the tank", Show.L),
            Axis.number("safety factor", 3));
    plants(chart, standing, volumes, pressure);
    chart.fromZero().limit("wanted", Equilibrium.LEAST_SAFETY);
    for (Situation state : standing.states()) {
      chart.mark(state.word(), state.volume());
    }
    return chart;
  }

  private static void plants(Chart chart, StandingOf standing, double[] volumes, double pressure) {
    chart.line(
        "plants grown",
        volumes,
        StandingPicture.safety(standing, volumes, Situation.GROWN, pressure));
    chart.line(
        "plants young",
        volumes,
        StandingPicture.safety(standing, volumes, Situation.YOUNG, pressure));
  }
}

package leat.command.sense;

import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Staircase;

/** The sender's staircase, rising and falling, and what a reading says. */
final class LevelChart {
  private LevelChart() {}

  static Chart of(Staircase stairs, Reading reading) {
    Chart chart =
        Chart.of(
            "Steps of the sender",
            Axis.of("in the tank", Show.L),
            Axis.of("reading", LevelColumns.OHM));
    steps(chart, "rising", stairs, Motion.RISING);
    steps(chart, "falling", stairs, Motion.FALLING);
    if (reading != null && reading.hasBand()) {
      chart.event("this reading", reading.volumeLow(), reading.volumeHigh());
      if (reading.hasOhm() && !Double.isInfinite(reading.ohm())) {
        chart.limit("reading", reading.ohm());
      }
    }
    return chart;
  }

  private static void steps(Chart chart, String label, Staircase stairs, Motion motion) {
    int n = stairs.size();
    double[] volumes = new double[n + 1];
    double[] ohms = new double[n + 1];
    for (int i = 0; i < n; i++) {
      volumes[i] = stairs.volumeLow(i, motion);
      ohms[i] = stairs.ohm(i);
    }
    volumes[n] = stairs.capacity();
    ohms[n] = ohms[n - 1];
    chart.steps(label, volumes, ohms);
  }
}

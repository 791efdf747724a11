package leat.command.run;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.quantity.Units;
import leat.season.AwayOutcome;
import leat.season.DayRow;
import leat.season.EcBand;
import leat.season.Money;
import leat.season.SeasonRun;
import leat.season.YearRuns;
import leat.system.SeasonOf;

/** The season's litres, EC and money, day by day. */
final class SeasonChart {
  private final SeasonOf season;
  private final YearRuns runs;
  private final List<DayRow> rows;
  private final double[] days;

  SeasonChart(SeasonOf season, YearRuns runs, SeasonRun run) {
    this.season = season;
    this.runs = runs;
    this.rows = run.days();
    this.days = Axis.days(season.from(), rows.size());
  }

  void draw(Answer answer, Money money, String currency) {
    answer.chart(litres()).chart(ec());
    Chart cost = cost(money, currency);
    if (!cost.isEmpty()) {
      answer.chart(cost);
    }
  }

  private Chart litres() {
    Chart chart = Chart.of("Water in the tank", Axis.time("day"), Axis.of("in the tank", Show.L));
    double[] evening = new double[days.length];
    double[] least = new double[days.length];
    for (int t = 0; t < days.length; t++) {
      evening[t] = Units.L.toBase(rows.get(t).volumeL());
      least[t] = Units.L.toBase(rows.get(t).lowL());
    }
    chart.line("in the evening", days, evening).line("least of the day", days, least);
    chart.limit("full", Units.L.toBase(season.tank().marks().fullL()));
    chart.limit("refill mark", Units.L.toBase(season.tank().marks().lowL()));
    return events(chart);
  }

  private Chart ec() {
    Chart chart = Chart.of("EC of the solution", Axis.time("day"), Axis.of("EC", Show.MS_CM));
    double[] ec = new double[days.length];
    double[] low = new double[days.length];
    double[] high = new double[days.length];
    EcBand band = season.tank().band();
    for (int t = 0; t < days.length; t++) {
      ec[t] = rows.get(t).ecMsCm();
      low[t] = band.lowMsCm();
      high[t] = band.highMsCm();
    }
    chart.line("EC in the evening", days, ec);
    if (!Double.isInfinite(band.highMsCm())) {
      chart.band("wanted", days, low, high);
    }
    return events(chart);
  }

  private Chart cost(Money money, String currency) {
    Chart chart =
        Chart.of(
            "Money spent, with first fill and seed",
            Axis.time("day"),
            Axis.number(currency == null ? "money" : currency, 3));
    double[] sums = new double[days.length];
    double sum = or0(money.first()) + or0(money.seed());
    for (int t = 0; t < days.length; t++) {
      sum += or0(money.of(rows.get(t), rows.get(t).day()));
      sums[t] = sum;
    }
    boolean any = !Double.isNaN(money.season(runs.totals()));
    return any ? chart.line("spent", days, sums) : chart;
  }

  private static double or0(double value) {
    return Double.isNaN(value) ? 0 : value;
  }

  /** Times away, and days on which it ran dry. */
  private Chart events(Chart chart) {
    AwayOutcome[] away = season.away(runs);
    for (int i = 0; i < away.length; i++) {
      chart.event("away", days[away[i].span().first()], days[away[i].span().last()]);
    }
    int dry = -1;
    for (int t = 0; t <= days.length; t++) {
      boolean is = t < days.length && rows.get(t).dry();
      if (!is && dry >= 0) {
        chart.event("dry", days[dry], days[t - 1]);
      }
      dry = is ? Math.max(dry, dry < 0 ? t : dry) : -1;
    }
    return chart;
  }
}

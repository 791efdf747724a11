package leat.command.sense;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import leat.answer.Answer;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.log.LogEvent;
import leat.log.LogReport;
import leat.log.LogRow;
import leat.log.RowSink;

/**
 * The log as it was read: the band of the level and the EC, events shaded. Of rows that say the
 * same only the first and the last are kept, so that a year of them is small.
 */
final class LogChart implements RowSink {
  private static final int FIRST_ROOM = 512;

  /** A growing list of moments with a band. */
  private static final class Trail {
    long[] times = new long[FIRST_ROOM];
    double[] lows = new double[FIRST_ROOM];
    double[] highs = new double[FIRST_ROOM];
    int n;

    /** The last two say the same: the end of that stretch moves on. */
    void add(long time, double low, double high) {
      if (n > 1 && same(n - 1, low, high) && same(n - 2, low, high)) {
        times[n - 1] = time;
        return;
      }
      if (n == times.length) {
        times = Arrays.copyOf(times, n + n);
        lows = Arrays.copyOf(lows, n + n);
        highs = Arrays.copyOf(highs, n + n);
      }
      times[n] = time;
      lows[n] = low;
      highs[n] = high;
      n++;
    }

    private boolean same(int i, double low, double high) {
      return Double.compare(lows[i], low) == 0 && Double.compare(highs[i], high) == 0;
    }

    double[] places(ZoneId zone) {
      double[] places = new double[n];
      for (int i = 0; i < n; i++) {
        places[i] = place(times[i], zone);
      }
      return places;
    }
  }

  private final Trail level = new Trail();
  private final Trail ec = new Trail();

  private static double place(long millis, ZoneId zone) {
    return Axis.at(LocalDateTime.ofInstant(Instant.ofEpochMilli(millis), zone));
  }

  @Override
  public void row(LogRow row, double volume, double low, double high) {
    level.add(row.time, low, high);
    if (!Double.isNaN(row.ec)) {
      ec.add(row.time, row.ec, row.ec);
    }
  }

  void draw(Answer answer, LogReport report, ZoneId zone) {
    if (report.hasVolume()) {
      double[] places = level.places(zone);
      double[] lows = Arrays.copyOf(level.lows, level.n);
      double[] highs = Arrays.copyOf(level.highs, level.n);
      Chart chart =
          Chart.of("Water in the tank", Axis.time("time"), Axis.of("in the tank", Show.L))
              .band("between", places, lows, highs)
              .steps("at least", places, lows)
              .steps("at most", places, highs);
      answer.chart(events(chart, report, zone));
    }
    if (ec.n > 0) {
      Chart chart =
          Chart.of("EC of the solution", Axis.time("time"), Axis.of("EC", Show.MS_CM))
              .line("EC", ec.places(zone), Arrays.copyOf(ec.lows, ec.n));
      answer.chart(events(chart, report, zone));
    }
  }

  private static Chart events(Chart chart, LogReport report, ZoneId zone) {
    for (LogEvent event : report.events()) {
      chart.event(event.kind().word(), place(event.start(), zone), place(event.end(), zone));
    }
    return chart;
  }
}

package leat.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Days of a season put together: flows summed, the last evening's volume and salt, the least of the
 * lowest.
 *
 * @param first its first date in the season
 * @param last its last date in the season
 * @param rows the days it holds
 * @param sum the days as one: its day is the first's, its service none
 * @param counts how often what happened
 */
public record Period(
    LocalDate first, LocalDate last, List<DayRow> rows, DayRow sum, Totals.Counts counts) {

  /** Weeks that begin on Monday. */
  public static List<Period> weeks(List<DayRow> rows, LocalDate seasonStart) {
    return by(rows, seasonStart, true);
  }

  /** Calendar months. */
  public static List<Period> months(List<DayRow> rows, LocalDate seasonStart) {
    return by(rows, seasonStart, false);
  }

  private static List<Period> by(List<DayRow> rows, LocalDate start, boolean weekly) {
    List<Period> periods = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= rows.size(); i++) {
      if (i == rows.size() || begins(start.plusDays(rows.get(i).day()), weekly)) {
        periods.add(of(new ArrayList<>(rows.subList(from, i)), start));
        from = i;
      }
    }
    return periods;
  }

  private static boolean begins(LocalDate date, boolean weekly) {
    return weekly ? date.getDayOfWeek() == DayOfWeek.MONDAY : date.getDayOfMonth() == 1;
  }

  private static Period of(List<DayRow> rows, LocalDate start) {
    DayRow first = rows.get(0);
    DayRow last = rows.get(rows.size() - 1);
    double[] sums = new double[7];
    double low = Double.POSITIVE_INFINITY;
    int[] n = new int[7];
    for (DayRow row : rows) {
      double[] flows = {
        row.rainL(),
        row.overflowL(),
        row.useL(),
        row.shortL(),
        row.drainedL(),
        row.waterL(),
        row.concentrateMl()
      };
      for (int i = 0; i < flows.length; i++) {
        sums[i] += flows[i];
      }
      low = Math.min(low, row.lowL());
      count(n, row);
    }
    DayRow sum =
        new DayRow(
            first.day(),
            sums[0],
            sums[1],
            sums[2],
            sums[3],
            low,
            sums[4],
            sums[5],
            sums[6],
            last.volumeL(),
            last.saltMsCmL(),
            n[4] > 0,
            n[5] > 0,
            n[6] > 0,
            Service.NONE);
    return new Period(
        start.plusDays(first.day()),
        start.plusDays(last.day()),
        rows,
        sum,
        new Totals.Counts(n[0], n[1], n[2], n[3], n[4], n[5], n[6]));
  }

  private static void count(int[] n, DayRow row) {
    n[0] += row.service() == Service.TOP_UP ? 1 : 0;
    n[1] += row.service() == Service.DOSE ? 1 : 0;
    n[2] += row.service() == Service.DILUTE ? 1 : 0;
    n[3] += row.service() == Service.CHANGE ? 1 : 0;
    n[4] += row.overflowed() ? 1 : 0;
    n[5] += row.dry() ? 1 : 0;
    n[6] += row.awayDry() ? 1 : 0;
  }
}

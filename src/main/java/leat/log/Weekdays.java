package leat.log;

import java.util.Arrays;
import java.util.List;

/**
 * Use of the sure days by weekday.
 *
 * <p>Source: counting by the calendar.
 */
final class Weekdays {
  private static final int WEEK = 7;

  /** 1970-01-01 was a Thursday, the fourth day from Monday. */
  private static final int FIRST_WEEKDAY = 3;

  private Weekdays() {}

  /** Mean use of each weekday, Monday first; null where there is no sure day. */
  static UseMean[] means(List<LogDay> days) {
    UseMean[] all = new UseMean[WEEK];
    for (int w = 0; w < WEEK; w++) {
      double[] uses = uses(days, w);
      all[w] = uses.length == 0 ? null : UseMean.of(uses);
    }
    return all;
  }

  static boolean differs(List<LogDay> days, int weekday, int least) {
    double[] uses = uses(days, weekday);
    return uses.length > 0 && UseMean.of(uses(days, -1)).differs(UseMean.of(uses), least);
  }

  /** Uses of the sure days of a weekday; of all for -1. */
  private static double[] uses(List<LogDay> days, int weekday) {
    double[] uses = new double[days.size()];
    int n = 0;
    for (LogDay day : days) {
      int w = (int) Math.floorMod(day.date() + FIRST_WEEKDAY, (long) WEEK);
      if (day.isSure() && (weekday < 0 || w == weekday)) {
        uses[n++] = day.used();
      }
    }
    return Arrays.copyOf(uses, n);
  }
}

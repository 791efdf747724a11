package leat.energy;

import java.util.Arrays;

/**
 * One timing of a timetable held against the least run and the longest rest, by day and by night.
 * By day binds when the timing is in force at any second of the day.
 *
 * <p>Source: sheet energy.md section 3.
 *
 * @param entry number of the timing in its timetable, from 0
 * @param timing the timing
 * @param dayS seconds it is in force by day in the period, s
 * @param nightS seconds it is in force by night in the period, s
 * @param leastRunS the least run, s
 * @param runCovers whether its run is that long, or it never rests
 * @param byDay whether the day's rest applies (else the night's)
 * @param longestRestS the longest rest that applies, s
 * @param restBound what that rest follows from
 * @param restWithin whether its rest is no longer
 */
public record EntryBounds(
    int entry,
    Timing timing,
    double dayS,
    double nightS,
    double leastRunS,
    boolean runCovers,
    boolean byDay,
    double longestRestS,
    LongestRest.Bound restBound,
    boolean restWithin) {

  /**
   * All timings of a timetable that are in force in a period.
   *
   * @param timetable the timings
   * @param dates the period
   * @param night the hours of night, see {@link DryLimit#usualNight}
   * @param leastRun the least run
   * @param day the longest rest by day
   * @param atNight the longest rest by night
   * @return one verdict a timing in force, in their order
   */
  public static EntryBounds[] of(
      Timetable timetable,
      Dates dates,
      Window night,
      LeastRun leastRun,
      LongestRest day,
      LongestRest atNight) {
    Overlap overlap = Overlap.of(dates, timetable.windows(), Windows.dayAndNight(night));
    EntryBounds[] all = new EntryBounds[timetable.size()];
    int n = 0;
    for (int i = 0; i < all.length; i++) {
      double dayS = overlap.seconds(i, 0);
      double nightS = overlap.seconds(i, 1);
      if (dayS + nightS > 0) {
        all[n++] =
            judge(
                i, timetable.timing(i), dayS, nightS, leastRun, dayS > 0, dayS > 0 ? day : atNight);
      }
    }
    return Arrays.copyOf(all, n);
  }

  private static EntryBounds judge(
      int entry,
      Timing timing,
      double dayS,
      double nightS,
      LeastRun least,
      boolean byDay,
      LongestRest rest) {
    return new EntryBounds(
        entry,
        timing,
        dayS,
        nightS,
        least.seconds(),
        least.coveredBy(timing),
        byDay,
        rest.seconds(),
        rest.bound(),
        rest.allows(timing));
  }
}

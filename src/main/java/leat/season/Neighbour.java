package leat.season;

import java.util.Arrays;

/**
 * The fewest evenings on which somebody must fill the tank so that away never dries it: always the
 * last evening that is not too late.
 *
 * <p>Source: reruns. Each fill brings the same volume, so putting a visit off as long as possible
 * never needs more visits; a test tries all sets of days. Where the hottest day drinks more than
 * lies between low mark and intake the days found still carry it, but fewer may do.
 */
public final class Neighbour {
  private Neighbour() {}

  /**
   * The evenings.
   *
   * @param plan the tank
   * @param days the days, with those away
   * @param thirst factor on all thirst, -
   * @return days counted from 0, rising; a day on which the owner is at home is a fill before
   *     leaving or after coming back. Empty when none is needed; null when the tank does not even
   *     carry from one evening to the next
   */
  public static int[] days(TankPlan plan, SeasonDays days, double thirst) {
    int[] visits = new int[days.length()];
    int n = 0;
    SeasonDays visited = days;
    while (true) { // each visit lies after the last: no day before it has changed
      int dry = Season.totals(plan, visited, thirst).firstAwayDry();
      if (dry < 0) {
        return Arrays.copyOf(visits, n);
      }
      int evening = dry - 1;
      if (evening < 0 || fills(visited.attendance(evening))) {
        return null;
      }
      visited = visited.filledOn(evening);
      visits[n++] = evening;
    }
  }

  private static boolean fills(Attendance who) {
    return who == Attendance.NEIGHBOUR || who == Attendance.FILLS;
  }
}

package leat.season;

import java.util.List;

/**
 * Days between two services in a row; the first fill, on day -1, is one.
 *
 * @param days from one evening to the next
 * @param from the earlier evening's day
 * @param to the later evening's day, or the season's last when nobody serves any more
 */
public record ServiceGap(int days, int from, int to) {
  /** The longest time that the tank was left alone; the season's close counts as an end. */
  public static ServiceGap longest(List<DayRow> rows) {
    ServiceGap most = null;
    int from = -1;
    int last = rows.get(rows.size() - 1).day();
    for (DayRow row : rows) {
      if (row.service() != Service.NONE || row.day() == last) {
        int gap = row.day() - from;
        most = most == null || gap > most.days ? new ServiceGap(gap, from, row.day()) : most;
        from = row.day();
      }
    }
    return most;
  }

  /** The shortest time between two services; null when there is only the first fill. */
  public static ServiceGap shortest(List<DayRow> rows) {
    ServiceGap least = null;
    int from = -1;
    for (DayRow row : rows) {
      if (row.service() != Service.NONE) {
        int gap = row.day() - from;
        least = least == null || gap < least.days ? new ServiceGap(gap, from, row.day()) : least;
        from = row.day();
      }
    }
    return least;
  }
}

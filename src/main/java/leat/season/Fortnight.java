package leat.season;

import java.util.List;

/**
 * The busiest fourteen days: those with the most thirst (the earliest of equals).
 *
 * <p>Source: none; a running sum.
 *
 * @param first its first day, counted from 0
 * @param days how many days: fewer than 14 in a shorter season
 * @param thirstL what plants and open water asked for, L
 * @param waterL water poured in it, L
 * @param services evenings with a service in it
 */
public record Fortnight(int first, int days, double thirstL, double waterL, int services) {
  /** Days of it, in a season that has as many. */
  public static final int DAYS = 14;

  /** The busiest of a season's rows. */
  public static Fortnight busiest(List<DayRow> rows) {
    int n = Math.min(DAYS, rows.size());
    Fortnight most = null;
    for (int first = 0; first + n <= rows.size(); first++) {
      Fortnight one = at(rows, first, n);
      most = most == null || one.thirstL > most.thirstL + Machine.SPARE ? one : most;
    }
    return most;
  }

  private static Fortnight at(List<DayRow> rows, int first, int n) {
    double thirst = 0;
    double water = 0;
    int services = 0;
    for (DayRow row : rows.subList(first, first + n)) {
      thirst += row.thirstL();
      water += row.waterL();
      services += row.service() == Service.NONE ? 0 : 1;
    }
    return new Fortnight(first, n, thirst, water, services);
  }

  /**
   * Days that a can lasts in it; infinite when nothing is drunk.
   *
   * @param canL litres of the can, L
   * @return days, d
   */
  public double daysACan(double canL) {
    return canL * days / thirstL;
  }
}

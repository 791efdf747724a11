package leat.log;

import leat.numeric.Impossible;

/**
 * Mean and scatter of the use of some days, with its 80 % interval m -/+ 1.2816 s/sqrt(n).
 *
 * <p>Source: sheet log.md section 5; check values log-forecast.csv.
 *
 * @param n days, -
 * @param mean mean use of a day, m3
 * @param sd standard deviation of a day (n - 1), m3
 */
public record UseMean(int n, double mean, double sd) {
  /**
   * Of some days.
   *
   * @param uses use of each day, m3
   * @throws Impossible if there is none
   */
  public static UseMean of(double... uses) {
    if (uses.length == 0) {
      throw new Impossible("use", "a mean needs a day");
    }
    double sum = 0;
    for (int i = 0; i < uses.length; i++) {
      sum += uses[i];
    }
    double mean = sum / uses.length;
    double squares = 0;
    for (int i = 0; i < uses.length; i++) {
      squares += (uses[i] - mean) * (uses[i] - mean);
    }
    double sd = uses.length > 1 ? Math.sqrt(squares / (uses.length - 1)) : 0;
    return new UseMean(uses.length, mean, sd);
  }

  /** Low end of the interval of the mean, m3, not below 0. */
  public double low() {
    return Math.max(0, mean - DaysLeft.Z * sd / Math.sqrt(n));
  }

  /** High end of it, m3. */
  public double high() {
    return mean + DaysLeft.Z * sd / Math.sqrt(n);
  }

  /**
   * Whether a weekday differs from all days by more than 2 s/sqrt(n).
   *
   * @param weekday the days of one weekday
   * @param least days of it that are needed, -
   */
  public boolean differs(UseMean weekday, int least) {
    return weekday.n >= least && Math.abs(weekday.mean - mean) > 2 * sd / Math.sqrt(weekday.n);
  }
}

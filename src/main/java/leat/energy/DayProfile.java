package leat.energy;

import java.time.LocalDate;
import java.time.ZoneId;

/**
 * One local day in 24 hours of the clock's face, for a picture of a line: how much of each hour the
 * pump runs, and what energy costs in it. The hour a spring day lacks has 0 seconds, the hour an
 * autumn day repeats has 7200.
 *
 * <p>Source: sheet energy.md section 2 (a regrouping of the same stretches; each sum over the day
 * equals that of {@link Bill}).
 *
 * @param seconds length of each hour, s: 3600, 0 where it is missing, 7200 where it comes twice
 * @param share share of each hour the pump runs, 0 to 1; 0 where the hour is missing
 * @param pricePerJ mean price of each hour, money per J; 0 where the hour is missing
 * @param timing the timing longest in force in each hour; -1 where the hour is missing
 * @param band the price longest in force in each hour; -1 where the hour is missing
 */
public record DayProfile(
    double[] seconds, double[] share, double[] pricePerJ, int[] timing, int[] band) {
  private static final int HOURS = 24;
  private static final int HOUR_S = 3600;

  /** The profile of one local day. */
  public static DayProfile of(Timetable timetable, Tariff tariff, LocalDate date, ZoneId zone) {
    double[][] timingS = new double[HOURS][timetable.size()];
    double[][] bandS = new double[HOURS][tariff.size()];
    Stretches stretches =
        new Stretches(new Dates(date, date, zone), hourly(timetable.windows(), tariff.windows()));
    while (stretches.next()) {
      int hour = stretches.secondOfDay() / HOUR_S;
      timingS[hour][stretches.inForce(timetable.windows())] += stretches.seconds();
      bandS[hour][stretches.inForce(tariff.windows())] += stretches.seconds();
    }
    return new DayProfile(
        sums(timingS),
        shares(timingS, timetable),
        prices(bandS, tariff),
        longest(timingS),
        longest(bandS));
  }

  private static int[] hourly(Windows timings, Windows bands) {
    int[] borders = Windows.borders(timings, bands);
    int[] all = new int[borders.length + HOURS];
    System.arraycopy(borders, 0, all, 0, borders.length);
    for (int h = 0; h < HOURS; h++) {
      all[borders.length + h] = h * HOUR_S;
    }
    return Windows.rising(all);
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += values[i];
    }
    return sum;
  }

  private static double[] sums(double[][] hours) {
    double[] sums = new double[HOURS];
    for (int h = 0; h < HOURS; h++) {
      sums[h] = sum(hours[h]);
    }
    return sums;
  }

  private static double[] shares(double[][] hours, Timetable timetable) {
    double[] shares = new double[HOURS];
    for (int h = 0; h < HOURS; h++) {
      double all = sum(hours[h]);
      for (int i = 0; i < hours[h].length && all > 0; i++) {
        shares[h] += timetable.timing(i).share() * hours[h][i] / all;
      }
    }
    return shares;
  }

  private static double[] prices(double[][] hours, Tariff tariff) {
    double[] prices = new double[HOURS];
    for (int h = 0; h < HOURS; h++) {
      double all = sum(hours[h]);
      for (int k = 0; k < hours[h].length && all > 0; k++) {
        prices[h] += tariff.pricePerJ(k) * hours[h][k] / all;
      }
    }
    return prices;
  }

  private static int[] longest(double[][] hours) {
    int[] longest = new int[HOURS];
    for (int h = 0; h < HOURS; h++) {
      longest[h] = -1;
      double most = 0;
      for (int i = 0; i < hours[h].length; i++) {
        if (hours[h][i] > most) {
          most = hours[h][i];
          longest[h] = i;
        }
      }
    }
    return longest;
  }

  /**
   * The day's prices as 24 characters: {@code marks.charAt(band)} of the price longest in force, a
   * blank where the hour is missing; bands beyond the marks share the last one.
   *
   * @param marks one character a price, such as "abcdefgh"
   */
  public String priceLine(String marks) {
    return line(band, marks);
  }

  /** The day's timings as 24 characters, as {@link #priceLine} does for prices. */
  public String timingLine(String marks) {
    return line(timing, marks);
  }

  private String line(int[] entries, String marks) {
    char[] line = new char[HOURS];
    for (int h = 0; h < HOURS; h++) {
      line[h] = entries[h] < 0 ? ' ' : marks.charAt(Math.min(entries[h], marks.length() - 1));
    }
    return new String(line);
  }
}

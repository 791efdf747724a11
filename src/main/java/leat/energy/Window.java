package leat.energy;

import leat.numeric.Impossible;

/**
 * A window of the local wall clock, [from, to): from after to wraps midnight, from equal to to is
 * the whole day. Months and weekdays are those of the moment's own local date, also inside a
 * wrapped window: Saturday 02:00 is Saturday. Holidays are not known.
 *
 * <p>Source: sheet energy.md section 2, check values energy-tariff.csv.
 *
 * @param fromS first second of the day, s since 00:00 on the clock's face, 0 to 86399
 * @param toS the second at which it ends, 0 to 86400 (86400 is 24:00)
 * @param months bit m set for month m, 1 to 12
 * @param weekdays bit d set for weekday d, 1 Monday to 7 Sunday
 */
public record Window(int fromS, int toS, int months, int weekdays) {
  private static final int DAY_S = 86_400;
  private static final int MONTHS = 12;
  private static final int WEEKDAYS = 7;
  private static final int EVERY_MONTH = ((1 << MONTHS) - 1) << 1;
  private static final int EVERY_WEEKDAY = ((1 << WEEKDAYS) - 1) << 1;

  /**
   * @throws Impossible if a time is not of the clock's face, or no month or no weekday is left
   */
  public Window {
    if (fromS < 0 || fromS >= DAY_S) {
      throw new Impossible("from", "a window begins between 00:00 and 23:59:59");
    }
    if (toS < 0 || toS > DAY_S) {
      throw new Impossible("to", "a window ends between 00:00 and 24:00");
    }
    if (months == 0 || (months & ~EVERY_MONTH) != 0) {
      throw new Impossible("months", "a window needs at least one month, each of 1 to 12");
    }
    if (weekdays == 0 || (weekdays & ~EVERY_WEEKDAY) != 0) {
      throw new Impossible(
          "days", "a window needs at least one weekday, each of 1 (Monday) to 7 (Sunday)");
    }
  }

  /** Every second of the year: the window of a default. */
  public static Window always() {
    return new Window(0, 0, EVERY_MONTH, EVERY_WEEKDAY);
  }

  /**
   * Every day between two times of the clock.
   *
   * @param fromS first second, s since 00:00
   * @param toS end, s since 00:00, not included
   * @return the window
   * @throws Impossible if a time is not of the clock's face
   */
  public static Window between(int fromS, int toS) {
    return new Window(fromS, toS, EVERY_MONTH, EVERY_WEEKDAY);
  }

  /** This window in the months listed, each 1 to 12. */
  public Window monthList(int... list) {
    return new Window(fromS, toS, list("months", list, MONTHS), weekdays);
  }

  /** This window on the weekdays listed, each 1 (Monday) to 7 (Sunday). */
  public Window weekdayList(int... list) {
    return new Window(fromS, toS, months, list("days", list, WEEKDAYS));
  }

  private static int list(String quantity, int[] list, int most) {
    int bits = 0;
    for (int i = 0; i < list.length; i++) {
      bits |= bit(quantity, list[i], most);
    }
    return bits;
  }

  private static int bit(String quantity, int number, int most) {
    if (number < 1 || number > most) {
      throw new Impossible(
          quantity,
          most == MONTHS ? "a month is 1 to 12" : "a weekday is 1 (Monday) to 7 (Sunday)");
    }
    return 1 << number;
  }

  /** Whether this window is every second of the year. */
  public boolean isAlways() {
    return months == EVERY_MONTH && weekdays == EVERY_WEEKDAY && wholeDay();
  }

  /** Whether this window is the same on every day of the year. */
  public boolean isEveryDay() {
    return months == EVERY_MONTH && weekdays == EVERY_WEEKDAY;
  }

  private boolean wholeDay() {
    return fromS == toS || (fromS == 0 && toS == DAY_S);
  }

  /**
   * Whether a moment of the local wall clock lies inside.
   *
   * @param secondOfDay s since 00:00 on the clock's face, 0 to 86399
   * @param month 1 to 12
   * @param weekday 1 Monday to 7 Sunday
   */
  public boolean contains(int secondOfDay, int month, int weekday) {
    if ((months >> month & 1) == 0 || (weekdays >> weekday & 1) == 0) {
      return false;
    }
    if (wholeDay()) {
      return true;
    }
    if (fromS < toS) {
      return secondOfDay >= fromS && secondOfDay < toS;
    }
    return secondOfDay >= fromS || secondOfDay < toS;
  }
}

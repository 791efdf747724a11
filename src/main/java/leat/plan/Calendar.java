package leat.plan;

import java.time.LocalDate;

/**
 * Reads dates and times of day by hand: the parsers of java.time cost a plan command a tenth of its
 * start.
 */
final class Calendar {
  private Calendar() {}

  static LocalDate date(String typed) {
    if (typed.length() != 10 || typed.charAt(4) != '-' || typed.charAt(7) != '-') {
      throw PlanErrors.notADate(typed);
    }
    int year = digits(typed, 0, 4);
    int month = digits(typed, 5, 7);
    int day = digits(typed, 8, 10);
    if (year < 1900 || month < 1 || month > 12 || day < 1) {
      throw PlanErrors.notADate(typed);
    }
    LocalDate first = LocalDate.of(year, month, 1);
    if (day > first.lengthOfMonth()) {
      throw PlanErrors.noSuchDay(typed, first.lengthOfMonth());
    }
    return first.withDayOfMonth(day);
  }

  /** Minutes since midnight; 24:00 is 1440. */
  static int clock(String typed, boolean quoted) {
    int colon = typed.indexOf(':');
    int minutes = -1;
    if (colon > 0 && colon < 3 && typed.length() == colon + 3) {
      int h = digits(typed, 0, colon);
      int m = digits(typed, colon + 1, typed.length());
      if (h >= 0 && m >= 0 && m < 60 && (h < 24 || h == 24 && m == 0)) {
        minutes = 60 * h + m;
      }
    }
    if (minutes < 0) {
      throw PlanErrors.notAClock(typed);
    }
    if (!quoted) {
      throw PlanErrors.quoteTheClock(typed);
    }
    return minutes;
  }

  private static int digits(String text, int start, int end) {
    int value = 0;
    for (int i = start; i < end; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      value = 10 * value + (c - '0');
    }
    return value;
  }
}

package leat.quantity;

import java.time.LocalDate;

/** Dates as a reader of English says them, whatever the locale. */
public final class DateWords {
  private static final String[] MONTHS = {
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December"
  };

  private DateWords() {}

  /** "April". */
  public static String month(int number) {
    return MONTHS[number - 1];
  }

  /** "Apr". */
  public static String shortMonth(int number) {
    return month(number).substring(0, 3);
  }

  /** "10 Jul". */
  public static String day(LocalDate date) {
    return date.getDayOfMonth() + " " + shortMonth(date.getMonthValue());
  }

  /** "10 Jul to 2 Aug", or one day. */
  public static String span(LocalDate first, LocalDate last) {
    return first.equals(last) ? day(first) : day(first) + " to " + day(last);
  }
}

package leat.quantity;

import java.time.LocalDate;
import java.util.List;

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

  /** All twelve. */
  public static List<String> months() {
    return List.of(MONTHS);
  }

  /** "Apr". */
  public static String shortMonth(int number) {
    return month(number).substring(0, 3);
  }

  /**
   * The month of a name such as "July", "jul" or "SEPT".
   *
   * @return 1 to 12; 0 when no month, or more than one, begins so
   */
  public static int monthOf(String name) {
    int found = 0;
    for (int i = 0; i < MONTHS.length; i++) {
      if (name.length() >= 3 && MONTHS[i].regionMatches(true, 0, name, 0, name.length())) {
        found = i + 1;
      }
    }
    return found;
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

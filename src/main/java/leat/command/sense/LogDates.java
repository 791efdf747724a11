package leat.command.sense;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import leat.quantity.DateWords;

/**
 * Moments and dates of a log in words and as ISO 8601, in the zone of the plan. Written by hand:
 * the library's formatters take longer to load than a log takes to read.
 */
final class LogDates {
  private static final int WEEK = 7;
  private static final String[] WEEKDAYS = {
    "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"
  };

  private final ZoneId zone;

  LogDates(ZoneId zone) {
    this.zone = zone;
  }

  private ZonedDateTime at(long millis) {
    return Instant.ofEpochMilli(millis).atZone(zone);
  }

  /** 2027-06-04T18:30:00+02:00. */
  String iso(long millis) {
    ZonedDateTime t = at(millis);
    StringBuilder out = new StringBuilder(25).append(t.toLocalDate()).append('T');
    two(two(two(out, t.getHour()).append(':'), t.getMinute()).append(':'), t.getSecond());
    ZoneOffset offset = t.getOffset();
    return out.append(offset.getTotalSeconds() == 0 ? "+00:00" : offset.getId()).toString();
  }

  private static StringBuilder two(StringBuilder out, int n) {
    return out.append(n < 10 ? "0" : "").append(n);
  }

  /** 2027-06-04. */
  static String date(long day) {
    return LocalDate.ofEpochDay(day).toString();
  }

  /** 4 June 18:30. */
  String moment(long millis) {
    return day(at(millis).toLocalDate()) + " " + clock(millis);
  }

  /** 4 June 18:30 to 24 June 18:30, with the years when there are two. */
  String span(long first, long last) {
    int from = at(first).getYear();
    int to = at(last).getYear();
    if (from == to) {
      return moment(first) + " to " + moment(last);
    }
    return day(at(first).toLocalDate())
        + " "
        + from
        + " to "
        + day(at(last).toLocalDate())
        + " "
        + to;
  }

  /** 18:30. */
  String clock(long millis) {
    ZonedDateTime t = at(millis);
    StringBuilder out = new StringBuilder(5);
    return two(two(out, t.getHour()).append(':'), t.getMinute()).toString();
  }

  /** The second of two moments: its clock alone on the same day. */
  String until(long start, long end) {
    return at(start).toLocalDate().equals(at(end).toLocalDate()) ? clock(end) : moment(end);
  }

  /** "today"; "on Friday" within the week from now, else "on Friday 30 June". */
  String weekday(long day, long now) {
    LocalDate date = LocalDate.ofEpochDay(day);
    long ahead = day - at(now).toLocalDate().toEpochDay();
    String name = "on " + weekday(date.getDayOfWeek().getValue());
    return ahead == 0
        ? "today"
        : ahead == 1 ? "tomorrow" : ahead < WEEK ? name : name + " " + day(date);
  }

  /** Monday is 1. */
  static String weekday(int number) {
    return WEEKDAYS[number - 1];
  }

  private static String day(LocalDate date) {
    return date.getDayOfMonth() + " " + DateWords.month(date.getMonthValue());
  }

  /** 4 June. */
  static String day(long day) {
    return day(LocalDate.ofEpochDay(day));
  }
}

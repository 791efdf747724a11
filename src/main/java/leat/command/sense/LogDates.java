package leat.command.sense;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Moments and dates of a log in words and as ISO 8601, in the zone of the plan. */
final class LogDates {
  private static final DateTimeFormatter ISO = DateTimeFormatter.ISO_OFFSET_DATE_TIME;
  private static final int WEEK = 7;

  private final ZoneId zone;

  LogDates(ZoneId zone) {
    this.zone = zone;
  }

  private ZonedDateTime at(long millis) {
    return Instant.ofEpochMilli(millis).atZone(zone).truncatedTo(ChronoUnit.SECONDS);
  }

  /** 2027-06-04T18:30:00+02:00. */
  String iso(long millis) {
    return ISO.format(at(millis));
  }

  /** 2027-06-04. */
  static String date(long day) {
    return LocalDate.ofEpochDay(day).toString();
  }

  /** 4 June 18:30. */
  String moment(long millis) {
    return day(at(millis).toLocalDate()) + " " + clock(millis);
  }

  /** 18:30. */
  String clock(long millis) {
    return at(millis).toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString();
  }

  /** The second of two moments: its clock alone on the same day. */
  String until(long start, long end) {
    return at(start).toLocalDate().equals(at(end).toLocalDate()) ? clock(end) : moment(end);
  }

  /** Friday for a day within the week from now, else Friday 30 June. */
  String weekday(long day, long now) {
    LocalDate date = LocalDate.ofEpochDay(day);
    LocalDate today = at(now).toLocalDate();
    String name = weekday(date.getDayOfWeek().getValue());
    long ahead = ChronoUnit.DAYS.between(today, date);
    return ahead == 0 ? "today" : ahead < WEEK ? name : name + " " + day(date);
  }

  /** Monday is 1. */
  static String weekday(int number) {
    return java.time.DayOfWeek.of(number).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static String day(LocalDate date) {
    return date.getDayOfMonth()
        + " "
        + date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** 4 June. */
  static String day(long day) {
    return day(LocalDate.ofEpochDay(day));
  }
}

package leat.energy;

import java.time.LocalDate;
import java.time.ZoneId;
import leat.numeric.Impossible;

/**
 * A period of whole local days in a time zone. A local day begins at the first instant of its date,
 * which is not 00:00 where the clock jumps over midnight; it lasts 23, 24 or 25 hours, or 23.5 and
 * 24.5 in a zone that shifts by half an hour.
 *
 * <p>Source: {@code java.time.LocalDate.atStartOfDay(ZoneId)}; sheet energy.md section 2, check
 * values energy-tariff.csv.
 *
 * @param from first day
 * @param to last day, included
 * @param zone time zone of the wall clock
 */
public record Dates(LocalDate from, LocalDate to, ZoneId zone) {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2999;

  /**
   * @throws Impossible if it ends before it starts, lies outside the years 1900 to 2999, is longer
   *     than 100 years, or is a day that its zone skipped
   */
  public Dates {
    if (to.isBefore(from)) {
      throw new Impossible("period", "it ends before it starts");
    }
    if (from.getYear() < FIRST_YEAR || to.getYear() > LAST_YEAR) {
      throw new Impossible("period", "it must lie in the years 1900 to 2999");
    }
    if (to.toEpochDay() - from.toEpochDay() >= Accepted.MOST_DAYS) {
      throw new Impossible("period", "it cannot be longer than 100 years");
    }
    if (start(from, zone) == start(to.plusDays(1), zone)) {
      throw new Impossible("period", "that day was skipped in this time zone");
    }
  }

  /**
   * So many days from a first one.
   *
   * @param from first day
   * @param days number of days, 1 or more
   * @param zone time zone of the wall clock
   * @return the period
   * @throws Impossible if there is no day in it
   */
  public static Dates of(LocalDate from, int days, ZoneId zone) {
    if (days < 1) {
      throw new Impossible("days", "a period has at least one day");
    }
    return new Dates(from, from.plusDays(days - 1L), zone);
  }

  private static long start(LocalDate date, ZoneId zone) {
    return date.atStartOfDay(zone).toEpochSecond();
  }

  /** Calendar days, both ends counted. */
  public long days() {
    return to.toEpochDay() - from.toEpochDay() + 1;
  }

  /** First instant, s since 1970-01-01T00:00Z. */
  long startEpochS() {
    return start(from, zone);
  }

  /** First instant after the period, s since 1970-01-01T00:00Z. */
  long endEpochS() {
    return start(to.plusDays(1), zone);
  }

  /** Length, s: not a multiple of 86400 when the clock changes within. */
  public long seconds() {
    return endEpochS() - startEpochS();
  }
}

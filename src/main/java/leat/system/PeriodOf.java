package leat.system;

import java.time.LocalDate;
import leat.energy.Dates;
import leat.energy.Tariff;
import leat.energy.Timetable;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;

/**
 * The period that energy and money are counted over: so many days, or the dates of a season. Time
 * zones are loaded only when dates are asked for in one, because that is slow.
 */
public final class PeriodOf {
  private static final int YEAR = 365;

  private final double days;
  private final Dates dates;

  private PeriodOf(double days, Dates dates) {
    this.days = days;
    this.dates = dates;
  }

  /**
   * The period of a plan.
   *
   * @param plan whose season and time zone count
   * @param days number of days instead, or null
   * @param typed the days as typed
   * @param byClock whether timing or price changes by the clock, so that dates are needed
   * @param byDate whether they change by month or weekday, so that any dates will not do
   * @param taken notes the defaults that are taken
   */
  public static PeriodOf of(
      Plan plan, Double days, String typed, boolean byClock, boolean byDate, Taken taken) {
    Section season = plan.section("season");
    LocalDate from = (LocalDate) season.raw("from");
    if (days == null && (from != null || season.has("to"))) {
      LocalDate first = (LocalDate) season.needRaw("from");
      return of(ZoneOf.dates(plan, first, (LocalDate) season.needRaw("to"), taken));
    }
    if (days == null) {
      taken.note("a year of 365 days");
    }
    double length = days == null ? YEAR : days;
    if (!byClock) {
      return new PeriodOf(length, null);
    }
    if (length != Math.rint(length) || length < 1 || length > Integer.MAX_VALUE) {
      throw new Refused(DutyErrors.wholeDays(typed));
    }
    if (from == null && byDate) {
      throw season.missing("from");
    }
    if (from == null) {
      taken.note("days of 24 h");
      return of(ZoneOf.anyDays((int) length));
    }
    return of(ZoneOf.days(plan, from, (int) length, taken));
  }

  /** The same for a timetable and a tariff, which say whether dates are needed. */
  public static PeriodOf of(
      Plan plan, Timetable timetable, Tariff tariff, Double days, String typed, Taken taken) {
    boolean byClock = timetable.size() > 1 || tariff.size() > 1;
    boolean byDate = !timetable.windows().everyDayAlike() || !tariff.windows().everyDayAlike();
    return of(plan, days, typed, byClock, byDate, taken);
  }

  private static PeriodOf of(Dates dates) {
    return new PeriodOf(dates.days(), dates);
  }

  /** Length, days. */
  public double days() {
    return days;
  }

  /** The dates, or null when only a number of days is known. */
  public Dates dates() {
    return dates;
  }
}

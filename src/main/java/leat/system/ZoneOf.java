package leat.system;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import leat.energy.Dates;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;

/**
 * Dates in the time zone of a plan. Apart from {@link PeriodOf}, because zones are slow to load.
 */
public final class ZoneOf {
  private static final int ANY_YEAR = 2027;

  private ZoneOf() {}

  static Dates dates(Plan plan, LocalDate from, LocalDate to, Taken taken) {
    return new Dates(from, to, zone(plan, taken));
  }

  static Dates days(Plan plan, LocalDate from, int days, Taken taken) {
    return Dates.of(from, days, zone(plan, taken));
  }

  /** So many days of 24 h, whichever. */
  static Dates anyDays(int days) {
    return Dates.of(LocalDate.of(ANY_YEAR, 1, 1), days, ZoneOffset.UTC);
  }

  /** The season's dates; a whole year of days of 24 h when the plan names none. */
  public static Dates season(Plan plan, Taken taken) {
    Section season = plan.section("season");
    if (season.has("from") && season.has("to")) {
      return dates(
          plan, (LocalDate) season.needRaw("from"), (LocalDate) season.needRaw("to"), taken);
    }
    return anyDays(LocalDate.of(ANY_YEAR, 1, 1).lengthOfYear());
  }

  /** Refuses a time zone that nobody knows. */
  public static void check(Plan plan, Taken taken) {
    zone(plan, taken);
  }

  /** Time zone of a plan; UTC without one. */
  static ZoneId zone(Plan plan, Taken taken) {
    Section site = plan.section("site");
    String name = site.text("time_zone");
    if (name == null) {
      taken.note("days of 24 h, no site.time_zone");
      return ZoneOffset.UTC;
    }
    try {
      return ZoneId.of(name);
    } catch (DateTimeException e) {
      throw new Refused(DutyErrors.unknownZone(site, name));
    }
  }
}

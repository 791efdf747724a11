package leat.system;

import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;

/** Times of a plan that are counted in whole days. */
final class WholeDays {
  private static final double ROUNDING = 1e-9;

  private WholeDays() {}

  /** A time in whole days; refused when it is not whole. */
  static int of(Section section, String key, double seconds) {
    double days = Units.D.fromBase(seconds);
    if (Math.abs(days - Math.rint(days)) > ROUNDING || days > Integer.MAX_VALUE) {
      throw new Refused(SeasonErrors.wholeDays(section, key));
    }
    return (int) Math.rint(days);
  }

  /** A key that must be there. */
  static int need(Section section, String key) {
    return of(section, key, section.need(key));
  }

  /** A key with a declared default. */
  static int get(Section section, String key, Taken taken) {
    return of(section, key, section.get(key, taken));
  }

  /** A key, or another number of days. */
  static int or(Section section, String key, int otherwise) {
    Double seconds = section.maybe(key);
    return seconds == null ? otherwise : of(section, key, seconds);
  }
}

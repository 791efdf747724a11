package leat.log;

/**
 * The date of the next can, against the keeper's hour.
 *
 * <p>Source: sheet log.md section 5; ten years as the farthest day is our own.
 */
final class TopupDay {
  private static final double DAY_MS = 86_400_000.0;

  private TopupDay() {}

  static long of(long now, double daysLeft, LogSystem system) {
    LocalClock clock = new LocalClock(system.zone());
    long today = clock.day(now);
    if (!(daysLeft < 3650)) {
      return today + 3650;
    }
    long end = now + Math.round(daysLeft * DAY_MS);
    long date = clock.day(end);
    long second = Math.floorMod(clock.local(Math.floorDiv(end, 1000L)), LocalClock.DAY_S);
    return Math.max(today, second < system.keeperS() ? date - 1 : date);
  }
}

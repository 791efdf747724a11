package leat.log;

/**
 * How a day's thirst spreads over its hours: weight 1 by day, little by night, local time. Common
 * practice, no source.
 */
final class Rhythm {
  private final LocalClock clock;
  private final double fromS;
  private final double toS;
  private final double night;

  Rhythm(LocalClock clock, LogLimits limits) {
    this.clock = clock;
    this.fromS = limits.dayFromS();
    this.toS = limits.dayToS();
    this.night = limits.nightWeight();
  }

  /** Weight of a day of 24 h, s. */
  double day() {
    return toS - fromS + night * (LocalClock.DAY_S - toS + fromS);
  }

  /** Weight between two moments, ms of Unix time; in s of full thirst. */
  double between(long a, long b) {
    return a == b ? 0 : Math.max(0, upTo(b) - upTo(a));
  }

  private double upTo(long millis) {
    long utc = Math.floorDiv(millis, 1000L);
    long local = clock.local(utc);
    long day = Math.floorDiv(local, LocalClock.DAY_S);
    double s = local - day * LocalClock.DAY_S + (millis - utc * 1000) / 1000.0;
    double bright = Math.min(Math.max(s - fromS, 0), toS - fromS);
    return day * day() + bright + night * (s - bright);
  }
}

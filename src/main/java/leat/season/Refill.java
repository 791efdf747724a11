package leat.season;

import leat.numeric.Impossible;

/**
 * When the tank is topped up: at the low mark, every so many days, or never.
 *
 * @param kind which of the three
 * @param days for {@link Kind#EVERY} the days between, else 0
 */
public record Refill(Kind kind, int days) {
  /** The three ways. */
  public enum Kind {
    /** On the evening on which the volume is at the low mark or under it. */
    AT_LOW,
    /** Every so many days after the last fill; daily is 1. */
    EVERY,
    /** Never. */
    NONE
  }

  public static final Refill AT_LOW = new Refill(Kind.AT_LOW, 0);
  public static final Refill DAILY = new Refill(Kind.EVERY, 1);
  public static final Refill NONE = new Refill(Kind.NONE, 0);

  /**
   * @throws Impossible if a refill of every so many days has less than one day
   */
  public Refill {
    if (kind == Kind.EVERY && days < 1) {
      throw new Impossible("refill", "every so many days needs at least 1 day");
    }
  }

  /** A top-up {@code days} after the last fill. */
  public static Refill every(int days) {
    return new Refill(Kind.EVERY, days);
  }
}

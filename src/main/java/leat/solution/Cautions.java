package leat.solution;

/**
 * Cautions about acid and bleach.
 *
 * <p>Source: general chemical safety practice; sheet solution-tank.md.
 */
public final class Cautions {
  /** Acid in the hand. */
  public static final String ACID =
      "acid into water, never water into acid; goggles and gloves; locked away from children.";

  /** Bleach and acid. */
  public static final String NEVER_WITH_ACID =
      "never together with acid, vinegar or pH-down: chlorine gas. Nor with ammonia or feed, nor with peroxide. Empty and rinse first.";

  /** Bottles of concentrate. */
  public static final String CONCENTRATES =
      "never mix the bottles undiluted: into the tank one after the other, stirred between.";

  private Cautions() {}
}

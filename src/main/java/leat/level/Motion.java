package leat.level;

/**
 * Which way the level has moved since the reading began.
 *
 * <p>Source: sheet level-decode.csv, column motion.
 */
public enum Motion {
  /** Not known: a single reading has no direction. */
  UNKNOWN,
  /**
   * It has only risen since the reading last changed, and rose when it changed: someone pours in.
   */
  RISING,
  /** It has only fallen since the reading last changed, and fell when it changed. */
  FALLING
}

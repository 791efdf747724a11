package leat.stability;

/**
 * Force coefficients that are taken while a body's own is not known.
 *
 * <p>Source: practice, above what EN 1991-1-4:2005, 7.6 and 7.9.2, gives for bare tubes and within
 * what it gives for squat boxes. Check values: stability-rect-cf.csv, stability-cylinder-cf.csv.
 */
public final class Drag {
  /** Box tank, - (practice, in the middle of the range). */
  public static final double BOX_TANK = 1.3;

  /** Round tank, -, as a squat cylinder (practice). */
  public static final double ROUND_TANK = 0.8;

  /**
   * Planted tube on diameter times height, - (practice): no credit for ends, nor for the drag
   * crisis that a smooth tube enjoys and pot sockets undo.
   */
  public static final double PLANTED = 1.2;

  /** Plants, on their outline outside the tube's, -; 0.2 to 1.0 (practice). */
  public static final double PLANTS = 0.5;

  private Drag() {}
}

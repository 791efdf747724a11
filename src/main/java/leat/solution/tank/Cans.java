package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * A volume carried in a can: so many full ones and a last, part-filled one.
 *
 * <p>Source: arithmetic; no sheet.
 *
 * @param count cans carried in all
 * @param full of these, filled to the brim
 * @param lastL what is in the last one when it is not full, L; 0 when all are full
 * @param equalL what each holds if all are filled alike, L; 0 when nothing is carried
 */
public record Cans(int count, int full, double lastL, double equalL) {
  private static final double ROUNDING = 1e-9;
  private static final int MOST = 1_000_000;

  /** Whether the last one holds so little, after full ones, that it is told as a cup. */
  public boolean lastIsACup() {
    return full > 0 && lastL > 0 && lastL < Topup.CUP_L;
  }

  /**
   * Splits a volume into cans.
   *
   * @param litres what is to be carried, L
   * @param canL the biggest can or bucket, L
   * @return the cans
   * @throws Impossible if the volume is negative, the can is 0, or it would take over a million
   */
  public static Cans of(double litres, double canL) {
    Accepted.volume("water", litres);
    Accepted.someVolume("can", canL);
    double ratio = litres / canL;
    if (ratio > MOST) {
      throw new Impossible("can", "the can is too small: over a million of them");
    }
    int full = (int) Math.floor(ratio + ROUNDING);
    double last = Math.max(0, litres - full * canL);
    if (last <= ROUNDING * canL) {
      last = 0;
    }
    int count = full + (last > 0 ? 1 : 0);
    return new Cans(count, full, last, count == 0 ? 0 : litres / count);
  }
}

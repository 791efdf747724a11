package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * What drinking plants leave in a tank that was full at its target: the usual drift of its EC.
 *
 * <pre>e = max(0, (t F - u (F - V)) / V)</pre>
 *
 * F full, t target, V what is left, u the salt that goes with a litre that is drunk, as EC.
 *
 * <p>Source: mass balance, as the season's day has it; the usual u is 0.75 of the target, common
 * practice ({@code leat.season.TankPlan}).
 */
public final class Drift {
  private Drift() {}

  /**
   * EC of what is left.
   *
   * @param volumeL what is left, L, above 0 and at most full
   * @param fullL the volume at the full mark, L
   * @param targetMsCm EC when it was full, mS/cm
   * @param uptakeMsCm salt that the plants take with a litre, as EC, mS/cm
   * @return EC, mS/cm; 0 when they took all of it
   * @throws Impossible if a volume is 0, more is left than full, or an EC is negative
   */
  public static double ecMsCm(double volumeL, double fullL, double targetMsCm, double uptakeMsCm) {
    Accepted.someVolume("volume", volumeL);
    Accepted.someVolume("full", fullL);
    Accepted.ec("target", targetMsCm);
    Accepted.ec("uptake", uptakeMsCm);
    if (volumeL > fullL) {
      throw new Impossible("volume", "more than full is left");
    }
    double salt = targetMsCm * fullL - uptakeMsCm * (fullL - volumeL);
    return Math.max(0, salt / volumeL);
  }
}

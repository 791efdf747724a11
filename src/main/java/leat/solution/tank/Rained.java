package leat.solution.tank;

import leat.solution.Accepted;

/**
 * A tank after rain: what passes the full mark leaves at the EC of the mix.
 *
 * <pre>V1 = V + R      e1 = (e V + r R) / V1      over full runs over, at e1</pre>
 *
 * <p>Source: mass balance; sheet solution-topup.csv.
 *
 * @param volumeL what it holds then, L
 * @param ecMsCm its EC, mS/cm; 0 for an empty tank
 * @param overflowL what ran over the full mark, L
 */
public record Rained(double volumeL, double ecMsCm, double overflowL) {
  /**
   * Rain into a tank. One that stood over full before keeps what it had: the mark is no hole.
   *
   * @param volumeL what the tank held, L
   * @param ecMsCm its EC, mS/cm
   * @param fullL the volume at the full mark, L
   * @param rainL rain that fell in, L
   * @param rainEcMsCm its EC, mS/cm
   * @return the tank then
   * @throws leat.numeric.Impossible if a volume or an EC is negative
   */
  public static Rained of(
      double volumeL, double ecMsCm, double fullL, double rainL, double rainEcMsCm) {
    Accepted.volume("volume", volumeL);
    Accepted.ec("ec", ecMsCm);
    Accepted.volume("full", fullL);
    Accepted.volume("rain", rainL);
    Accepted.ec("rain-ec", rainEcMsCm);
    double mixed = volumeL + rainL;
    double left = Math.max(volumeL, Math.min(mixed, fullL));
    if (mixed <= 0) {
      return new Rained(left, 0, 0);
    }
    double ec = rainL <= 0 ? ecMsCm : (ecMsCm * volumeL + rainEcMsCm * rainL) / mixed;
    return new Rained(left, ec, mixed - left);
  }
}

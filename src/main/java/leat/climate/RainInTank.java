package leat.climate;

import leat.numeric.Impossible;

/**
 * A tank after rain: mixed first, then over the rim at the mixed EC. In truth rain floats and what
 * runs over is weaker, so this loses salt a little too fast.
 *
 * <p>Source: sheet season.md section 3, check values season-rain.csv.
 *
 * @param rainL rain that came in, L
 * @param overflowL what ran over, L
 * @param volumeL volume after it, L
 * @param ecMsCm EC after it, mS/cm
 * @param saltLostMsCmL salt that ran over, mS/cm L
 */
public record RainInTank(
    double rainL, double overflowL, double volumeL, double ecMsCm, double saltLostMsCmL) {

  /**
   * The tank after rain.
   *
   * @param volumeL volume before, L
   * @param ecMsCm EC before, mS/cm
   * @param rainL rain that drains in, L
   * @param rimL volume at which it runs over, L
   * @param rainEcMsCm EC of the rain, mS/cm
   * @throws Impossible if one is negative
   */
  public static RainInTank of(
      double volumeL, double ecMsCm, double rainL, double rimL, double rainEcMsCm) {
    double volume = Accepted.size("volume", volumeL) + Accepted.size("rain", rainL);
    double salt =
        volumeL * Accepted.size("ec", ecMsCm) + rainL * Accepted.size("rain ec", rainEcMsCm);
    double over = Math.max(0, volume - Accepted.size("rim", rimL));
    double ec = volume > 0 ? salt / volume : 0;
    return new RainInTank(rainL, over, volume - over, ec, over * ec);
  }
}

package leat.season;

import leat.numeric.Impossible;

/**
 * Rain that nobody measured, from what it did to the tank: volume and EC the last time and now.
 *
 * <pre>V2 = V1 - D + R
 * V2 E2 = V1 E1 - D u + R r
 * R = (V2 E2 - V1 E1 + (V1 - V2) u)/(r - u)</pre>
 *
 * <p>D is what the plants drank, u the salt that they take with a litre. Nothing ran over, nothing
 * was poured in. The uptake is what is known least, so the answer is a band: {@link
 * TankPlan#UPTAKE_SHARES} of the target.
 *
 * <p>Source: mass balance of water and of salt. The uptake's range: see {@link TankPlan}.
 *
 * @param rainL rain that fell in, L; 0 when none shows
 * @param lowL the same with the uptake that asks for least rain, L
 * @param highL and for most, L
 * @param drunkL what the plants drank, L
 */
public record RainSeen(double rainL, double lowL, double highL, double drunkL) {
  /** Rain up to this does not show, L. */
  private static final double UNSEEN_L = 0.5;

  private static final double LEAST = TankPlan.UPTAKE_SHARES.low(0);
  private static final double MOST = TankPlan.UPTAKE_SHARES.high(0);

  /**
   * The rain since.
   *
   * @param beforeL volume the last time, L, above 0
   * @param beforeMsCm its EC, mS/cm
   * @param nowL volume now, L, above 0
   * @param nowMsCm its EC, mS/cm
   * @param uptakeMsCm salt that the plants take with a litre, mS/cm
   * @param targetMsCm EC aimed at, mS/cm, of which the range of the uptake is a share
   * @param rainMsCm EC of rain, mS/cm, under the uptake
   * @return the rain and what was drunk
   * @throws Impossible if a volume is not above 0, an EC is negative, or rain is as salt as what
   *     plants take
   */
  public static RainSeen since(
      double beforeL,
      double beforeMsCm,
      double nowL,
      double nowMsCm,
      double uptakeMsCm,
      double targetMsCm,
      double rainMsCm) {
    Impossible.unlessPositive("volume before", beforeL);
    Impossible.unlessPositive("volume", nowL);
    Impossible.ifNegative("EC before", beforeMsCm);
    Impossible.ifNegative("EC", nowMsCm);
    Accepted.ec("uptake", uptakeMsCm);
    double salt = nowL * nowMsCm - beforeL * beforeMsCm;
    double less = beforeL - nowL;
    double rain = rain(salt, less, uptakeMsCm, rainMsCm);
    double one = rain(salt, less, Math.min(uptakeMsCm, LEAST * targetMsCm), rainMsCm);
    double other = rain(salt, less, Math.max(uptakeMsCm, MOST * targetMsCm), rainMsCm);
    return new RainSeen(rain, Math.min(one, other), Math.max(one, other), less + rain);
  }

  private static double rain(double salt, double less, double uptake, double rainMsCm) {
    if (rainMsCm >= uptake) {
      throw new Impossible("rain's EC", "it must be less than the salt that plants take");
    }
    return Math.max(0, (salt + less * uptake) / (rainMsCm - uptake));
  }

  /** Whether more is there than before though no rain shows: something else was poured in. */
  public boolean isPoured() {
    return drunkL < -UNSEEN_L;
  }

  /** Whether rain shows at all. */
  public boolean shows() {
    return highL > UNSEEN_L;
  }
}

package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Accepted;
import leat.solution.Concentrate;

/**
 * A question to {@link Topup}: a tank, what it should become, and what there is to pour.
 *
 * <p>Source: sheet solution-topup.csv.
 *
 * @param volumeL what the tank holds, L; it may be over full
 * @param ecMsCm its EC, mS/cm; of no consequence when the tank is empty
 * @param fullL the volume at the full mark, L
 * @param targetMsCm the EC wanted, mS/cm
 * @param waterEcMsCm the EC of the water poured, mS/cm
 * @param feed the concentrate
 * @param rainL rain that has fallen in since, not in volumeL, L
 * @param rainEcMsCm its EC, mS/cm; {@link Topup#RAIN_EC_MS_CM} when unknown
 */
public record TopupAsk(
    double volumeL,
    double ecMsCm,
    double fullL,
    double targetMsCm,
    double waterEcMsCm,
    Concentrate feed,
    double rainL,
    double rainEcMsCm) {
  private static final double SAME_STRENGTH = 1 + 1e-9;

  /**
   * @throws Impossible if a volume or an EC is negative or absurd, full or target is 0, or the
   *     concentrate is no stronger than the water
   */
  public TopupAsk {
    tank(volumeL, ecMsCm, fullL, targetMsCm, waterEcMsCm);
    Accepted.volume("rain", rainL);
    Accepted.ec("rain-ec", rainEcMsCm);
    if (feed.strengthMsCm() <= waterEcMsCm * SAME_STRENGTH) {
      throw new Impossible("rate-ec", "the concentrate is no stronger than the water");
    }
  }

  /** Takes a tank and its target, whatever feeds it; otherwise throws {@link Impossible}. */
  static void tank(
      double volumeL, double ecMsCm, double fullL, double targetMsCm, double waterEcMsCm) {
    Accepted.volume("volume", volumeL);
    Accepted.ec("ec", ecMsCm);
    Accepted.someVolume("full", fullL);
    Impossible.unlessPositive("target", targetMsCm);
    Accepted.ec("target", targetMsCm);
    Accepted.ec("water-ec", waterEcMsCm);
  }

  /**
   * The question without rain.
   *
   * @param volumeL what the tank holds, L; it may be over full
   * @param ecMsCm its EC, mS/cm
   * @param fullL the volume at the full mark, L
   * @param targetMsCm the EC wanted, mS/cm
   * @param waterEcMsCm the EC of the water poured, mS/cm
   * @param feed the concentrate
   * @return the question
   * @throws Impossible as the constructor
   */
  public static TopupAsk dry(
      double volumeL,
      double ecMsCm,
      double fullL,
      double targetMsCm,
      double waterEcMsCm,
      Concentrate feed) {
    return new TopupAsk(
        volumeL, ecMsCm, fullL, targetMsCm, waterEcMsCm, feed, 0, Topup.RAIN_EC_MS_CM);
  }

  /**
   * The same question for another volume.
   *
   * @param litres what the tank holds, L
   */
  public TopupAsk holding(double litres) {
    return new TopupAsk(litres, ecMsCm, fullL, targetMsCm, waterEcMsCm, feed, rainL, rainEcMsCm);
  }
}

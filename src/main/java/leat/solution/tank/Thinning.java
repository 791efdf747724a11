package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * Water that takes a solution from one EC down to another: poured on top, or put in the place of
 * solution taken out.
 *
 * <pre>
 * W = V (a - b) / (b - w)      on top, V + W then
 * R = V (a - b) / (a - w)      taken out and replaced, V then
 * </pre>
 *
 * <p>EC is taken to mix in proportion to volume as in {@link Topup}.
 *
 * <p>Source: mass balance; {@link Topup} with the tank full agrees on R.
 *
 * @param waterL W, L
 * @param finalVolumeL the volume with it, L
 * @param swapL R, L
 */
public record Thinning(double waterL, double finalVolumeL, double swapL) {
  /**
   * The water for a volume.
   *
   * @param volumeL what is there, L
   * @param fromMsCm its EC, mS/cm
   * @param toMsCm the EC wanted, mS/cm
   * @param waterEcMsCm the water's EC, mS/cm
   * @return the water, or null when it is no weaker than the EC wanted
   * @throws Impossible if the volume is 0, a volume or EC is negative or absurd, or the EC wanted
   *     is above the one there
   */
  public static Thinning of(double volumeL, double fromMsCm, double toMsCm, double waterEcMsCm) {
    Accepted.someVolume("volume", volumeL);
    Accepted.ec("from", fromMsCm);
    Accepted.ec("to", toMsCm);
    Accepted.ec("water-ec", waterEcMsCm);
    if (toMsCm > fromMsCm) {
      throw new Impossible("to", "water thins, it does not lift an EC");
    }
    double water = volumeL * (fromMsCm - toMsCm) / (toMsCm - waterEcMsCm);
    if (toMsCm <= waterEcMsCm || volumeL + water > Accepted.LARGEST_VOLUME_L) {
      return null;
    }
    return new Thinning(
        water, volumeL + water, volumeL * (fromMsCm - toMsCm) / (fromMsCm - waterEcMsCm));
  }
}

package leat.solution.acid;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * pH of a tank that was topped up with water: right after stirring, and towards which it climbs as
 * carbonic acid leaves.
 *
 * <pre>
 * Alk = (K Alk1 + W Alk2)/(K + W)      CT likewise; pH from both, closed
 * Alk1 of the tank: in equilibrium with open air at its pH
 * </pre>
 *
 * <p>Alkalinity and dissolved carbonate mix in proportion to volume, whatever the pH does. Feed and
 * roots are left out: the phosphate of a feed buffers, so that the tank ends nearer to its old pH.
 *
 * <p>Source: balance of charge and carbonate with {@link Carbonate}. A solver written from the
 * constants of the sheet solution-acid.csv agrees.
 *
 * @param alkalinityMeqL alkalinity of the mix, meq/L
 * @param ph pH right after stirring, -
 * @param openPh pH towards which it climbs in open air of 420 ppm carbon dioxide, -
 * @param stuffyPh the same at 2000 ppm, -
 */
public record MixedWater(double alkalinityMeqL, double ph, double openPh, double stuffyPh) {
  private static final double CLEARLY = 0.1;

  /**
   * A tank and the water poured into it.
   *
   * @param keptL what was in the tank, L
   * @param tankPh its pH, -
   * @param waterL water poured, L
   * @param waterMeqL alkalinity of the water, meq/L
   * @param waterPh its pH, -
   * @param celsius temperature of the mix, C
   * @return the mix
   * @throws Impossible if both volumes are 0 or one is negative, a pH lies outside 0 to 14, or the
   *     water's alkalinity and pH contradict each other
   */
  public static MixedWater of(
      double keptL,
      double tankPh,
      double waterL,
      double waterMeqL,
      double waterPh,
      double celsius) {
    Accepted.volume("volume", keptL);
    Accepted.volume("water", waterL);
    double all = Accepted.someVolume("volume", keptL + waterL);
    Impossible.unlessWithin("ph", tankPh, 0, 14, "a pH lies between 0 and 14");
    AcidPour.checkWater(waterMeqL, waterPh);
    Carbonate carbonate = Carbonate.at(celsius);
    double tankMeqL = carbonate.openMeqL(Carbonate.OPEN_AIR_PPM, tankPh);
    double tankTotal = carbonate.totalMmolL(tankMeqL, tankPh);
    double waterTotal = AcidPour.carbonate(carbonate, waterMeqL, waterPh);
    double alkalinity = (keptL * tankMeqL + waterL * waterMeqL) / all;
    double total = (keptL * tankTotal + waterL * waterTotal) / all;
    return new MixedWater(
        alkalinity,
        carbonate.closedPh(alkalinity, total),
        carbonate.openPh(alkalinity, Carbonate.OPEN_AIR_PPM),
        carbonate.openPh(alkalinity, Carbonate.STUFFY_AIR_PPM));
  }

  /**
   * Whether it ends clearly above a pH wanted, so that acid is due.
   *
   * @param wantedPh pH, -
   */
  public boolean isOver(double wantedPh) {
    return stuffyPh > wantedPh + CLEARLY || ph > wantedPh + CLEARLY;
  }
}

package leat.season;

/**
 * The first fill of an empty tank, on the evening before day 0.
 *
 * <p>Source: mass balance; as a top-up from nothing.
 *
 * @param waterL water, L
 * @param concentrateMl concentrate, mL
 * @param volumeL what they make, L
 * @param ecMsCm its EC, mS/cm: above what was asked when the water alone is stronger
 */
public record FirstFill(double waterL, double concentrateMl, double volumeL, double ecMsCm) {
  /**
   * @param feeding water and concentrate; its target is not looked at
   * @param volumeL the volume wanted, L
   * @param ecMsCm the EC wanted, mS/cm
   * @return what to pour
   * @throws leat.numeric.Impossible if the volume or the EC is not above 0, or the concentrate too
   *     weak for it
   */
  public static FirstFill of(Feeding feeding, double volumeL, double ecMsCm) {
    Marks marks = new Marks(volumeL, 0, 0, volumeL, 0);
    TankPlan empty =
        new TankPlan(
            marks,
            feeding.target(ecMsCm),
            RainCatch.ROOFED,
            Upkeep.of(Refill.NONE),
            EcBand.ANY,
            0,
            0,
            0);
    Machine machine = new Machine(empty, TankState.start(empty));
    machine.firstFill();
    return new FirstFill(
        machine.water, machine.concentrate, machine.volume, machine.salt / machine.volume);
  }
}

package leat.solution.tank;

/**
 * A question to {@link TopupSalts} for whatever volume the tank holds: marks, water, recipe, rain.
 *
 * <p>Source: mass balance, as {@link Topup} has it.
 *
 * @param ecMsCm EC of the tank as read, mS/cm
 * @param fullL the volume at the full mark, L
 * @param targetMsCm the EC wanted, mS/cm
 * @param waterEcMsCm the EC of the water poured, mS/cm
 * @param gainMsCm what the recipe adds to pure water, mS/cm
 * @param rainL rain that has fallen in since the reading, L
 * @param rainEcMsCm its EC, mS/cm
 */
public record TopupSaltsAsk(
    double ecMsCm,
    double fullL,
    double targetMsCm,
    double waterEcMsCm,
    double gainMsCm,
    double rainL,
    double rainEcMsCm) {
  /**
   * The tank after the rain.
   *
   * @param volumeL what it held when it was read, L
   */
  public Rained rained(double volumeL) {
    return Rained.of(volumeL, ecMsCm, fullL, rainL, rainEcMsCm);
  }

  /**
   * Whether a volume stands over the full mark, so that one sees it, before anything is done.
   *
   * @param volumeL what it held when it was read, L
   */
  public boolean isOverFull(double volumeL) {
    return volumeL > fullL + Topup.SEEN_L;
  }

  /**
   * The answer for one volume.
   *
   * @param volumeL what the tank held when it was read, L
   * @return what to drain, pour and weigh
   * @throws leat.numeric.Impossible as {@link TopupSalts#solve}
   */
  public TopupSalts.Answer solve(double volumeL) {
    Rained tank = rained(volumeL);
    return TopupSalts.solve(
        tank.volumeL(), tank.ecMsCm(), fullL, targetMsCm, waterEcMsCm, gainMsCm);
  }
}

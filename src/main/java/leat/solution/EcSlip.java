package leat.solution;

/**
 * An EC that no tower has: a decimal point slipped (16 for 1.6), or another scale was read.
 *
 * <p>An EC aimed at is asked back over twice the highest EC of the crops; one that is read in the
 * tank or the water over five times the EC aimed at, but never up to twice what the hungriest crop
 * likes. The drift of a hot week doubles an EC at most, since a tank that lost half of its water is
 * refilled before; a slipped point is a factor of ten.
 *
 * <p>Source: our own bounds (common sense); the highest EC of a crop, 4 mS/cm for tomatoes and
 * beans, is that of {@link Crops}.
 */
public final class EcSlip {
  private static final double TARGET_TIMES = 2;
  private static final double READ_TIMES = 5;
  private static final double SLIPPED_POINT = 10;

  private EcSlip() {}

  /**
   * The highest EC that a crop of the table likes, mS/cm.
   *
   * @return EC at 25 C, mS/cm
   */
  public static double highestOfAnyCrop() {
    double highest = 0;
    java.util.List<Crop> all = Crops.all();
    for (int i = 0; i < all.size(); i++) {
      highest = Math.max(highest, all.get(i).ecHighMsCm());
    }
    return highest;
  }

  /**
   * The most that is taken as an EC to aim at.
   *
   * @param highestOfCrops the highest EC that the crops like, mS/cm
   * @return EC, mS/cm
   */
  public static double mostAimedAt(double highestOfCrops) {
    return TARGET_TIMES * highestOfCrops;
  }

  /**
   * The most that is taken as an EC read in the tank or the water.
   *
   * @param aimedAt the EC aimed at, mS/cm
   * @return EC, mS/cm
   */
  public static double mostRead(double aimedAt) {
    return Math.max(READ_TIMES * aimedAt, mostAimedAt(highestOfAnyCrop()));
  }

  /**
   * What was meant if the decimal point slipped.
   *
   * @param ec as typed, mS/cm
   * @return a tenth, mS/cm
   */
  public static double meant(double ec) {
    return ec / SLIPPED_POINT;
  }
}

package leat.solution.tank;

import leat.numeric.Impossible;

/**
 * The balance of {@link Topup} for feed that is weighed: dry salts bring EC and no volume.
 *
 * <pre>
 * K + W = F      e K + w W + g x = t F      D = V - K; D, W, x at least 0; D least
 * x = (F (t - w) - K (e - w)) / g           W = F - K
 * </pre>
 *
 * x litres of a recipe are weighed: its grams per litre of finished solution times x; g is what the
 * recipe adds to pure water.
 *
 * <p>EC is taken to mix in proportion to volume as in {@link Topup}: good to a few per cent below 3
 * mS/cm. Order of work: drain, then water, then the salts dissolved in a jug of the tank's water.
 *
 * <p>Source: mass balance; sheet solution-topup.csv with a feed so strong that its volume is
 * nothing.
 */
public final class TopupSalts {
  /** A recipe that adds less to the water it makes steers no EC, mS/cm (common practice). */
  public static final double LEAST_GAIN_MS_CM = 0.05;

  private TopupSalts() {}

  /**
   * An answer; the amounts are null when the target cannot be met.
   *
   * @param status whether it can be met
   * @param drainL to take out first, L
   * @param waterL to pour next, L
   * @param recipeL litres of the recipe to weigh, L
   * @param finalVolumeL the volume then, L: full
   * @param finalEcMsCm the EC then, by the balance, mS/cm
   */
  public record Answer(
      Topup.Status status,
      Double drainL,
      Double waterL,
      Double recipeL,
      Double finalVolumeL,
      Double finalEcMsCm) {
    /** Whether the target is met. */
    public boolean reached() {
      return status == Topup.Status.REACHED;
    }

    /** Whether something is to be drained that a person could measure. */
    public boolean drains() {
      return drainL != null && drainL >= Topup.SEEN_L;
    }

    /** Whether something is to be drained that is worth pouring over the beds: a cup or more. */
    public boolean drainsMore() {
      return drainL != null && drainL >= Topup.CUP_L;
    }

    /** Whether water is to be poured that a person could measure. */
    public boolean pours() {
      return waterL != null && waterL >= Topup.SEEN_L;
    }
  }

  /**
   * Solves the balance.
   *
   * @param volumeL what the tank holds, L; it may be over full
   * @param ecMsCm its EC, mS/cm
   * @param fullL the volume at the full mark, L
   * @param targetMsCm the EC wanted, mS/cm
   * @param waterEcMsCm the EC of the water poured, mS/cm
   * @param gainMsCm what the recipe adds to pure water, mS/cm
   * @return the answer, with the least drained
   * @throws Impossible if a volume or an EC is negative or absurd, or full, the target or the gain
   *     is 0
   */
  public static Answer solve(
      double volumeL,
      double ecMsCm,
      double fullL,
      double targetMsCm,
      double waterEcMsCm,
      double gainMsCm) {
    TopupAsk.tank(volumeL, ecMsCm, fullL, targetMsCm, waterEcMsCm);
    Impossible.unlessPositive("weigh", gainMsCm);
    double kept =
        Topup.kept(volumeL, ecMsCm, fullL, targetMsCm, waterEcMsCm, Double.POSITIVE_INFINITY);
    if (kept < 0) {
      return new Answer(Topup.Status.WATER_TOO_STRONG, null, null, null, null, null);
    }
    double salt = Topup.some(Topup.added(kept, ecMsCm, fullL, targetMsCm, waterEcMsCm), fullL);
    double water = Topup.some(fullL - kept, fullL);
    double drain = Topup.some(volumeL - kept, fullL);
    double ec = (ecMsCm * kept + waterEcMsCm * water + salt) / fullL;
    return new Answer(Topup.Status.REACHED, drain, water, salt / gainMsCm, fullL, ec);
  }
}

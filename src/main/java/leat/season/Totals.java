package leat.season;

/**
 * The sums of a season.
 *
 * @param days its days
 * @param flows what flowed
 * @param counts what happened how often
 * @param evenings what the evenings showed
 * @param tapSalt the tap water's own salt
 * @param firstDry the first dry day outside away, -1 for none
 * @param firstAwayDry the first dry day because of away, -1 for none
 */
public record Totals(
    int days,
    Flows flows,
    Counts counts,
    Evenings evenings,
    TapSalt tapSalt,
    int firstDry,
    int firstAwayDry) {
  /**
   * Days that a can of water lasts; infinite when nothing is drunk.
   *
   * @param canL litres of the can, L
   * @return days, d
   */
  public double daysACan(double canL) {
    return canL * days / flows.waterUseL();
  }

  /**
   * Sums of all days.
   *
   * @param waterUseL what left by plants and open surface, L
   * @param shortL thirst that found no water, L
   * @param rainL rain that drained in, L
   * @param overflowL what ran over, L
   * @param waterL water poured after the first fill, L
   * @param concentrateMl concentrate poured after the first fill, mL
   * @param drainedL drained by changes and dilutions, L
   * @param uptakeMsCmL salt that the plants took, mS/cm L
   */
  public record Flows(
      double waterUseL,
      double shortL,
      double rainL,
      double overflowL,
      double waterL,
      double concentrateMl,
      double drainedL,
      double uptakeMsCmL) {}

  /**
   * Counts.
   *
   * @param topups top-ups, those without water too; dilutions are not among them
   * @param doses concentrate alone
   * @param dilutions top-ups that drained first
   * @param changes changes
   * @param overflowDays days it ran over
   * @param dryDays days on which thirst found no water, away or not
   * @param awayDryDays those because somebody was away
   */
  public record Counts(
      int topups,
      int doses,
      int dilutions,
      int changes,
      int overflowDays,
      int dryDays,
      int awayDryDays) {
    /** Dry days that are the owner's own. */
    public int dryOutsideAway() {
      return dryDays - awayDryDays;
    }

    /** Evenings on which somebody did something. */
    public int services() {
      return topups + doses + dilutions + changes;
    }
  }

  /**
   * What the evenings showed, after service.
   *
   * @param ecMinMsCm least EC, mS/cm; NaN when it was always empty
   * @param ecMaxMsCm most EC, mS/cm
   * @param lowestL least volume of a day, before service, L
   * @param volumeEndL volume at the end, L
   * @param saltEndMsCmL salt at the end, mS/cm L
   * @param above longest run of evenings above the band
   * @param below longest run under it
   * @param outside longest run outside it, above or below
   */
  public record Evenings(
      double ecMinMsCm,
      double ecMaxMsCm,
      double lowestL,
      double volumeEndL,
      double saltEndMsCmL,
      Streak above,
      Streak below,
      Streak outside) {
    /** EC at the end, mS/cm; NaN when empty. */
    public double ecEndMsCm() {
      return volumeEndL > 0 ? saltEndMsCmL / volumeEndL : Double.NaN;
    }
  }

  /**
   * The tap water's own salt, topped up since the last change, as a share of the target.
   *
   * @param most the largest share of the season's evenings, before a change clears it
   * @param mostDay its day
   * @param end the share at the end
   */
  public record TapSalt(double most, int mostDay, double end) {
    /** Over this share a change is advised (common practice). */
    public static final double ADVISE_CHANGE = 0.5;
  }
}

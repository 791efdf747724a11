package leat.climate;

import leat.numeric.Impossible;

/**
 * Growth in straight lines: a small start, a rise while the leaves spread, a full plant, and if
 * wanted a late decline.
 *
 * <pre>g = g0 until initial; then a line to 1 over development; 1 for full days;
 * then a line down to the end share over late days, held there</pre>
 *
 * <p>Source: stages after FAO-56 chapter 6; their use as one growth curve is our own; sheet
 * season.md section 2, check values season-plant-water.csv.
 *
 * @param initialDays days of the small start
 * @param developmentDays days of the rise
 * @param fullDays days of the full plant before the decline; {@link #FOR_GOOD} without one
 * @param lateDays days of the decline
 * @param startShare share at the start, above 0 to 1
 * @param endShare share after the decline, 0 to 1
 */
public record GrowthStages(
    int initialDays,
    int developmentDays,
    int fullDays,
    int lateDays,
    double startShare,
    double endShare)
    implements Growth {
  /** Full days of a plant that does not decline. */
  public static final int FOR_GOOD = Integer.MAX_VALUE;

  /** Usual share at the start, - (common practice). */
  public static final double USUAL_START = 0.1;

  /** Days of the small start out of a hundred days in the pot (common practice). */
  public static final int INITIAL_PERCENT = 15;

  /** Days of the rise out of a hundred days in the pot (common practice). */
  public static final int DEVELOPMENT_PERCENT = 55;

  /**
   * @throws Impossible if a stage is negative or a share outside its range
   */
  public GrowthStages {
    if (initialDays < 0 || developmentDays < 0 || fullDays < 0 || lateDays < 0) {
      throw new Impossible("stages", "a stage lasts 0 days or more");
    }
    Impossible.unlessPositive("start_share", startShare);
    Accepted.share("start_share", startShare);
    Accepted.share("end_share", endShare);
  }

  /**
   * Without a decline.
   *
   * @param initialDays days of the small start
   * @param developmentDays days of the rise
   * @param startShare share at the start, above 0 to 1
   */
  public static GrowthStages of(int initialDays, int developmentDays, double startShare) {
    return new GrowthStages(initialDays, developmentDays, FOR_GOOD, 0, startShare, 1);
  }

  /**
   * Stages of a plant that stands so many days in its pot and declines in the last of them.
   *
   * @param growingDays days in the pot
   * @param initialDays days of the small start
   * @param developmentDays days of the rise
   * @param lateDays days of the decline; 0 for none
   * @param startShare share at the start, above 0 to 1
   * @param endShare share after the decline, 0 to 1
   * @throws Impossible if the stages are longer than the days in the pot
   */
  public static GrowthStages inPot(
      int growingDays,
      int initialDays,
      int developmentDays,
      int lateDays,
      double startShare,
      double endShare) {
    long full = (long) growingDays - initialDays - developmentDays - lateDays;
    if (full < 0) {
      throw new Impossible("stages", "together they are longer than the days in the pot");
    }
    return lateDays == 0
        ? of(initialDays, developmentDays, startShare)
        : new GrowthStages(
            initialDays, developmentDays, (int) full, lateDays, startShare, endShare);
  }

  /** Usual days of the small start, rounded down. */
  public static int usualInitial(int growingDays) {
    return INITIAL_PERCENT * growingDays / 100;
  }

  /** Usual days of the rise, rounded down. */
  public static int usualDevelopment(int growingDays) {
    return DEVELOPMENT_PERCENT * growingDays / 100;
  }

  @Override
  public double share(int day) {
    if (day < 0) {
      return 0;
    }
    if (day < initialDays) {
      return startShare;
    }
    int rising = day - initialDays;
    if (rising < developmentDays) {
      return startShare + (1 - startShare) * rising / developmentDays;
    }
    int full = rising - developmentDays;
    if (full < fullDays) {
      return 1;
    }
    int late = full - fullDays;
    return late < lateDays ? 1 - (1 - endShare) * late / lateDays : endShare;
  }
}

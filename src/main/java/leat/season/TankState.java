package leat.season;

/**
 * The tank between two days.
 *
 * @param day the day that comes next, 0 at the season's start
 * @param volumeL solution with the pump off, L
 * @param saltMsCmL salt in it, mS/cm L
 * @param filledDay day of the last fill, -1 for the first
 * @param changedDay day of the last change, -1 for the first fill
 * @param addedL water topped up since, L
 * @param owed whether nobody has served since somebody went away
 */
public record TankState(
    int day,
    double volumeL,
    double saltMsCmL,
    int filledDay,
    int changedDay,
    double addedL,
    boolean owed) {
  /** The evening before day 0. */
  public static TankState start(TankPlan plan) {
    Since since = plan.since();
    return new TankState(
        0,
        plan.startL(),
        plan.startL() * plan.startMsCm(),
        since.filledDay(),
        since.changedDay(),
        since.addedL(),
        false);
  }
}

package leat.season;

/**
 * The thirst of one day.
 *
 * <p>Source: {@link Thirst} for its doubt.
 *
 * @param plantsL what the plants drink, L, times the factor that a log found
 * @param openL what open water loses, L, likewise
 * @param doubt the factors of the season, around the middle one
 */
public record DayThirst(double plantsL, double openL, Thirst doubt) {
  /** Both, L. */
  public double inAllL() {
    return plantsL + openL;
  }

  /** Nine days of ten are thirstier than this, as far as the season's doubt goes, L. */
  public double leastL() {
    return inAllL() * doubt.low() / doubt.middle();
  }

  /** Nine of ten are less thirsty, L. */
  public double mostL() {
    return inAllL() * doubt.high() / doubt.middle();
  }
}

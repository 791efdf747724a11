package leat.energy;

/**
 * How long roots in a falling-film tower are left without water.
 *
 * <p>No published survival curve for vertical film towers was found: the defaults are common
 * practice. Lettuce did well with pauses of 30 to 60 min between fine sprays in a closed chamber
 * (Agronomy 2021, 11(1), 97, abstract), which an open tower in the sun is not. The night needs less
 * water, never none.
 *
 * <p>Source: sheet energy.md section 3.
 *
 * @param dayS longest rest by day, s
 * @param nightS longest rest by night, s
 * @param alarmS pause after which to raise an alarm, s
 */
public record DryLimit(double dayS, double nightS, double alarmS) {
  /** Default longest rest by day, s (common practice). */
  public static final double USUAL_DAY_S = 1800;

  /** Default longest rest by night, s (common practice). */
  public static final double USUAL_NIGHT_S = 3600;

  /** Default pause after which to raise an alarm, s (common practice). */
  public static final double USUAL_ALARM_S = 2700;

  /** Longest rests that the pause of an alarm must at least be, no unit (common practice). */
  private static final double RESTS_TO_ALARM = 1.5;

  private static final int NIGHT_FROM_S = 22 * 3600;
  private static final int NIGHT_TO_S = 6 * 3600;

  /**
   * @throws leat.numeric.Impossible if a limit is not above 0
   */
  public DryLimit {
    Accepted.someTime("dry limit", dayS);
    Accepted.someTime("dry limit", nightS);
    Accepted.someTime("alarm", alarmS);
  }

  /**
   * Pause after which to raise an alarm when the grower names none: a sensor that dries in an
   * ordinary rest is none.
   *
   * @param longestRestS longest rest of the pump's timing, s; 0 when it is not known
   */
  public static double usualAlarmS(double longestRestS) {
    return Math.max(USUAL_ALARM_S, RESTS_TO_ALARM * longestRestS);
  }

  /** Whether the pause is over before the longest rest is: it would alarm in each of them. */
  public boolean alarmsWithin(double longestRestS) {
    return alarmS <= longestRestS;
  }

  /** The hours taken for night by default, 22:00 to 06:00: a convention, not the sun. */
  public static Window usualNight() {
    return Window.between(NIGHT_FROM_S, NIGHT_TO_S);
  }
}

package leat.energy;

import leat.numeric.Impossible;

/**
 * The least run that waters the lowest pot: fill the riser, let the film come down, wet the pot.
 *
 * <pre>least run = t_fill + k h/u + t_wet</pre>
 *
 * <p>A front on a dry wall moves at the film's mean speed u (mass balance), not at its surface
 * speed. The fill time at the running flow is the cautious figure, 0 with a check valve that holds.
 * Past film Reynolds numbers of about 1500 the laminar speed is doubtful.
 *
 * <p>Source: sheet energy.md section 3, check values energy-min-on.csv; k and t_wet are common
 * practice.
 *
 * @param fillS time to fill the riser, s
 * @param filmS time of the film from cap to lowest pot, delay factor included, s
 * @param wettingS how long the lowest pot must get water, s
 */
public record LeastRun(double fillS, double filmS, double wettingS) {
  /** Delay factor k of pots and roots on the film's way, no unit (common practice). */
  public static final double USUAL_DELAY_FACTOR = 3;

  /** k of a bare wall. */
  public static final double BARE_WALL_DELAY_FACTOR = 1;

  /** k among pots and root mats. */
  public static final double ROOT_MAT_DELAY_FACTOR = 5;

  /** How long the lowest pot must get water, s (common practice). */
  public static final double USUAL_WETTING_S = 20;

  /** The parts of a least run. */
  public enum Part {
    FILL,
    FILM,
    WETTING
  }

  /**
   * @throws Impossible if a time is negative
   */
  public LeastRun {
    Accepted.time("fill time", fillS);
    Accepted.time("film time", filmS);
    Accepted.time("wetting", wettingS);
    Accepted.someTime("wetting", fillS + filmS + wettingS);
  }

  /**
   * The least run of a film that comes down at its mean speed.
   *
   * @param fillS time to fill the riser, s; 0 with a check valve that holds
   * @param filmHeightM way of the film from cap to lowest pot, m
   * @param filmMeanSpeed mean speed of the film, m/s, above 0
   * @param delayFactor k, 1 or more
   * @param wettingS how long the lowest pot must get water, s
   * @return the least run
   * @throws Impossible if a time or height is negative, the speed not above 0, or k under 1
   */
  public static LeastRun of(
      double fillS, double filmHeightM, double filmMeanSpeed, double delayFactor, double wettingS) {
    Impossible.ifNegative("film height", filmHeightM);
    Impossible.unlessPositive("film speed", filmMeanSpeed);
    Impossible.unlessWithin(
        "delay factor", delayFactor, 1, 1000, "roots only delay a film: it is 1 or more");
    return new LeastRun(fillS, delayFactor * filmHeightM / filmMeanSpeed, wettingS);
  }

  /** The least run, s. */
  public double seconds() {
    return fillS + filmS + wettingS;
  }

  /** The least run in whole seconds, rounded up. */
  public double wholeSeconds() {
    return Math.ceil(seconds() - Suggestion.WHOLE_S);
  }

  /** The longest of the three parts: where a shorter run can be won. */
  public Part longestPart() {
    if (fillS >= filmS && fillS >= wettingS) {
      return Part.FILL;
    }
    return filmS >= wettingS ? Part.FILM : Part.WETTING;
  }

  /** Whether a timing runs long enough; a pump without pause always does. */
  public boolean coveredBy(Timing timing) {
    return timing.withoutPause() || timing.runS() >= seconds();
  }
}

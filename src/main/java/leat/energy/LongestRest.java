package leat.energy;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * The longest rest: the dry limit, or less when the water held by plug and root mat runs out before
 * it.
 *
 * <pre>t_dry = W f/q,  q = peak factor x daily use/86400</pre>
 *
 * <p>An estimate in place of a fact: print it as "about", with the water held and the use.
 *
 * <p>Source: mass balance; f and the peak factor are common practice; sheet energy.md section 3
 * (plug 20 mL, 0.12 L/d: 48 min; bare roots 6 mL: 14 min).
 *
 * @param dryLimitS the dry limit, s
 * @param plugWaterS the estimate, s; empty when it was not asked for
 */
public record LongestRest(double dryLimitS, OptionalDouble plugWaterS) {
  /** Share f of the water held that a plant can use, no unit (common practice). */
  public static final double USUAL_USABLE_SHARE = 0.5;

  /** Noon use over the day's mean use, no unit (common practice). */
  public static final double USUAL_PEAK_FACTOR = 2.5;

  /** What bounds a rest. */
  public enum Bound {
    DRY_LIMIT,
    PLUG_WATER
  }

  /**
   * @throws Impossible if a time is not above 0
   */
  public LongestRest {
    Accepted.someTime("dry limit", dryLimitS);
    if (plugWaterS.isPresent()) {
      Accepted.someTime("plug water", plugWaterS.getAsDouble());
    }
  }

  /**
   * The dry limit alone.
   *
   * @param dryLimitS the dry limit alone, s
   * @return the longest rest
   * @throws Impossible if it is not above 0
   */
  public static LongestRest of(double dryLimitS) {
    return new LongestRest(dryLimitS, OptionalDouble.empty());
  }

  /**
   * The dry limit and the water held, whichever is shorter.
   *
   * @param dryLimitS the dry limit, s
   * @param plugWaterS how long the water held lasts, s, see {@link #plugWaterS(double, double,
   *     double, double)}
   * @return the longest rest
   * @throws Impossible if one is not above 0
   */
  public static LongestRest of(double dryLimitS, double plugWaterS) {
    return new LongestRest(dryLimitS, OptionalDouble.of(plugWaterS));
  }

  /**
   * How long the water held by plug and root mat lasts at the peak of the day.
   *
   * @param heldM3 water held, m3
   * @param usableShare share of it the plant can use, 0 to 1
   * @param meanUse the plant's mean use over the day, m3/s
   * @param peakFactor use at noon over that mean, 1 or more
   * @return s
   * @throws Impossible if one is not above 0, the share over 1, or the factor under 1
   */
  public static double plugWaterS(
      double heldM3, double usableShare, double meanUse, double peakFactor) {
    Impossible.unlessPositive("plug water", heldM3);
    Accepted.someShare("usable share", usableShare);
    Impossible.unlessPositive("use", meanUse);
    Impossible.unlessWithin("peak factor", peakFactor, 1, 100, "the peak is at least the mean");
    return Accepted.someTime("plug water", heldM3 * usableShare / (peakFactor * meanUse));
  }

  /** The longest rest, s. */
  public double seconds() {
    return bound() == Bound.DRY_LIMIT ? dryLimitS : plugWaterS.getAsDouble();
  }

  /** The longest rest in whole seconds, rounded down. */
  public double wholeSeconds() {
    return Math.floor(seconds() + Suggestion.WHOLE_S);
  }

  /** Which of the two binds. */
  public Bound bound() {
    return plugWaterS.isPresent() && plugWaterS.getAsDouble() < dryLimitS
        ? Bound.PLUG_WATER
        : Bound.DRY_LIMIT;
  }

  /** Whether a timing rests no longer than this. */
  public boolean allows(Timing timing) {
    return timing.restS() <= seconds();
  }
}

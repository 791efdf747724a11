package leat.energy;

import leat.numeric.Impossible;

/**
 * The timing of least energy, in whole seconds, within a least run, a longest rest and, if asked, a
 * least cycle that spares relay and pump.
 *
 * <pre>mean W = P_controller + P s (+ coil),  rising with s = run/(run + rest)</pre>
 *
 * <p>So the least energy runs as short and rests as long as allowed. Where the coil draws in the
 * pauses and draws more than the pump, the energy falls with the share instead: then the answer
 * runs without pause and no bound binds.
 *
 * <p>Source: derivation above; the test tries every whole second. Bounds: sheet energy.md section
 * 3.
 *
 * @param timing the proposed timing
 * @param runBound what the run follows from
 * @param restBound what the rest follows from; null when the pump should not pause
 * @param leastRun the least run it rests on
 * @param longestRest the longest rest it rests on
 * @param meanW mean power of pump, controller and coil, W
 */
public record Suggestion(
    Timing timing,
    RunBound runBound,
    LongestRest.Bound restBound,
    LeastRun leastRun,
    LongestRest longestRest,
    double meanW) {
  /** Rounding dust below which a time counts as a whole second, s. */
  static final double WHOLE_S = 1e-9;

  /** What bounds the run from below. */
  public enum RunBound {
    /** Fill, film and wetting. */
    LEAST_RUN,
    /** The least cycle: shorter runs would start pump and relay too often. */
    LEAST_CYCLE,
    /** Nothing: running without pause takes the least energy. */
    NONE
  }

  /**
   * The timing of least energy within the two bounds and a least cycle.
   *
   * @param leastRun the least run
   * @param longestRest the longest rest
   * @param draw what draws power
   * @param leastCycleS least run and rest together, s, 0 for no bound; see {@link #cycleForStarts}
   *     and {@link #cycleForRelay}
   * @return the timing of least energy
   * @throws Impossible if the least cycle is negative
   */
  public static Suggestion of(
      LeastRun leastRun, LongestRest longestRest, Draw draw, double leastCycleS) {
    Accepted.time("least cycle", leastCycleS);
    double rest = longestRest.wholeSeconds();
    double need = Math.max(1, leastRun.wholeSeconds());
    if (rest < 1 || draw.meanW(1) < draw.meanW(0)) {
      return new Suggestion(
          new Timing(need, 0),
          rest < 1 ? RunBound.LEAST_RUN : RunBound.NONE,
          rest < 1 ? longestRest.bound() : null,
          leastRun,
          longestRest,
          draw.meanW(1));
    }
    double forCycle = Math.ceil(leastCycleS - rest - WHOLE_S);
    Timing timing = new Timing(Math.max(need, forCycle), rest);
    return new Suggestion(
        timing,
        forCycle > need ? RunBound.LEAST_CYCLE : RunBound.LEAST_RUN,
        longestRest.bound(),
        leastRun,
        longestRest,
        draw.meanW(timing.share()));
  }

  /**
   * The least cycle that starts the pump no oftener than so many times an hour.
   *
   * @param startsPerHour most starts an hour, above 0
   * @return run and rest together, s
   * @throws Impossible if it is not above 0
   */
  public static double cycleForStarts(double startsPerHour) {
    Impossible.unlessPositive("starts an hour", startsPerHour);
    return Accepted.time("starts an hour", 3600 / startsPerHour);
  }
}

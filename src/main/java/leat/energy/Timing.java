package leat.energy;

/**
 * A pump timing: run, rest, and again.
 *
 * <pre>share = run/(run + rest),  starts a day = 86400/(run + rest)</pre>
 *
 * <p>Starts a day are a fraction on purpose: round after multiplying by the season. A rest of 0 is
 * running without pause: share 1, no starts.
 *
 * <p>Source: definitions; sheet energy.md section 1, check values energy-duty.csv.
 *
 * @param runS how long the pump runs, s, above 0
 * @param restS how long it rests, s, 0 or more
 */
public record Timing(double runS, double restS) {
  /**
   * @throws leat.numeric.Impossible if the run is not above 0 or the rest is negative
   */
  public Timing {
    Accepted.run(runS);
    Accepted.time("rest", restS);
  }

  /** Run and rest together, s. */
  public double cycleS() {
    return runS + restS;
  }

  /** Share of the time the pump runs, 0 to 1. */
  public double share() {
    return runS / cycleS();
  }

  /** Whether the pump runs without pause. */
  public boolean withoutPause() {
    return restS == 0;
  }

  /** Mean starts in a second, 1/s; 0 without pause. */
  double startsPerSecond() {
    return withoutPause() ? 0 : 1 / cycleS();
  }

  /** Mean starts a day, a fraction; 0 without pause. */
  public double startsPerDay() {
    return Accepted.DAY_S * startsPerSecond();
  }

  /** Mean starts an hour, a fraction; 0 without pause. */
  public double startsPerHour() {
    return startsPerDay() / 24;
  }

  /**
   * Seconds of running counted in a period that opens with a start. It differs from share times
   * period by less than one cycle.
   *
   * @param periodS length of the period, s
   * @return running time, s
   * @throws leat.numeric.Impossible if the period is negative
   */
  public double countedRunS(double periodS) {
    Accepted.time("period", periodS);
    if (withoutPause()) {
      return periodS;
    }
    double whole = Math.floor(periodS / cycleS());
    double left = Math.max(0, periodS - whole * cycleS());
    return whole * runS + Math.min(left, runS);
  }
}

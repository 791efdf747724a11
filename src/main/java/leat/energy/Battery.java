package leat.energy;

import leat.numeric.Impossible;

/**
 * A battery's figures.
 *
 * <p>Source: depth 50 % lead-acid, 80 % lithium iron phosphate (public guides: 50 to 80 %); reserve
 * 25 % for age and cold is common practice; Peukert exponent flooded 1.2 to 1.35, AGM 1.1 to 1.2,
 * lithium 1.03 to 1.08, lead rated at 20 h (public table); sheet energy.md section 5.
 *
 * @param volts nominal voltage, V
 * @param depth share of the capacity that may be taken, above 0 to 1
 * @param reserve share added to the capacity for age and cold, 0 or more
 * @param peukert Peukert exponent k, 1 to 2; 1 for none
 * @param ratedS discharge time for which the capacity is stated, s
 */
public record Battery(double volts, double depth, double reserve, double peukert, double ratedS) {
  /** Depth of discharge of lead-acid. */
  public static final double LEAD_DEPTH = 0.5;

  /** Depth of discharge of lithium iron phosphate. */
  public static final double LITHIUM_DEPTH = 0.8;

  /** Reserve for age and cold (common practice). */
  public static final double USUAL_RESERVE = 0.25;

  /** Peukert exponent of a flooded lead-acid battery, low end of 1.2 to 1.35. */
  public static final double FLOODED_PEUKERT = 1.2;

  /** Peukert exponent of an absorbed-glass-mat battery, high end of 1.1 to 1.2. */
  public static final double AGM_PEUKERT = 1.2;

  /** Peukert exponent of lithium iron phosphate, middle of 1.03 to 1.08. */
  public static final double LITHIUM_PEUKERT = 1.05;

  /** Rated discharge time of lead batteries, s: 20 h. */
  public static final double LEAD_RATED_S = 20 * 3600.0;

  /** Rated discharge time often stated for lithium, s: 5 h. */
  public static final double LITHIUM_RATED_S = 5 * 3600.0;

  /**
   * @throws Impossible if a figure is outside its range
   */
  public Battery {
    Accepted.volts("battery", volts);
    Impossible.unlessWithin("depth", depth, 0.01, 1, "it lies between 1 and 100 per cent");
    Impossible.unlessWithin("reserve", reserve, 0, 10, "it lies between 0 and 1000 per cent");
    Impossible.unlessWithin("Peukert exponent", peukert, 1, 2, "it lies between 1 and 2");
    Impossible.unlessWithin(
        "rated time", ratedS, 60, 1e7, "it lies between a minute and a hundred days");
  }

  /**
   * Capacity needed without the Peukert effect.
   *
   * @param meanW mean draw, W, above 0
   * @param seconds how long, s
   * @return charge, C (1 Ah is 3600 C), reserve included
   * @throws Impossible if the draw or the time is not above 0
   */
  public double capacityC(double meanW, double seconds) {
    return meanA(meanW) * Accepted.someTime("hours", seconds) / depth * (1 + reserve);
  }

  /**
   * Capacity needed with the Peukert effect; slower than the rated rate it gives no bonus.
   *
   * <pre>C = I H (t/(depth H))^(1/k) (1 + reserve)</pre>
   *
   * @param meanW mean draw, W, above 0
   * @param seconds how long, s
   * @return charge, C, reserve included, never under {@link #capacityC}
   * @throws Impossible if the draw or the time is not above 0
   */
  public double capacityPeukertC(double meanW, double seconds) {
    double plain = capacityC(meanW, seconds);
    double stretched = Math.pow(seconds / (depth * ratedS), 1 / peukert);
    return Math.max(plain, meanA(meanW) * ratedS * stretched * (1 + reserve));
  }

  /**
   * How long this battery lasts: the inverse of {@link #capacityPeukertC}.
   *
   * @param meanW mean draw, W, above 0
   * @param capacityC its capacity, C, above 0
   * @return s
   * @throws Impossible if the draw or the capacity is not above 0
   */
  public double lastsS(double meanW, double capacityC) {
    Impossible.unlessPositive("battery", capacityC);
    Impossible.unlessWithin("battery", capacityC, 0, 3.6e9, "it cannot be over a million Ah");
    double aged = capacityC / (1 + reserve);
    double amperes = meanA(meanW);
    double plain = depth * aged / amperes;
    double stretched = depth * ratedS * Math.pow(aged / (amperes * ratedS), peukert);
    return Math.min(plain, stretched);
  }

  private double meanA(double meanW) {
    Impossible.unlessPositive("power", meanW);
    Impossible.unlessWithin("power", meanW, 1e-6, 1e8, "no battery of a tower feeds that");
    return meanW / volts;
  }
}

package leat.energy;

/**
 * Figures of a pump's life.
 *
 * <p>Source: rated 5 000 to 20 000 h for sleeve-bearing wet rotors, wear of a start up to 36 s of
 * running, both common practice; sheet energy.md section 4.
 *
 * @param lifeS rated life, s of running
 * @param mtbfS mean time between failures, s of running
 * @param startWearS wear of a start as running, s
 */
public record PumpWear(double lifeS, double mtbfS, double startWearS) {
  /** Low end of a small pump's rated life, s: 5 000 h (common practice). */
  public static final double USUAL_LOW_LIFE_S = 5000 * 3600.0;

  /** High end of a small pump's rated life, s: 20 000 h (common practice). */
  public static final double USUAL_HIGH_LIFE_S = 20_000 * 3600.0;

  /** Wear of a start counted by default, s. */
  public static final double DEFAULT_START_WEAR_S = 0;

  /** Most that is counted for a start, s: 0.01 h (common practice). */
  public static final double MOST_START_WEAR_S = 36;

  /**
   * @throws leat.numeric.Impossible if a life is not above 0 or the wear is negative
   */
  public PumpWear {
    Accepted.someTime("pump life", lifeS);
    Accepted.someTime("MTBF", mtbfS);
    Accepted.time("start wear", startWearS);
  }
}

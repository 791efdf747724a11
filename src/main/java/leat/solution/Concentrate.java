package leat.solution;

import leat.numeric.Impossible;

/**
 * A liquid feed as its label describes it: so many millilitres to a litre of finished solution, all
 * parts together, raise the EC by so much.
 *
 * <pre>Q = 1000 g / r</pre>
 *
 * Q is the EC a litre of the concentrate brings when it is thinned, in mS/cm times litres a litre:
 * "EC litres" add up. The rule that EC mixes in proportion to volume is good to a few per cent
 * below 3 mS/cm and reads high above (common practice).
 *
 * <p>Source: mass balance; sheet solution-topup.csv.
 *
 * @param rateMlPerL the label's rate r, all parts together, mL per litre of finished solution
 * @param gainMsCm what that rate adds to pure water, g, mS/cm at 25 C
 */
public record Concentrate(double rateMlPerL, double gainMsCm) {
  private static final double SMALLEST_RATE_ML_L = 1e-3;
  private static final double LARGEST_RATE_ML_L = 1e5;

  /**
   * @throws Impossible if the rate lies outside 0.001 to 100000 mL/L or the gain outside 0 to 200
   *     mS/cm, 0 excluded
   */
  public Concentrate {
    Impossible.unlessWithin(
        "rate",
        rateMlPerL,
        SMALLEST_RATE_ML_L,
        LARGEST_RATE_ML_L,
        "a label's rate lies between 0.001 mL/L and 100 L a litre");
    Impossible.unlessPositive("rate-ec", gainMsCm);
    Accepted.ec("rate-ec", gainMsCm);
  }

  /** EC litres that one litre of the concentrate brings, Q, mS/cm. */
  public double strengthMsCm() {
    return 1000 * gainMsCm / rateMlPerL;
  }
}

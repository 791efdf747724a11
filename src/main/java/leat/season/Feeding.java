package leat.season;

import leat.numeric.Impossible;

/**
 * What is poured: water, concentrate and the EC aimed at.
 *
 * @param waterEcMsCm the water's EC, mS/cm
 * @param targetMsCm the EC aimed at, mS/cm
 * @param rateMlL all parts of the feed together, mL of concentrate in a litre of finished solution
 * @param rateEcMsCm what that rate adds to pure water, mS/cm
 */
public record Feeding(double waterEcMsCm, double targetMsCm, double rateMlL, double rateEcMsCm) {
  /** Litres in a millilitre. */
  static final double LITRES = 0.001;

  /**
   * @throws Impossible if target, rate or rate EC is not above 0, an EC is negative or absurd, or
   *     the concentrate is no stronger than the target or the water
   */
  public Feeding {
    Accepted.ec("water-ec", waterEcMsCm);
    Impossible.unlessPositive("target", Accepted.ec("target", targetMsCm));
    Impossible.unlessPositive("rate", rateMlL);
    Impossible.unlessPositive("rate-ec", Accepted.ec("rate-ec", rateEcMsCm));
    double strength = rateEcMsCm / rateMlL;
    if (!(strength > LITRES * targetMsCm && strength > LITRES * waterEcMsCm)) {
      throw new Impossible(
          "rate-ec", "the concentrate is too weak: it must be stronger than the target");
    }
  }

  /** Salt in a millilitre of concentrate, mS/cm L. */
  double saltPerMl() {
    return rateEcMsCm / rateMlL;
  }

  Feeding target(double msCm) {
    return new Feeding(waterEcMsCm, msCm, rateMlL, rateEcMsCm);
  }
}

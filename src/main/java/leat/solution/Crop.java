package leat.solution;

import leat.numeric.Impossible;

/**
 * A crop's band of EC and pH with its source.
 *
 * <p>Source: each row names its own; see {@link Crops}.
 *
 * @param name lower case, words joined by a hyphen
 * @param ecLowMsCm lower end of the EC band, mS/cm at 25 C
 * @param ecHighMsCm upper end, mS/cm
 * @param phLow lower end of the pH band
 * @param phHigh upper end; equal to the lower one when the source gives a single point
 * @param source where the band stands
 * @param known how it is known: M from memory, P common practice, own for the user's
 */
public record Crop(
    String name,
    double ecLowMsCm,
    double ecHighMsCm,
    double phLow,
    double phHigh,
    String source,
    String known) {

  /**
   * @throws Impossible if a band runs backwards, an EC is negative or a pH lies outside 0 to 14
   */
  public Crop {
    Accepted.ec("ec", ecLowMsCm);
    Accepted.ec("ec", ecHighMsCm);
    Impossible.unlessWithin("ph", phLow, 0, 14, "a pH lies between 0 and 14");
    Impossible.unlessWithin("ph", phHigh, 0, 14, "a pH lies between 0 and 14");
    if (ecLowMsCm > ecHighMsCm || phLow > phHigh) {
      throw new Impossible("crops", "a band runs from its low end to its high end");
    }
  }

  /** Whether the source gives a single pH. */
  public boolean phIsPoint() {
    return phLow == phHigh;
  }

  /** Whether the band is quoted from memory of a source that was not at hand. */
  public boolean isFromMemory() {
    return known.equals("M");
  }

  /** Whether the band is common practice, without a source. */
  public boolean isCommonPractice() {
    return known.equals("P");
  }
}

package leat.season;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * The thirst measured against the season's own forecast of the same days: litres over litres.
 *
 * <p>Source: sheet season.md section 2, "Calibrate"; common practice.
 *
 * @param days days compared: whole and sure ones without rain, -
 * @param measuredL what left the tank on them, L
 * @param modelledL what the season says for them at a thirst of 1, L
 */
public record Calibration(int days, double measuredL, double modelledL) {
  /** Fewer days say nothing. */
  public static final int LEAST_DAYS = 7;

  /** Factors beyond these are a fault of log or plan; held at the ends. */
  public static final Validity HELD = Validity.of("thirst", 0.3, 3);

  /**
   * @throws Impossible if a number is negative
   */
  public Calibration {
    Impossible.ifNegative("measured litres", measuredL);
    Impossible.ifNegative("modelled litres", modelledL);
  }

  /** Mean of what the season says for a day, L. */
  public double modelledMeanL() {
    return modelledL / days;
  }

  /** Whether there are days enough, and the season drinks on them at all. */
  public boolean isEnough() {
    return days >= LEAST_DAYS && modelledL > 0;
  }

  /** Measured over modelled as it is, -. */
  public double ratio() {
    return measuredL / modelledL;
  }

  /** The factor, held within its ends, -. */
  public double factor() {
    return Math.min(Math.max(ratio(), HELD.low(0)), HELD.high(0));
  }

  /** Whether the factor had to be held. */
  public boolean isHeld() {
    return factor() != ratio();
  }
}

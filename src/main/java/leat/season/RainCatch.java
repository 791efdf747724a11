package leat.season;

import leat.numeric.Impossible;

/**
 * What drains rain into the tank: mm x area x share.
 *
 * <p>Source: the salt of rain is common practice; sheet season.md section 3, check values
 * season-rain.csv.
 *
 * @param areaM2 area seen from above, m2; 0 under a roof
 * @param share the share of it that arrives, 0 to 1
 * @param ecMsCm EC of rain, mS/cm
 */
public record RainCatch(double areaM2, double share, double ecMsCm) {
  /** EC of rain when nobody tells it, mS/cm. Common practice. */
  public static final double RAIN_EC_MS_CM = 0.02;

  /** No rain gets in. */
  public static final RainCatch ROOFED = new RainCatch(0, 1, 0);

  /**
   * @throws Impossible if a value is negative or absurd, or the share is over 1
   */
  public RainCatch {
    Accepted.area("rain-area", areaM2);
    Impossible.unlessWithin("rain-share", share, 0, 1, "a share lies between 0 and 100 %");
    Accepted.ec("rain-ec", ecMsCm);
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Reference evapotranspiration from the day's two temperatures, held at 0 or above.
 *
 * <pre>ET0 = 0.0023 (T + 17.8) sqrt(Tmax - Tmin) 0.408 Ra</pre>
 *
 * <p>Against Penman-Monteith: bias +8.5 % in a humid place, -5.5 % in a dry one, -35 to +16 % at
 * two sites of one study; windy dry sites come out low. Sums of 5 days or more are worth more than
 * one day.
 *
 * <p>Source: FAO-56 equation 52; the comparison Fisher and Pringle 2013 and others named in sheet
 * season.md section 1; check values season-fao56.csv, season-seattle.csv, season-monthly.csv.
 */
public final class HargreavesSamani {
  private static final double FACTOR = 0.0023;
  private static final double SHIFT_CELSIUS = 17.8;

  private HargreavesSamani() {}

  /**
   * The evapotranspiration.
   *
   * @param tminCelsius lowest temperature, C
   * @param tmaxCelsius highest temperature, C
   * @param raMjM2 radiation above the air, MJ/m2 a day
   * @return mm a day
   * @throws Impossible if the highest lies under the lowest
   */
  public static double mmDay(double tminCelsius, double tmaxCelsius, double raMjM2) {
    Accepted.range(tminCelsius, tmaxCelsius);
    double mean = (tmaxCelsius + tminCelsius) / 2;
    return Math.max(
        0,
        FACTOR
            * (mean + SHIFT_CELSIUS)
            * Math.sqrt(tmaxCelsius - tminCelsius)
            * PenmanMonteith.MM_PER_MJ
            * raMjM2);
  }
}

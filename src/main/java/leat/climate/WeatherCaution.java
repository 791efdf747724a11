package leat.climate;

import java.time.LocalDate;

/**
 * Something in a row of weather that is possible but hardly so: the caller asks.
 *
 * <p>Source: common practice, no source; the hottest air ever measured is near 57 C, the most rain
 * in a day 1.8 m (from memory).
 *
 * @param kind what is unlikely
 * @param date the first day it is seen
 * @param value the value there, in the unit of its column
 * @param days days on which it is seen
 */
public record WeatherCaution(Kind kind, LocalDate date, double value, int days) {
  /** Over this a highest temperature is unlikely, C: Fahrenheit, most often. */
  public static final double HOT_CELSIUS = 50;

  /** Over this a lowest temperature is unlikely, C: Fahrenheit, most often. */
  public static final double WARM_NIGHT_CELSIUS = 36;

  /** Over this the span of a day is unlikely, C. */
  public static final double WIDE_CELSIUS = 35;

  /** Over this the rain of a day is unlikely, mm: tenths of a millimetre, perhaps. */
  public static final double RAIN_MM = 400;

  /** Over this the wind of a day is unlikely, m/s: km/h, perhaps. */
  public static final double WIND_MS = 30;

  /** Over this the ET0 of a day is unlikely, mm. */
  public static final double ET0_MM = 20;

  /** Over this the radiation of a day is unlikely, MJ/m2: the mean in W/m2, perhaps. */
  public static final double RADIATION_MJ_M2 = 40;

  /** How far a dew point may stand over the highest temperature before it is unlikely, C. */
  public static final double DEW_OVER_CELSIUS = 0.5;

  /** What can be unlikely. */
  public enum Kind {
    HOT,
    WARM_NIGHT,
    WIDE_SPAN,
    RAIN,
    WIND,
    ET0,
    RADIATION,
    DEW_OVER_TMAX,
    /** A row whose date lies before the row above it; rows are put in order. */
    OUT_OF_ORDER
  }

  /** Whether it looks like degrees Fahrenheit in a column of Celsius. */
  public boolean looksFahrenheit() {
    return kind == Kind.HOT || kind == Kind.WARM_NIGHT;
  }
}

package leat.climate;

/** What a day's vapour pressure rests on, best first. */
public enum HumidityBy {
  DEW_POINT,
  /** Highest and lowest relative humidity. */
  BOTH,
  /** Highest relative humidity. */
  HIGHEST,
  /** Mean relative humidity. */
  MEAN,
  /** No humidity known: the dew point is taken as the lowest temperature. */
  TMIN
}

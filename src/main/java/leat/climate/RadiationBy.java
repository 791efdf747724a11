package leat.climate;

/** What a day's radiation on the ground rests on, best first. */
public enum RadiationBy {
  MEASURED,
  SUN_HOURS,
  /** The day's span of temperature. */
  TEMPERATURE,
  /** Nothing known. */
  NONE
}

package leat.climate;

import java.time.LocalDate;

/**
 * Days that are missing in weather.
 *
 * @param from first missing day
 * @param to last missing day, included
 */
public record WeatherGap(LocalDate from, LocalDate to) {
  /** Number of missing days. */
  public int days() {
    return (int) (to.toEpochDay() - from.toEpochDay() + 1);
  }
}

package leat.climate;

import java.time.LocalDate;

/**
 * Something in a row of weather that cannot be.
 *
 * <p>Source: sheet season.md section 1, "Weather file".
 *
 * @param kind what is wrong
 * @param date the day
 * @param row place in the list of rows, from 0
 * @param column the column as weather files name it, such as "tmax_C"
 * @param value the value there; NaN when it is missing
 */
public record WeatherProblem(Kind kind, LocalDate date, int row, String column, double value) {
  /** What can be wrong. */
  public enum Kind {
    /** The highest temperature lies under the lowest; the value is the highest. */
    TMAX_UNDER_TMIN,
    /** Outside -60 to 60 C. */
    TEMPERATURE,
    /** Rain, sun, radiation, wind, ET0 or litres below 0. */
    NEGATIVE,
    /** Above what is possible: humidity over 100 %, sun over 24 h, radiation over 50 MJ/m2. */
    TOO_HIGH,
    /** A humidity of 0 or less. */
    HUMIDITY,
    /** The highest humidity lies under the lowest; the value is the highest. */
    HUMIDITY_TURNED,
    /** A date that an earlier row has already. */
    DATE_TWICE,
    /** No temperatures, and no litres of the plants in every row either. */
    NO_TEMPERATURES,
    /** Dates more than 300 years apart, or outside the years 1800 to 2999. */
    YEARS
  }

  /** One clause for a caller that tells only the first: it names the date. */
  public String reason() {
    return switch (kind) {
      case TMAX_UNDER_TMIN -> on("the highest temperature lies under the lowest");
      case TEMPERATURE -> on("air lies between -60 and 60 C");
      case NEGATIVE -> on(column.concat(" cannot be negative"));
      case TOO_HIGH -> on(column.concat(" is higher than can be"));
      case HUMIDITY -> on("a relative humidity lies above 0, up to 100 per cent");
      case HUMIDITY_TURNED -> on("the highest humidity lies under the lowest");
      case DATE_TWICE -> on("this date is there twice");
      case NO_TEMPERATURES -> on("temperatures are needed, or litres of the plants in every row");
      case YEARS -> on("the rows must lie within 300 years, from 1800 to 2999");
    };
  }

  private String on(String reason) {
    return date.toString().concat(": ").concat(reason);
  }
}

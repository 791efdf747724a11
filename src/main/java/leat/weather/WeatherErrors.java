package leat.weather;

import java.util.List;
import leat.climate.LeftOutYear;
import leat.climate.WeatherProblem;
import leat.plan.Problem;
import leat.quantity.Nearest;
import leat.quantity.NumberText;

/** Messages about a weather file. */
public final class WeatherErrors {
  private WeatherErrors() {}

  private static String place(String file, int line, String column) {
    return file + ":" + line + ": " + column;
  }

  /** A file that is too large to be daily weather. */
  public static Problem tooLarge(String file) {
    return new Problem(
        "weather-too-large", null, file, "it is larger than 16 MB: is it hourly weather?");
  }

  /** A file without a row. */
  public static Problem empty(String file) {
    return new Problem(
        "weather-empty",
        null,
        file,
        "there is no day in it; it wants a header such as date,tmin_C,tmax_C,rain_mm and a row a day");
  }

  /** Quotes that do not close. */
  public static Problem broken(String file) {
    return new Problem(
        "weather-broken", null, file, "a quoted cell is not closed, or text follows its quote");
  }

  /** A column that is not there. */
  public static Problem noColumn(String file, String key, String column, List<String> there) {
    String near = Nearest.of(column, there);
    return new Problem(
        "weather-no-column",
        null,
        file,
        "no column \""
            + column
            + "\""
            + (near == null ? "" : "; did you mean \"" + near + "\"?")
            + "; it has "
            + String.join(", ", there)
            + "; name it in the plan with site.weather_columns: {"
            + key
            + ": NAME}");
  }

  /** A row with commas in its numbers and between its columns. */
  public static Problem decimalCommas(String file, int line) {
    return new Problem(
        "weather-decimal-comma",
        null,
        file + ":" + line,
        "more cells than columns: numbers with a decimal comma want a semicolon between columns");
  }

  /** A date in another form. */
  public static Problem notADate(String file, int line, String column, String typed) {
    return new Problem(
        "weather-date",
        null,
        place(file, line, column),
        "dates are written as 2027-03-28, year, month, day; got \"" + typed + "\"");
  }

  /** A cell that is no number. */
  public static Problem notANumber(String file, int line, String column, String typed) {
    return new Problem(
        "weather-number",
        null,
        place(file, line, column),
        "a bare number is wanted, such as 12.5, or an empty cell; got \"" + typed + "\"");
  }

  /** What cannot be. */
  public static Problem impossible(String file, int line, String column, WeatherProblem problem) {
    String got =
        Double.isNaN(problem.value()) ? "" : "; got " + NumberText.shortest(problem.value());
    String ask = looksFahrenheit(problem) ? ": are these degrees Fahrenheit?" : "";
    return new Problem(
        "weather-impossible", null, place(file, line, column), problem.reason() + got + ask);
  }

  private static boolean looksFahrenheit(WeatherProblem problem) {
    return problem.kind() == WeatherProblem.Kind.TEMPERATURE && problem.value() > 0;
  }

  /** A hole within the season. */
  public static Problem gap(String file, LeftOutYear year) {
    return new Problem(
        "weather-gap",
        null,
        file,
        year.missing().days()
            + " days in a row are missing, "
            + year.missing().from()
            + " to "
            + year.missing().to()
            + ": gaps of up to 3 days are filled, longer ones want their rows");
  }

  /** No year of the file covers the season. */
  public static Problem noYear(String file, String from, String to, List<LeftOutYear> leftOut) {
    StringBuilder missing = new StringBuilder();
    for (int i = 0; i < leftOut.size() && i < 3; i++) {
      LeftOutYear one = leftOut.get(i);
      missing
          .append(i == 0 ? "; missing " : ", ")
          .append(one.missing().from())
          .append(" to ")
          .append(one.missing().to());
    }
    return new Problem(
        "weather-no-year",
        null,
        file,
        "no year in it covers the season from "
            + from
            + " to "
            + to
            + ", by month and day"
            + missing);
  }
}

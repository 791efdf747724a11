package leat.command.run;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.climate.SeasonEt0;
import leat.climate.WeatherCaution;
import leat.climate.WeatherGap;
import leat.system.SeasonOf;

/** What is odd about a weather file: unlikely values, filled gaps, days without rain. */
final class SeasonWeatherWords {
  private static final Column DAY = Column.plain("day", "day");
  private static final Column DAYS = Column.plain("days", "days");
  private static final Column VALUE = Column.number("value", "value", 3);

  private SeasonWeatherWords() {}

  static void write(Answer answer, SeasonOf season) {
    List<WeatherCaution> cautions = season.file().cautions();
    for (int i = 0; i < cautions.size(); i++) {
      caution(answer, cautions.get(i));
    }
    gaps(answer, season.file().filled());
    boolean catches = season.tank().rain().areaM2() > 0;
    if (catches && !season.weather(0).knowsRain()) {
      answer.mind("no-rain-column", "the weather file has no rain: none is counted.");
    }
    oneMethod(answer, season.et0(0));
  }

  private static void gaps(Answer answer, List<WeatherGap> filled) {
    if (!filled.isEmpty()) {
      Row row = Row.aside(DAY, DAYS);
      row.set(DAY, filled.get(0).from().toString()).set(DAYS, filled.size());
      answer.mind(
          "gaps-filled",
          row,
          filled.size() == 1
              ? "the rows lack up to 3 days from {day} on: their weather is taken as between the days around, without rain."
              : "the rows lack up to 3 days in {days} places, first from {day} on: their weather is taken as between the days around, without rain.");
    }
  }

  private static void oneMethod(Answer answer, SeasonEt0 et0) {
    if (et0 != null && et0.betterDays() > 0) {
      Row row = Row.aside(DAYS);
      row.set(DAYS, et0.betterDays());
      answer.mind(
          "one-method",
          row,
          "{days} days hold more than the others (wind, sun, humidity or evaporation): all are reckoned by what every day holds, so that they compare.");
    }
  }

  private static void caution(Answer answer, WeatherCaution caution) {
    Row row = Row.aside(DAY, DAYS, VALUE);
    row.set(DAY, caution.date().toString()).set(DAYS, caution.days());
    if (!Double.isNaN(caution.value())) {
      row.set(VALUE, caution.value());
    }
    if (caution.looksFahrenheit()) {
      answer.mind(
          "looks-fahrenheit",
          row,
          caution.days() == 1
              ? "{value} C on {day}: are these degrees Fahrenheit?"
              : "{value} C on {day}, and {days} such days: are these degrees Fahrenheit?");
      return;
    }
    if (caution.kind() == WeatherCaution.Kind.OUT_OF_ORDER) {
      answer.mind(
          "weather-order",
          row,
          "the rows are out of order from {day} on: they were sorted by date.");
    } else {
      answer.mind("weather-unlikely", row, unlikely(caution));
    }
  }

  private static String unlikely(WeatherCaution caution) {
    switch (caution.kind()) {
      case RAIN:
        return "{value} mm of rain on {day}: are these tenths of a millimetre?";
      case WIND:
        return "a mean wind of {value} m/s on {day}: is it in km/h?";
      case RADIATION:
        return "{value} MJ/m2 of sun on {day}: is it a mean in W/m2?";
      case ET0:
        return "{value} mm of evaporation on {day}: is it that of an open pan?";
      case DEW_OVER_TMAX:
        return "a dew point of {value} C on {day}, higher than the warmest air of that day: look at the row.";
      default:
        return "{value} degrees between the coldest and the warmest air of {day}: look at the row.";
    }
  }
}

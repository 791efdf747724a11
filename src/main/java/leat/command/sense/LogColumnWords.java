package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.log.EventKind;
import leat.log.LogCell;
import leat.log.LogEvent;
import leat.plan.Section;

/** What to mind about the columns of a log: of another unit, passed over, or not told enough. */
final class LogColumnWords {
  private static final Column NAME = Column.plain("column", "column");

  private LogColumnWords() {}

  /** A column of which nothing can be used is of another unit, or of another thing. */
  static void tell(Answer answer, LogStory story) {
    for (LogCell cell : LogCell.all()) {
      String name = story.input.allBad(cell);
      if (name != null) {
        answer.mind("bad-column", Row.aside(NAME).set(NAME, name), badColumn(cell));
      }
      String other = story.input.passedOver(cell);
      if (other != null && !passedOver(cell).isEmpty()) {
        answer.mind("column-passed-over", Row.aside(NAME).set(NAME, other), passedOver(cell));
      }
    }
    rain(answer, story);
  }

  private static String passedOver(LogCell cell) {
    switch (cell) {
      case EC:
        return "the column {column} is passed over: the EC is looked for in ec_mS_cm, in mS/cm. If it is that by another name: log: {{ec: {column}}";
      case CELSIUS:
        return "the column {column} is passed over: the temperature is looked for in water_C, in Celsius. If it is that by another name: log: {{temperature: {column}}";
      case RAIN:
        return "the column {column} is passed over: rain is looked for in rain_mm, in mm since the row before. If it is that by another name: log: {{rain: {column}}";
      default:
        return "";
    }
  }

  private static String badColumn(LogCell cell) {
    switch (cell) {
      case EC:
        return "no cell of {column} can be an EC in mS/cm: is it in uS/cm, or empty? EC is left out.";
      case CELSIUS:
        return "no cell of {column} can be a solution's temperature in Celsius: is it in Fahrenheit, or is the thermometer off?";
      case PUMP:
        return "no cell of {column} is 0 or 1: the pump is taken to run by the plan's timing.";
      case RAIN:
        return "no cell of {column} is a depth in mm of 0 or more: rain is seen in level and EC alone.";
      default:
        return "no cell of {column} can be a reading of its sensor.";
    }
  }

  /** Rain by a gauge is counted in full, unless the plan says how much of it arrives. */
  private static void rain(Answer answer, LogStory story) {
    Section tank = story.plan.section("tank");
    if (tank.has("rain_share")) {
      return;
    }
    for (LogEvent e : story.report.events()) {
      if (e.kind() == EventKind.RAIN && e.mm() == e.mm()) {
        answer.mind(
            "rain-share",
            "rain is counted as if all that falls on tank.rain_area came into the tank; season counts less. Say how much does: tank.rain_share.");
        return;
      }
    }
  }
}

package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.log.LogAlarm;

/** An alarm in one line: its name for a script, then what it means and what to do first. */
public final class LogAlarmWords {
  private static final Column WHEN = Column.plain("when", "when");
  private static final Column WHY = Column.plain("why", "why");

  private static final Column COLUMN = Column.plain("column", "column");
  private static final Column AS_READ = Column.number("as_read", "as it reads", 3);
  private static final Column IN_OHM = Column.of("in_ohm", "in ohm", Show.OHM);

  private final LogStory story;
  private final Row figures = Row.aside(LogSummary.ALL);

  LogAlarmWords(LogStory story) {
    this.story = story;
    LogSummary.fill(figures, story);
  }

  Phrase line(LogAlarm alarm) {
    return Phrase.of(alarm.kind().word()).add(": ").add(words(alarm));
  }

  Phrase words(LogAlarm alarm) {
    Row row = Row.aside(WHEN, WHY).with(kiloOhm(story));
    row.set(WHEN, story.dates.moment(alarm.since()));
    row.set(WHY, alarm.cause());
    return Answer.filled(row.with(figures), template(alarm.kind(), !alarm.cause().isEmpty()));
  }

  /** The column that reads like kilo-ohm, with its last reading as it is and as it should be. */
  static Row kiloOhm(LogStory story) {
    Row row = Row.aside(COLUMN, AS_READ, IN_OHM);
    row.set(COLUMN, story.input.readingColumn());
    row.set(AS_READ, LogSummary.known(story.report.kiloOhm()));
    return row.set(IN_OHM, LogSummary.known(story.report.kiloOhmInOhm()));
  }

  /** What an alarm means, without when and how much. */
  public static String meaning(LogAlarm.Kind kind) {
    switch (kind) {
      case NO_WATER_AT_CAP:
        return "no water at the cap";
      case LEAK:
        return "water is lost";
      case SENSOR_OPEN:
        return "the sender's wire is open";
      case SENSOR_SHORT:
        return "the sender's wires touch";
      case STUCK_FLOAT:
        return "the float does not move";
      case BELOW_LOW:
        return "below the refill mark";
      case DAYS_LEFT:
        return "few days to the refill mark";
      case EC_OUT_OF_BAND:
        return "the EC is out of its band";
      default:
        return "no new row in the log";
    }
  }

  /** The first thing to do. */
  public static String first(LogAlarm.Kind kind) {
    switch (kind) {
      case NO_WATER_AT_CAP:
        return "look at the pump now, roots dry out";
      case LEAK:
        return "look for a puddle, then at hoses and drain";
      case SENSOR_OPEN:
        return "look at its plug";
      case SENSOR_SHORT:
        return "look for water in its plug";
      case STUCK_FLOAT:
        return "tap the sender";
      case BELOW_LOW:
        return "fill up";
      case DAYS_LEFT:
        return "have water and feed at hand";
      case EC_OUT_OF_BAND:
        return "see leat topup";
      default:
        return "look at the logger";
    }
  }

  private static String template(LogAlarm.Kind kind, boolean cause) {
    switch (kind) {
      case NO_WATER_AT_CAP:
        return "no water at the cap since {when} ({why}): " + first(kind);
      case LEAK:
        return cause
            ? "water is lost since {when} ({why}): " + first(kind)
            : "water is lost since {when}: " + first(kind);
      case SENSOR_OPEN:
        return "the sender's wire is open since {when}: " + first(kind);
      case SENSOR_SHORT:
        return cause
            ? "{column} reads like kilo-ohm, not ohm, since {when}: let the logger write ohm, {in_ohm!} where it writes {as_read}; if it does so already, the sender's wires touch"
            : "the sender's wires touch since {when}: " + first(kind);
      case STUCK_FLOAT:
        return "the float has not moved since {when}, though the plants drink: " + first(kind);
      case BELOW_LOW:
        return "below the refill mark since {when}, {volume_L} left: " + first(kind);
      case DAYS_LEFT:
        return "{days_left} days to the refill mark, by {topup_by} at the latest";
      case EC_OUT_OF_BAND:
        return "the EC is {ec_mS_cm}, out of the target's band since {when}: " + first(kind);
      default:
        return cause
            ? "rows come without a reading of the level since {when}: look at the sender's column and its plug"
            : "no new row since {when}: " + first(kind);
    }
  }
}

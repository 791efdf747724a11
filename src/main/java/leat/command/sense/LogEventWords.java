package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.log.EventKind;
import leat.log.LogEvent;

/** One event in one line. */
final class LogEventWords {
  private static final Column TO = Column.plain("to", "to");

  private final LogDates dates;

  LogEventWords(LogDates dates) {
    this.dates = dates;
  }

  void tell(Answer answer, LogEvent e) {
    Row words = Row.aside(TO);
    words.set(TO, e.isOpen() ? "goes on" : "to " + dates.until(e.start(), e.end()));
    Row row = LogRowsTold.event(Row.aside(LogRowsTold.EVENTS), e, dates).with(words);
    answer.figure(dates.moment(e.start()), row, name(e.kind()), "{to}", more(e));
  }

  private static String more(LogEvent e) {
    boolean volume = e.volume() == e.volume();
    boolean cause = !e.cause().isEmpty();
    if (e.kind() == EventKind.RAIN && volume) {
      return e.mm() == e.mm() ? "{litres} from {mm} mm" : "{litres}";
    }
    if (volume) {
      return cause ? "{litres}, {cause}" : "{litres}";
    }
    return cause ? "{cause}" : "";
  }

  private static String name(EventKind kind) {
    switch (kind) {
      case REFILL:
        return "filled up";
      case SOLUTION_CHANGE:
        return "solution changed";
      case RAIN:
        return "rain";
      case LEAK:
        return "water lost";
      case PUMP_FAILURE:
        return "no water at the cap";
      case STUCK_FLOAT:
        return "float stuck";
      case SENSOR_OPEN:
        return "sender open";
      case SENSOR_SHORT:
        return "sender shorted";
      default:
        return "no rows";
    }
  }
}

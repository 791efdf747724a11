package leat.command.sense;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.log.EventKind;
import leat.log.LogEvent;
import leat.log.LogReport;

/** Events of a log, one in one line. */
final class LogEventWords {
  private static final Column TO = Column.plain("to", "to");

  private static final int WEEK = 7;

  /** Events of a week that are told one by one. */
  private static final int MOST_EVENTS = 12;

  private final LogDates dates;

  LogEventWords(LogDates dates) {
    this.dates = dates;
  }

  /** What happened in the last days, one by one, the latest of them. */
  void week(Answer answer, LogReport report) {
    List<LogEvent> late = late(report);
    if (late.isEmpty()) {
      answer.figure("last 7 days", Phrase.of("nothing happened"));
      return;
    }
    answer.block(Phrase.of("In the last 7 days:"));
    int first = Math.max(0, late.size() - MOST_EVENTS);
    for (int i = first; i < late.size(); i++) {
      tell(answer, late.get(i));
    }
    if (first > 0) {
      answer.figure("before", Phrase.of().count(first).add(" more: leat log --events"));
    }
  }

  private static List<LogEvent> late(LogReport report) {
    long from = report.daysBefore(WEEK);
    List<LogEvent> late = new ArrayList<>();
    for (LogEvent e : report.events()) {
      if (e.end() >= from) {
        late.add(e);
      }
    }
    return late;
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

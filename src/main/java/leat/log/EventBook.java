package leat.log;

import java.util.ArrayList;
import java.util.List;

/** The events found, and the days they make unsure. */
final class EventBook {
  private final List<LogEvent> events = new ArrayList<>();
  private final DayBook days;

  EventBook(DayBook days) {
    this.days = days;
  }

  LogEvent add(EventKind kind, long start, long end) {
    LogEvent e = new LogEvent(kind, start, end);
    events.add(e);
    return e;
  }

  void doubt(LogEvent e) {
    days.doubt(e.start(), e.end);
  }

  /** Water that was seen afterwards to have come in, by hand or as rain. */
  void cameIn(EventKind kind, long at, double volume) {
    days.cameIn(at, kind == EventKind.RAIN ? volume : 0, kind == EventKind.RAIN ? 0 : volume);
  }

  void remove(LogEvent e) {
    events.remove(e);
  }

  /** All, in the order of their starts. */
  List<LogEvent> sorted() {
    events.sort(
        new java.util.Comparator<LogEvent>() {
          @Override
          public int compare(LogEvent a, LogEvent b) {
            int c = Long.compare(a.start(), b.start());
            return c != 0 ? c : Integer.compare(a.kind().ordinal(), b.kind().ordinal());
          }
        });
    return events;
  }

  List<LogEvent> all() {
    return events;
  }
}

package leat.season.ical;

import java.time.LocalDate;
import java.util.List;

/**
 * Writes a calendar of whole-day events. The same events give the same bytes: the time stamp is
 * midnight UTC of a day that the caller names, not the clock.
 *
 * <p>Source: RFC 5545, sections 3.1 (lines end with CR LF and fold at 75 octets), 3.3.11 (escapes),
 * 3.6.1 (events; DTEND is the day after the last).
 *
 * <p>Source: RFC 5545, which folds lines at 75 octets.
 */
public final class Calendar {
  private static final String END_OF_LINE = "\r\n";

  /** Octets of a line without its end. */
  private static final int LONGEST_LINE = 75;

  private Calendar() {}

  /**
   * The calendar as text; its bytes are UTF-8.
   *
   * @param product who writes it, for PRODID
   * @param name the calendar's name as a reader shows it, or empty
   * @param stamp the day of the time stamp
   * @param events at least one: the standard knows no empty calendar
   * @return the text
   * @throws IllegalArgumentException if there is no event
   */
  public static String text(String product, String name, LocalDate stamp, List<Event> events) {
    if (events.isEmpty()) {
      throw new IllegalArgumentException("a calendar needs an event");
    }
    StringBuilder out = new StringBuilder();
    line(out, "BEGIN:VCALENDAR");
    line(out, "VERSION:2.0");
    line(out, "PRODID:" + escaped(product));
    line(out, "CALSCALE:GREGORIAN");
    if (!name.isEmpty()) {
      line(out, "X-WR-CALNAME:" + escaped(name));
    }
    for (Event one : events) {
      event(out, stamp, one);
    }
    line(out, "END:VCALENDAR");
    return out.toString();
  }

  private static void event(StringBuilder out, LocalDate stamp, Event one) {
    line(out, "BEGIN:VEVENT");
    line(out, "UID:" + escaped(one.uid()));
    line(out, "DTSTAMP:" + digits(stamp) + "T000000Z");
    line(out, "DTSTART;VALUE=DATE:" + digits(one.first()));
    line(out, "DTEND;VALUE=DATE:" + digits(one.first().plusDays(one.days())));
    line(out, "SUMMARY:" + escaped(one.summary()));
    if (!one.description().isEmpty()) {
      line(out, "DESCRIPTION:" + escaped(one.description()));
    }
    line(out, "TRANSP:TRANSPARENT");
    line(out, "END:VEVENT");
  }

  private static String digits(LocalDate date) {
    StringBuilder out = new StringBuilder();
    padded(out, date.getYear(), 4);
    padded(out, date.getMonthValue(), 2);
    padded(out, date.getDayOfMonth(), 2);
    return out.toString();
  }

  private static void padded(StringBuilder out, int number, int width) {
    String digits = Integer.toString(number);
    for (int i = digits.length(); i < width; i++) {
      out.append('0');
    }
    out.append(digits);
  }

  /**
   * Backslash, comma, semicolon and line feed as the standard wants; other controls are dropped.
   */
  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        out.append("\\n");
      } else if (c == '\\' || c == ',' || c == ';') {
        out.append('\\').append(c);
      } else if (c == '\t' || c >= ' ' && c != 0x7f) {
        out.append(lone(text, i) ? '\ufffd' : c);
      }
    }
    return out.toString();
  }

  /** Whether a half of a pair stands alone: no UTF-8 can hold it. */
  private static boolean lone(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
  }

  /** One line, folded between characters, never within one. */
  private static void line(StringBuilder out, String text) {
    int octets = 0;
    int i = 0;
    while (i < text.length()) {
      int point = text.codePointAt(i);
      int width = width(point);
      if (octets + width > LONGEST_LINE) {
        out.append(END_OF_LINE).append(' ');
        octets = 1;
      }
      out.appendCodePoint(point);
      octets += width;
      i += Character.charCount(point);
    }
    out.append(END_OF_LINE);
  }

  /** Octets of a character in UTF-8. */
  private static int width(int point) {
    if (point < 0x80) {
      return 1;
    }
    if (point < 0x800) {
      return 2;
    }
    return point < 0x10000 ? 3 : 4;
  }
}

package leat.season.ical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** What we write, a calendar library (biweekly) reads; RFC 5545 by its letters besides. */
class CalendarTest {
  private static final LocalDate STAMP = LocalDate.of(2027, 4, 10);
  private static final LocalDate DAY = LocalDate.of(2027, 12, 31);

  private static String text(Event... events) {
    return Calendar.text("-//leat//sow//EN", "Sowing", STAMP, List.of(events));
  }

  private static VEvent readBack(Event event) {
    ICalendar read = Biweekly.parse(text(event)).first();
    assertThat(read.validate(ICalVersion.V2_0).isEmpty())
        .as(read.validate(ICalVersion.V2_0).toString())
        .isTrue();
    assertThat(read.getEvents()).hasSize(1);
    return read.getEvents().get(0);
  }

  @Test
  void aDayIsReadBack() {
    VEvent e = readBack(Event.on("sow-1@leat", DAY, "Sow 6 lettuce", "for the tower, 4 pots"));
    assertThat(e.getUid().getValue()).isEqualTo("sow-1@leat");
    assertThat(e.getSummary().getValue()).isEqualTo("Sow 6 lettuce");
    assertThat(e.getDescription().getValue()).isEqualTo("for the tower, 4 pots");
    assertThat(e.getDateStart().getValue().hasTime()).isFalse();
    assertThat(e.getDateStart().getValue().getRawComponents().getYear()).isEqualTo(2027);
    assertThat(e.getDateStart().getValue().getRawComponents().getMonth()).isEqualTo(12);
    assertThat(e.getDateStart().getValue().getRawComponents().getDate()).isEqualTo(31);
    assertThat(e.getDateEnd().getValue().hasTime()).isFalse();
    assertThat(e.getDateEnd().getValue().getRawComponents().getYear()).isEqualTo(2028);
    assertThat(e.getDateEnd().getValue().getRawComponents().getMonth()).isEqualTo(1);
    assertThat(e.getDateEnd().getValue().getRawComponents().getDate()).isEqualTo(1);
    assertThat(e.getDateTimeStamp().getValue().toInstant())
        .isEqualTo(STAMP.atStartOfDay(ZoneOffset.UTC).toInstant());
  }

  @Test
  void daysInARowEndTheDayAfter() {
    String out = text(new Event("n@leat", DAY, 3, "Neighbour", ""));
    assertThat(out).contains("DTSTART;VALUE=DATE:20271231\r\nDTEND;VALUE=DATE:20280103\r\n");
    assertThat(out).doesNotContain("DESCRIPTION");
  }

  @Test
  void theSameEventsGiveTheSameBytes() {
    Event one = Event.on("a@leat", DAY, "Change", "");
    assertThat(text(one)).isEqualTo(text(Event.on("a@leat", DAY, "Change", "")));
    assertThat(text(one))
        .isEqualTo(
            "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//leat//sow//EN\r\nCALSCALE:GREGORIAN\r\n"
                + "X-WR-CALNAME:Sowing\r\nBEGIN:VEVENT\r\nUID:a@leat\r\n"
                + "DTSTAMP:20270410T000000Z\r\nDTSTART;VALUE=DATE:20271231\r\n"
                + "DTEND;VALUE=DATE:20280101\r\nSUMMARY:Change\r\nTRANSP:TRANSPARENT\r\n"
                + "END:VEVENT\r\nEND:VCALENDAR\r\n");
  }

  @Property(tries = 500)
  void anyTextSurvives(@ForAll @StringLength(min = 1, max = 200) String typed) {
    String summary = "x" + typed + "y";
    VEvent e = readBack(Event.on("a@leat", DAY, summary, summary + "\n2, 3; \\n"));
    assertThat(e.getSummary().getValue()).isEqualTo(kept(summary));
    assertThat(e.getDescription().getValue().replace("\r\n", "\n"))
        .isEqualTo(kept(summary) + "\n2, 3; \\n");
  }

  /** Controls but tab and line feed are dropped, halves of a pair become a mark. */
  private static String kept(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .filter(c -> c == '\n' || c == '\t' || c >= ' ' && c != 0x7f)
        .forEach(c -> out.appendCodePoint(c >= 0xd800 && c <= 0xdfff ? 0xfffd : c));
    return out.toString();
  }

  @Property(tries = 500)
  void linesFoldAt75Octets(@ForAll @StringLength(min = 1, max = 300) String typed) {
    String out = text(Event.on("a@leat", DAY, "é" + typed, ""));
    byte[] bytes = out.getBytes(StandardCharsets.UTF_8);
    assertThat(new String(bytes, StandardCharsets.UTF_8)).isEqualTo(out);
    String[] lines = out.split("\r\n", -1);
    assertThat(lines[lines.length - 1]).isEmpty();
    for (String line : lines) {
      assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75);
      assertThat(line).doesNotContain("\r", "\n");
    }
  }

  @Test
  void aLineIsFoldedOnlyWhenItMust() {
    String fits = "s".repeat(75 - "SUMMARY:".length());
    assertThat(text(Event.on("a@leat", DAY, fits, ""))).contains("SUMMARY:" + fits + "\r\n");
    assertThat(text(Event.on("a@leat", DAY, fits + "t", "")))
        .contains("SUMMARY:" + fits + "\r\n t\r\n");
  }

  /** RFC 3629: one octet up to 7F, two up to 7FF, three up to FFFF, then four. */
  @Test
  void eachFoldedLineIsAsLongAsItMayBe() {
    for (int point : new int[] {0x7e, 0x80, 0x7ff, 0x800, 0xffff, 0x10000, 0x10ffff}) {
      String one = new String(Character.toChars(point));
      int octets = one.getBytes(StandardCharsets.UTF_8).length;
      String out = text(Event.on("a@leat", DAY, one.repeat(200), ""));
      String folded = out.substring(out.indexOf("SUMMARY"), out.indexOf("\r\nTRANSP"));
      String[] lines = folded.split("\r\n");
      for (int i = 0; i + 1 < lines.length; i++) {
        assertThat(lines[i].getBytes(StandardCharsets.UTF_8).length)
            .as("U+%X line %d", point, i)
            .isBetween(76 - octets, 75);
      }
      assertThat(folded.replace("\r\n ", "")).isEqualTo("SUMMARY:" + one.repeat(200));
    }
  }

  /** U+FFFD stands for half a pair: no UTF-8 can hold that. */
  @Test
  void halfAPairBecomesAMark() {
    for (String[] typed :
        new String[][] {
          {"\ud83c\udf31", "\ud83c\udf31"},
          {"a\ud83c", "a\ufffd"},
          {"\udf31a", "\ufffda"},
          {"\ud83ca", "\ufffda"},
          {"a\udf31", "a\ufffd"},
          {"\ud83c\ud83c\udf31\udf31", "\ufffd\ud83c\udf31\ufffd"}
        }) {
      assertThat(text(Event.on("a@leat", DAY, typed[0], "")))
          .contains("\r\nSUMMARY:" + typed[1] + "\r\n");
    }
  }

  @Test
  void nothingIsNoCalendar() {
    assertThatThrownBy(() -> text()).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Event.on("", DAY, "x", ""))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Event("a", DAY, 0, "x", ""))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

package leat.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times as loggers write them, each against the moment that java.time's own parser gives. */
class LogTimesTest {
  private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");

  private static LogTimes times() {
    return new LogTimes(VIENNA, "time");
  }

  private static LogTimes.Status status(String text) {
    return times().read(text);
  }

  @ParameterizedTest
  @CsvSource({
    "2027-06-01T10:30, 2027-06-01T08:30:00Z",
    "2027-06-01t10:30:15, 2027-06-01T08:30:15Z",
    "2027-06-01 10:30:15.25, 2027-06-01T08:30:15.250Z",
    "'2027-06-01T10:30:15,5', 2027-06-01T08:30:15.500Z",
    "2027-06-01T10:30:15.1239, 2027-06-01T08:30:15.123Z",
    "2027-01-01T10:30, 2027-01-01T09:30:00Z",
    "2027-06-01T10:30Z, 2027-06-01T10:30:00Z",
    "2027-06-01T10:30:15.75z, 2027-06-01T10:30:15.750Z",
    "2027-06-01 10:30:15 UTC, 2027-06-01T10:30:15Z",
    "2027-06-01T10:30+02, 2027-06-01T08:30:00Z",
    "2027-06-01T10:30:00+0230, 2027-06-01T08:00:00Z",
    "2027-06-01T10:30:00-03:45, 2027-06-01T14:15:00Z",
    "2027-06-01T10:30:00 +18:00, 2027-05-31T16:30:00Z",
    "2027-06-01T10:30:00+00:59, 2027-06-01T09:31:00Z",
    "2027-06-01T00:00:00Z, 2027-06-01T00:00:00Z",
    "2027-06-01T23:59:59Z, 2027-06-01T23:59:59Z",
    "2027-06-01T23:59:60Z, 2027-06-02T00:00:00Z",
    "2000-01-01T00:00:00Z, 2000-01-01T00:00:00Z",
    "2000-02-29T12:00Z, 2000-02-29T12:00:00Z",
    "2028-02-29T12:00Z, 2028-02-29T12:00:00Z",
    "2027-04-30T12:00Z, 2027-04-30T12:00:00Z",
    "2027-12-31T12:00Z, 2027-12-31T12:00:00Z",
    "1800000000, 2027-01-15T08:00:00Z",
    "1800000000.5, 2027-01-15T08:00:00.500Z",
    "1800000000250, 2027-01-15T08:00:00.250Z",
    "000000000000001800000000, 2027-01-15T08:00:00Z",
    "99999999999, 5138-11-16T09:46:39Z",
    "100000000000000, 5138-11-16T09:46:40Z",
  })
  void moments(String text, Instant moment) {
    LogTimes times = times();
    assertThat(times.read(text)).isEqualTo(LogTimes.Status.OK);
    assertThat(Instant.ofEpochMilli(times.millis())).isEqualTo(moment);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "20x7-06-01T10:30",
        "2027-x6-01T10:30",
        "2027-06-x1T10:30",
        "2027-06-01Tx0:30",
        "2027-06-01T10:x0",
        "2027-06-01T10:3x",
        "2027-06/01T10:30",
        "2027-06-01_10:30",
        "2027-06-01T10.30",
        "2027-06-01T24:00",
        "2027-06-01T10:60",
        "2027-06-01T10:30:61",
        "2027-06-01T10:30:5",
        "2027-06-01T10:30:15.",
        "2027-06-01T10:30:15.Z",
        "2027-06-01T10:30:15x",
        "2027-00-01T10:30",
        "2027-13-01T10:30",
        "2027-06-00T10:30",
        "2027-07-32T10:30",
        "2027-04-31T10:30",
        "2027-06-31T10:30",
        "2027-09-31T10:30",
        "2027-11-31T10:30",
        "2027-02-29T10:30",
        "2100-02-29T10:30",
        "2028-02-30T10:30",
        "2027-06-01T10:30+2",
        "2027-06-01T10:30+2:00",
        "2027-06-01T10:30+02-30",
        "2027-06-01T10:30+19:00",
        "2027-06-01T10:30+02:60",
        "2027-06-01T10:30+x2:00",
        "2027-06-01T10:30+02:x0",
        "2027-06-01T10:30=02:00",
        "2027-06-01T10:30UTX",
        "2027-06-01T10:30y",
        "2027-06-01",
        "2027-6",
        "100000000000001",
        "0000000000000001800000000",
        "1.2.3",
        ".",
        "-",
        "1e9",
        "",
        " \t\"\r",
        "times",
        "tim",
        "tome",
        "12/2027",
        "1/2/3",
        "/:/:/",
      })
  void noTime(String text) {
    assertThat(status(text)).isEqualTo(LogTimes.Status.BAD);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"04/06/2027", "4.6.2027 10:30", "04-06-2027 10:30:15", "0/0/00", "9.9.99"})
  void anotherOrder(String text) {
    assertThat(status(text)).isEqualTo(LogTimes.Status.OTHER_FORMAT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"time", "Time", " TIME ", "\"time\"", "time\r"})
  void theHeaderAgain(String text) {
    assertThat(status(text)).isEqualTo(LogTimes.Status.HEADER_AGAIN);
  }

  /** Seconds since a logger was started, or a clock of 1970: not set, yet the moment is kept. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-5, -5000",
    "12.5, 12500",
    "946684799, 946684799000",
    "100000000000, 100000000000",
    "1999-12-31T23:59:59.999Z, 946684799999",
    "1970-01-01T00:00:00Z, 0"
  })
  void aClockThatWasNotSet(String text, long millis) {
    LogTimes times = times();
    assertThat(times.read(text)).isEqualTo(LogTimes.Status.CLOCK_NOT_SET);
    assertThat(times.millis()).isEqualTo(millis);
  }

  /** The bytes of a cell in the middle of a line, with quotes and blanks round it. */
  @Test
  void aCellWithinALine() {
    for (String cell :
        new String[] {"2027-06-01T10:30", "2027-06-01T10:30:15+02:00", "1800000000.5", "time"}) {
      LogTimes alone = times();
      LogTimes.Status wanted = alone.read(cell);
      byte[] line = ("9;9 \t\"" + cell + "\"\r;12-34").getBytes(StandardCharsets.US_ASCII);
      LogTimes within = times();
      int start = new String(line, StandardCharsets.US_ASCII).indexOf(' ');
      int end = new String(line, StandardCharsets.US_ASCII).indexOf(";12");
      assertThat(within.read(line, start, end)).as(cell).isEqualTo(wanted);
      assertThat(within.millis()).isEqualTo(alone.millis());
    }
  }

  @Test
  void aTextMayBe64CharactersLong() {
    String padded = " ".repeat(44) + "2027-06-01T10:30:15Z";
    assertThat(status(padded)).isEqualTo(LogTimes.Status.OK);
    assertThat(status(" " + padded)).isEqualTo(LogTimes.Status.BAD);
    assertThat(status("2027-06-01T10:30\u00e9")).isEqualTo(LogTimes.Status.BAD);
  }

  /** Vienna is two hours ahead of UTC in June and one in January; Z says nothing of the place. */
  @ParameterizedTest
  @CsvSource({
    "2027-06-01T10:30+02:00, false",
    "2027-06-01T10:30+01:00, true",
    "2027-06-01T10:30-02:00, true",
    "2027-01-01T10:30+01:00, false",
    "2027-01-01T10:30+02:00, true",
    "2027-06-01T10:30Z, false",
    "2027-06-01T10:30, false",
    "1800000000, false"
  })
  void anOffsetOfAnotherZone(String text, boolean other) {
    LogTimes times = times();
    assertThat(times.read(text).isTime()).isTrue();
    assertThat(times.isOfOtherZone()).isEqualTo(other);
  }

  private static void reads(LogTimes times, String text, LogTimes.Status status, String moment) {
    assertThat(times.read(text)).as(text).isEqualTo(status);
    assertThat(Instant.ofEpochMilli(times.millis())).as(text).isEqualTo(Instant.parse(moment));
  }

  /** 31 October 2027, 3:00 becomes 2:00: an hour comes twice, told by a step back. */
  @Test
  void theHourThatComesTwice() {
    LogTimes times = times();
    LogTimes.Status ok = LogTimes.Status.OK;
    reads(times, "2027-10-31T02:30:00.5", ok, "2027-10-31T00:30:00.500Z");
    reads(times, "2027-10-31T02:30:00.5", ok, "2027-10-31T00:30:00.500Z");
    reads(times, "2027-10-31T02:59:59.5", ok, "2027-10-31T00:59:59.500Z");
    reads(times, "2027-10-31T02:00:00.5", LogTimes.Status.SECOND, "2027-10-31T01:00:00.500Z");
    reads(times, "2027-10-31T02:10", LogTimes.Status.SECOND, "2027-10-31T01:10:00Z");
    reads(times, "2027-10-31T03:00", ok, "2027-10-31T02:00:00Z");
    reads(times, "2027-10-31T02:10", ok, "2027-10-31T00:10:00Z");
    reads(times, "2028-10-29T02:05", ok, "2028-10-29T00:05:00Z");
  }

  /** 28 March 2027, 2:00 becomes 3:00: the hour between is read with the winter's offset. */
  @Test
  void theHourThatIsMissing() {
    LogTimes times = times();
    reads(times, "2027-03-28T01:59:59.5", LogTimes.Status.OK, "2027-03-28T00:59:59.500Z");
    reads(
        times, "2027-03-28T02:15:00.25", LogTimes.Status.MISSING_HOUR, "2027-03-28T01:15:00.250Z");
    reads(times, "2027-03-28T03:00:00.25", LogTimes.Status.OK, "2027-03-28T01:00:00.250Z");
  }
}

package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import leat.log.model.ModelLog;
import leat.log.model.ModelSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not change an answer does not change it. */
class LogPropertiesTest {
  private static final long TWO_HOURS = 2 * 3_600_000;

  private static String events(LogReport report, long before) {
    StringBuilder out = new StringBuilder();
    for (LogEvent e : report.events()) {
      if (e.end() < before) {
        out.append(e.kind().word()).append(' ').append(java.time.Instant.ofEpochMilli(e.start()));
        out.append(' ').append(java.time.Instant.ofEpochMilli(e.end())).append('\n');
      }
    }
    return out.toString();
  }

  /** All of the whole's that were over, and none of its own but what still goes on. */
  private static void tells(String as, LogReport part, LogReport whole) {
    long until = part.last() - TWO_HOURS;
    List<String> here = lines(part, Long.MAX_VALUE, true);
    assertThat(here).as(as).containsAll(lines(whole, until, true));
    assertThat(lines(whole, Long.MAX_VALUE, true)).as(as).containsAll(lines(part, until, false));
  }

  private static List<String> lines(LogReport report, long before, boolean open) {
    List<String> all = new ArrayList<>();
    for (LogEvent e : report.events()) {
      if (e.end() < before && (open || !e.isOpen())) {
        all.add(e.kind().word() + " " + e.start() + " " + e.end());
      }
    }
    return all;
  }

  private static void same(LogReport a, LogReport b) {
    assertThat(events(a, Long.MAX_VALUE)).isEqualTo(events(b, Long.MAX_VALUE)).isNotEmpty();
    assertThat(a.volume()).isCloseTo(b.volume(), within(1e-12));
    assertThat(a.use().mean()).isCloseTo(b.use().mean(), within(1e-12));
    assertThat(a.daysLeft().days()).isCloseTo(b.daysLeft().days(), within(1e-9));
    assertThat(a.days().size()).isEqualTo(b.days().size());
    for (int i = 0; i < a.days().size(); i++) {
      assertThat(a.days().get(i).used()).isCloseTo(b.days().get(i).used(), within(1e-12));
      assertThat(a.days().get(i).isSure()).isEqualTo(b.days().get(i).isSure());
    }
  }

  /** Rows that keep their place within the hours, in another order of arrival. */
  private static List<LogText.Line> shuffled(List<LogText.Line> lines, Random chance) {
    record At(LogText.Line line, double time) {}
    List<At> all = new ArrayList<>();
    for (LogText.Line line : lines) {
      all.add(new At(line, line.time() + chance.nextDouble() * (TWO_HOURS - 60_000)));
    }
    all.sort(Comparator.comparingDouble(At::time));
    return all.stream().map(At::line).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"terrace", "yard"})
  void rowsShuffledWithinTwoHours(String name) {
    LogSystem system = ReferenceLogsTest.system(name);
    List<LogText.Line> lines = ReferenceLogsTest.log(name).lines;
    lines.sort(Comparator.comparingLong(LogText.Line::time));
    LogReport straight = LogText.pass(system, lines);
    for (int seed = 0; seed < 5; seed++) {
      LogReport other = LogText.pass(system, shuffled(lines, new Random(seed)));
      assertThat(other.lateRows()).isGreaterThan(100);
      assertThat(other.tooLateRows()).isZero();
      same(straight, other);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"terrace", "yard"})
  void aFileCutAtAnyRowTellsWhatWasOverTwoHoursBefore(String name) {
    LogSystem system = ReferenceLogsTest.system(name);
    List<LogText.Line> lines = ReferenceLogsTest.log(name).lines;
    LogReport whole = LogText.pass(system, lines);
    for (int cut = 20; cut < lines.size(); cut += 7) {
      LogReport part = LogText.pass(system, lines.subList(0, cut));
      tells("cut at row " + cut, part, whole);
    }
  }

  @Test
  void madeLogsCutAnywhere() {
    for (ModelSystem system : ModelSystem.all()) {
      if (system.intervalMin() < 5) {
        continue;
      }
      LogSystem read = LogSystems.of(system.plan(), system.counts());
      ModelLog made = new ModelLog(system, 700, true);
      List<LogText.Line> lines = LogText.of(made.csv(), read.zone()).lines;
      LogReport whole = LogText.pass(read, lines);
      for (int cut = 40; cut < lines.size(); cut += lines.size() / 60) {
        LogReport part = LogText.pass(read, lines.subList(0, cut));
        tells(system.name() + " cut at row " + cut, part, whole);
      }
    }
  }

  @Test
  void offsetUtcAndUnixTimesReadAlike() {
    LogTimes times = new LogTimes(ReferenceLogsTest.system("terrace").zone(), "time");
    for (LogText.Line line : ReferenceLogsTest.log("terrace").lines) {
      java.time.Instant at = java.time.Instant.ofEpochMilli(line.time());
      String[] texts = {
        at.toString(),
        at.atZone(java.time.ZoneId.of("Asia/Kathmandu")).toOffsetDateTime().toString(),
        "" + line.time() / 1000,
        "" + line.time(),
        at.toString().replace('T', ' ').replace("Z", "+00")
      };
      for (String text : texts) {
        assertThat(times.read(text)).as(text).isEqualTo(LogTimes.Status.OK);
        assertThat(times.millis()).as(text).isEqualTo(line.time());
      }
    }
  }

  @Test
  void aClockThatLeapsIsDroppedAndAWeekOfSilenceIsNot() {
    LogSystem system = ReferenceLogsTest.system("terrace");
    List<LogText.Line> lines = new ArrayList<>(ReferenceLogsTest.log("terrace").lines);
    LogReport straight = LogText.pass(system, lines);
    LogText.Line odd = lines.get(500);
    lines.add(501, new LogText.Line(odd.time() + 40L * 86_400_000, odd.cells()));
    lines.add(900, new LogText.Line(12_000, odd.cells()));
    LogReport leapt = LogText.pass(system, lines);
    assertThat(leapt.clockNotSet()).isEqualTo(straight.clockNotSet() + 2);
    same(straight, leapt);
    List<LogText.Line> plain = ReferenceLogsTest.log("terrace").lines;
    List<LogText.Line> later = new ArrayList<>();
    for (int i = 0; i <= 2000; i++) {
      LogText.Line line = plain.get(i);
      later.add(i < 1000 ? line : new LogText.Line(line.time() + 8L * 86_400_000, line.cells()));
    }
    LogReport week = LogText.pass(system, later);
    assertThat(week.clockNotSet()).isEqualTo(straight.clockNotSet());
    assertThat(week.count(EventKind.GAP)).isGreaterThanOrEqualTo(1);
  }

  @Test
  void emptyAndShortLogsSayTheyCannotSay() {
    LogSystem system = ReferenceLogsTest.system("terrace");
    LogReport empty = LogText.pass(system, List.of());
    assertThat(empty.isEmpty()).isTrue();
    assertThat(empty.hasVolume()).isFalse();
    assertThat(empty.events()).isEmpty();
    assertThat(empty.alarms(0, 3)).isEmpty();
    LogReport one = LogText.pass(system, ReferenceLogsTest.log("terrace").lines.subList(0, 1));
    assertThat(one.use()).isNull();
    assertThat(one.daysLeft()).isNull();
    assertThat(one.hasVolume()).isTrue();
    assertThat(one.events()).isEmpty();
  }

  @Test
  void alarmsOpenAndClose() {
    LogSystem yard = ReferenceLogsTest.system("yard");
    List<LogText.Line> lines = ReferenceLogsTest.log("yard").lines;
    assertThat(at(yard, lines, "2027-03-31T16:00:00Z", 3)).contains("no-water-at-cap");
    assertThat(at(yard, lines, "2027-04-01T06:00:00Z", 3)).isEmpty();
    assertThat(at(yard, lines, "2027-04-05T18:00:00Z", 3)).contains("stuck-float");
    assertThat(at(yard, lines, "2027-04-08T12:30:00Z", 3)).contains("sensor-short");
    assertThat(at(yard, lines, "2027-03-24T16:00:00Z", 3)).contains("leak");
    assertThat(at(yard, lines, "2027-03-22T12:00:00Z", 300)).contains("days-left");
    LogReport whole = LogText.pass(yard, lines);
    assertThat(whole.alarms(whole.last() + 4 * whole.interval(), 3))
        .extracting(a -> a.kind().word())
        .containsExactly("log-silent");
    assertThat(whole.alarms(whole.last() + 2 * whole.interval(), 3)).isEmpty();
  }

  private static List<String> at(
      LogSystem system, List<LogText.Line> lines, String time, double days) {
    long now = java.time.Instant.parse(time).toEpochMilli();
    LogReport part = LogText.pass(system, lines.stream().filter(l -> l.time() <= now).toList());
    return part.alarms(now, days).stream().map(a -> a.kind().word()).toList();
  }
}

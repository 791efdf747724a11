package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Rows in their order and their step at rest, by hand: rows every five minutes from noon on, a step
 * at rest is the highest of the hour that follows, never above the hour before.
 */
class OrderByHandTest {
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final long NOON = LogFixtures.JUNE + 12 * HOUR;
  private static final long FIVE = 5 * MINUTE;
  private static final LogSystem SYSTEM = LogFixtures.system(ZoneOffset.UTC, 0);

  private static HandLog log() {
    return new HandLog(SYSTEM, NOON, FIVE);
  }

  private static LogRow row(long time, int step) {
    LogRow row = LogFixtures.row(time);
    row.reading = 10.4 + 20 * step;
    row.pump = 0;
    return row;
  }

  private static List<Integer> rests(HandLog log) {
    List<Integer> rests = new ArrayList<>();
    log.report((row, volume, low, high) -> rests.add(row.rest()));
    return rests;
  }

  private static List<Integer> steps(HandLog log) {
    List<Integer> steps = new ArrayList<>();
    log.report((row, volume, low, high) -> steps.add(row.step()));
    return steps;
  }

  private static Integer[] times(int... stepsAndTimes) {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < stepsAndTimes.length; i += 2) {
      for (int k = 0; k < stepsAndTimes[i + 1]; k++) {
        all.add(stepsAndTimes[i]);
      }
    }
    return all.toArray(new Integer[0]);
  }

  /** Twelve rows are an hour: a step that comes back by then was there all along. */
  @Test
  void aStepAtRestIsTheHighestOfTheHourThatFollows() {
    assertThat(rests(log().show(5, 20).show(4, 12).show(5, 20))).containsExactly(times(5, 52));
    assertThat(rests(log().show(5, 20).show(4, 13).show(5, 20)))
        .containsExactly(times(5, 20, 4, 1, 5, 11, 4, 1, 5, 20));
    assertThat(rests(log().show(5, 20).show(4, 20))).containsExactly(times(5, 20, 4, 20));
  }

  /** What rises only later was not there before. */
  @Test
  void aRiseIsNotSeenBefore() {
    assertThat(rests(log().show(4, 20).show(5, 20))).containsExactly(times(4, 20, 5, 20));
    assertThat(rests(log().show(2, 20).show(5, 20))).containsExactly(times(2, 20, 5, 20));
    // The dip just before a can is known by the rows before it.
    assertThat(rests(log().show(2, 20).show(1, 2).show(5, 20)))
        .containsExactly(times(2, 22, 5, 20));
  }

  /** A dip at the end of the log, or before a gap, is one too. */
  @Test
  void aDipWithoutAnHourAfterIt() {
    assertThat(rests(log().show(5, 20).show(4, 2))).containsExactly(times(5, 22));
    assertThat(rests(log().show(5, 20).show(4, 2).at(NOON + 5 * HOUR).show(4, 20)))
        .containsExactly(times(5, 22, 4, 20));
    assertThat(rests(log().show(5, 20).at(NOON + 5 * HOUR).show(3, 1).show(4, 20)))
        .as("nothing reaches over a gap")
        .containsExactly(times(5, 20, 3, 1, 4, 20));
  }

  /** After a gap the step is not an edge: the middle of 48 to 60 L. */
  @Test
  void aFallOverAGapIsNoEdge() {
    LogReport r = log().show(5, 24).at(NOON + 5 * HOUR).show(4, 24).report();
    assertThat(1000 * r.volume()).isCloseTo(54, offset(1e-6));
    // Without the gap: the edge of 58 L, passed half way between two rows.
    r = log().show(5, 24).show(4, 24).report();
    assertThat(1000 * r.volume()).isCloseTo(58, offset(1e-6));
  }

  /** The interval is known from the first rows on: a silence after the first of all is a gap. */
  @Test
  void aGapAfterTheFirstRow() {
    LogReport r = log().show(5, 1).at(NOON + HOUR).show(5, 30).report();
    assertThat(r.events()).extracting(LogEvent::kind).containsExactly(EventKind.GAP);
    assertThat(r.events().get(0).start()).isEqualTo(NOON);
    assertThat(r.events().get(0).end()).isEqualTo(NOON + HOUR);
    assertThat(r.interval()).isEqualTo(FIVE);
  }

  /** 12.5 minutes are two and a half intervals of five. */
  @Test
  void aSilenceOfTwoAndAHalfIntervalsIsNone() {
    for (long silence : new long[] {750_000, 750_001}) {
      HandLog log = log().show(5, 30);
      log.at(log.now() + silence).show(5, 30);
      assertThat(log.report().count(EventKind.GAP)).isEqualTo(silence == 750_000 ? 0 : 1);
    }
  }

  /** Every row twice, as some loggers write after a restart: no gap, no other rhythm. */
  @Test
  void everyRowTwice() {
    HandLog log = log().show(5, 40);
    List<LogRow> twice = new ArrayList<>();
    for (LogRow row : log.rows) {
      twice.add(row);
      LogRow again = LogFixtures.row(0);
      again.copy(row);
      twice.add(again);
    }
    log.rows.clear();
    log.rows.addAll(twice);
    LogReport r = log.report();
    assertThat(r.duplicates()).isEqualTo(40);
    assertThat(r.rows()).isEqualTo(80);
    assertThat(r.events()).isEmpty();
    assertThat(r.interval()).isEqualTo(FIVE);
  }

  /** The logger is set to half an hour: gaps until most of its last 255 rows are so. */
  @Test
  void anotherRhythmIsLearned() {
    HandLog log = log().show(5, 300);
    long set = log.now();
    HandLog half = new HandLog(SYSTEM, set + 30 * MINUTE, 30 * MINUTE).show(5, 200);
    log.rows.addAll(half.rows);
    LogReport r = log.report();
    assertThat(r.interval()).isEqualTo(30 * MINUTE);
    assertThat(r.count(EventKind.GAP)).isEqualTo(128);
  }

  /** Of two rows at one instant the one that fits those around; the first of two that fit alike. */
  @Test
  void theNearerOfTwoRows() {
    int[][] cases = {
      // before, one, other, after, kept
      {2, 6, 3, 2, 3}, {2, 3, 6, 2, 3}, {3, 4, 5, 5, 4}, {3, 5, 4, 5, 5}, {2, 1, 4, 5, 4},
      {6, 1, 4, 2, 4}, {4, 5, 2, 6, 5}, {4, 3, 6, 2, 3}, {-1, 1, 4, 3, 4}, {-1, 4, 1, 3, 4},
      {4, 1, 5, -1, 5}, {4, 5, 1, -1, 5}, {4, -1, 1, 4, 1}, {4, 1, -1, 4, 1}, {0, 3, 2, 0, 2}
    };
    for (int[] c : cases) {
      HandLog log = log();
      if (c[0] >= 0) {
        log.show(c[0], 1);
      }
      long twice = log.now() + FIVE;
      for (int i = 1; i < 3; i++) {
        log.at(twice).read(c[i] < 0 ? Double.NaN : 10.4 + 20 * c[i], 1);
      }
      if (c[3] >= 0) {
        log.show(c[3], 1);
      }
      assertThat(steps(log).get(c[0] < 0 ? 0 : 1)).as(java.util.Arrays.toString(c)).isEqualTo(c[4]);
      assertThat(log.report().duplicates()).isEqualTo(1);
    }
  }

  /** A row two hours late is put in its place; what is older than a row gone on is dropped. */
  @Test
  void lateRows() {
    for (int late : new int[] {24, 25, 26}) {
      HandLog log = log().show(5, 60);
      LogRow moved = log.rows.remove(10);
      log.rows.add(10 + late, moved);
      LogReport r = log.report();
      assertThat(r.lateRows()).isEqualTo(1);
      assertThat(r.tooLateRows()).as("%d rows", late).isEqualTo(late == 26 ? 1 : 0);
      assertThat(r.first()).isEqualTo(NOON);
    }
    HandLog same = log().show(5, 40);
    same.rows.add(row(same.now(), 5));
    assertThat(same.report().lateRows()).as("at the newest instant").isZero();
    HandLog old = log().show(5, 60);
    old.rows.add(row(NOON, 5));
    assertThat(old.report().tooLateRows()).isEqualTo(1);
    assertThat(old.report().duplicates()).isZero();
  }

  /** A day ahead is a gap at once; beyond it three rows in succession must bear it out. */
  @Test
  void aLeapOfTheClock() {
    for (long leap : new long[] {24 * HOUR, 24 * HOUR + 1000}) {
      HandLog log = log().show(5, 30);
      long last = log.now();
      LogReport r = log.at(last + leap).show(5, 1).report();
      boolean known = leap == 24 * HOUR;
      assertThat(r.clockNotSet()).isEqualTo(known ? 0 : 1);
      assertThat(r.last()).isEqualTo(known ? last + leap : last);
      assertThat(r.count(EventKind.GAP)).isEqualTo(known ? 1 : 0);
    }
  }

  @Test
  void threeRowsBearALeapOut() {
    for (int n = 2; n <= 3; n++) {
      HandLog log = log().show(5, 30);
      long last = log.now();
      LogReport r = log.at(last + 30 * HOUR).show(5, n).report();
      assertThat(r.clockNotSet()).isEqualTo(n == 2 ? 2 : 0);
      assertThat(r.last()).isEqualTo(n == 2 ? last : last + 30 * HOUR + 2 * FIVE);
      assertThat(r.count(EventKind.GAP)).isEqualTo(n == 2 ? 0 : 1);
      assertThat(r.rows()).isEqualTo(30 + n);
    }
  }

  /** Two rows ahead and back again, and two each of two other times: none is borne out. */
  @Test
  void rowsOfAClockThatIsNotSetAreLeftOut() {
    HandLog log = log().show(5, 30);
    long last = log.now();
    log.at(last + 30 * HOUR).show(1, 2).at(last + FIVE).show(5, 30);
    log.at(last + 40 * HOUR).show(1, 2).at(last + 90 * HOUR).show(1, 2);
    LogReport r = log.report();
    assertThat(r.clockNotSet()).isEqualTo(6);
    assertThat(r.events()).isEmpty();
    assertThat(r.last()).isEqualTo(last + 30 * FIVE);
    // Two, then three at another time: these are believed.
    log = log().show(5, 30).at(last + 40 * HOUR).show(1, 2).at(last + 90 * HOUR).show(5, 3);
    r = log.report();
    assertThat(r.clockNotSet()).isEqualTo(2);
    assertThat(r.last()).isEqualTo(last + 90 * HOUR + 2 * FIVE);
    // Doubtful rows up to a day apart are of one time.
    log = log().show(5, 30).at(last + 40 * HOUR).show(5, 1).at(last + 64 * HOUR).show(5, 2);
    assertThat(log.report().clockNotSet()).isZero();
    // A leap that is borne out is not doubted again.
    log = log().show(5, 30).at(last + 40 * HOUR).show(5, 30).at(last + 90 * HOUR).show(5, 2);
    assertThat(log.report().clockNotSet()).isEqualTo(2);
  }
}

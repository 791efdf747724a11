package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Cans, changes of solution and losses by the steps a sender shows every five minutes from noon on,
 * each threshold of the sheet at its edge. Steps of 10 L begin at 20, 30, ... 90 L and last 2 L
 * longer on the way down: step 2 is 28 to 40 L, its middle 34 L when nothing else is known; what is
 * just poured up to step 5 is 60 to 70 L, 65 L.
 */
class PouringsByHandTest {
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final long NOON = LogFixtures.JUNE + 12 * HOUR;
  private static final long FIVE = 5 * MINUTE;
  private static final LogSystem SYSTEM = LogFixtures.system(ZoneOffset.UTC, 0);

  private static HandLog log() {
    return new HandLog(SYSTEM, NOON, FIVE);
  }

  private static long at(int minutes) {
    return NOON + minutes * MINUTE;
  }

  private static void is(LogEvent e, EventKind kind, int from, int to, String cause) {
    assertThat(e.kind()).isEqualTo(kind);
    assertThat((e.start() - NOON) / MINUTE).isEqualTo(from);
    assertThat((e.end() - NOON) / MINUTE).isEqualTo(to);
    assertThat(e.cause()).isEqualTo(cause);
  }

  private static void litres(LogEvent e, double volume, double low, double high) {
    assertThat(1000 * e.volume()).isCloseTo(volume, offset(1e-6));
    assertThat(1000 * e.volumeLow()).isCloseTo(low, offset(1e-6));
    assertThat(1000 * e.volumeHigh()).isCloseTo(high, offset(1e-6));
  }

  private static LogEvent only(LogReport r, EventKind kind, int from, int to) {
    assertThat(r.events()).extracting(LogEvent::kind).containsExactly(kind);
    is(r.events().get(0), kind, from, to, "");
    return r.events().get(0);
  }

  @Test
  void threeStepsWithinFortyMinutes() {
    for (int late : new int[] {40, 45}) {
      HandLog log = log().show(2, 24).steps(3, 3, 3, 3, 4, 4, 4).at(at(115 + late)).show(5, 30);
      LogReport r = log.report();
      if (late == 45) {
        assertThat(r.events()).isEmpty();
        assertThat(r.days().get(0).refill()).isZero();
      } else {
        litres(only(r, EventKind.REFILL, 115, 155), 31, 20, 42);
        assertThat(r.days().get(0).refill()).isCloseTo(0.031, offset(1e-12));
      }
      assertThat(1000 * r.volume()).isCloseTo(late == 45 ? 64 : 65, offset(1e-6));
    }
  }

  /** It still runs in: up to twenty minutes after the last rise it is the same pouring. */
  @Test
  void aPouringThatGoesOn() {
    HandLog log = log().show(2, 24).show(5, 4).show(6, 4).show(7, 30);
    litres(only(log.report(), EventKind.REFILL, 115, 160), 51, 40, 62);
    LogReport slow = log().show(2, 24).show(5, 4).show(6, 5).show(7, 30).report();
    litres(only(slow, EventKind.REFILL, 115, 140), 41, 30, 52);
    assertThat(1000 * slow.volume()).isCloseTo(84, offset(1e-6));
    // 25 minutes after it, yet within 40 of the low row.
    log = log().show(2, 24).show(5, 5).show(6, 30);
    litres(only(log.report(), EventKind.REFILL, 115, 145), 41, 30, 52);
    litres(
        only(log().show(2, 24).steps(5, 4, 5).show(5, 30).report(), EventKind.REFILL, 115, 120),
        31,
        20,
        42);
  }

  /**
   * The top step begins at 90 L. Where full is 85 L it is over full, and up to the rim of 100 L: 90
   * to 100 less 28 to 40 L. Where full is 90 L it ends there.
   */
  @Test
  void pouredOverTheFullMark() {
    LogSystem over = LogFixtures.system(ZoneOffset.UTC, 0, 90, 1, 0.085);
    LogReport r = new HandLog(over, NOON, FIVE).show(2, 24).show(8, 30).report();
    litres(only(r, EventKind.REFILL, 115, 120), 61, 50, 72);
    assertThat(1000 * r.volumeHigh()).isCloseTo(100, offset(1e-6));
    r = log().show(2, 24).show(8, 30).report();
    litres(only(r, EventKind.REFILL, 115, 120), 56, 50, 62);
    assertThat(1000 * r.volumeHigh()).isCloseTo(90, offset(1e-6));
  }

  /** A can of two steps that thins the solution: 20 L, and the fall of EC is no salt taken. */
  @Test
  void aCanOfTwoSteps() {
    LogReport r = log().ec(1.6).show(3, 24).ec(1.5).show(5, 40).report();
    litres(only(r, EventKind.REFILL, 115, 120), 20, 10, 30);
    assertThat(r.days().get(0).refill()).isCloseTo(0.02, offset(1e-12));
    assertThat(r.days().get(0).bySalt()).isZero();
    // The same by two rises half an hour apart is rain, and its day has it.
    r = log().ec(1.6).show(3, 24).ec(1.55).show(4, 6).ec(1.5).show(5, 40).report();
    litres(only(r, EventKind.RAIN, 115, 150), 20, 10, 30);
    assertThat(r.days().get(0).rain()).isCloseTo(0.02, offset(1e-12));
  }

  /** The next can is poured 55 minutes after the first was, or 60. */
  @Test
  void cansWithinAnHourAreOne() {
    LogEvent one =
        only(log().show(1, 24).show(4, 12).show(7, 40).report(), EventKind.REFILL, 115, 180);
    litres(one, 61, 50, 72);
    LogReport two = log().show(1, 24).show(4, 13).show(7, 40).report();
    assertThat(two.events()).hasSize(2);
    is(two.events().get(0), EventKind.REFILL, 115, 120, "");
    litres(two.events().get(0), 31, 20, 42);
    is(two.events().get(1), EventKind.REFILL, 180, 185, "");
    litres(two.events().get(1), 30, 20, 42);
    assertThat(two.days().get(0).refill()).isCloseTo(0.061, offset(1e-12));
  }

  /** Two rows low are a dip of the pump, three are none: rows of three, or of twelve minutes. */
  @Test
  void whatComesBackAfterADipIsNotPoured() {
    assertThat(log().show(5, 24).show(3, 2).show(6, 30).report().events()).isEmpty();
    LogEvent e =
        only(log().show(5, 24).show(3, 3).show(6, 30).report(), EventKind.REFILL, 130, 135);
    litres(e, 32, 21, 42);
    HandLog minutes = new HandLog(SYSTEM, NOON, MINUTE).show(5, 60).show(3, 12).show(6, 70);
    assertThat(minutes.report().events()).isEmpty();
    minutes = new HandLog(SYSTEM, NOON, MINUTE).show(5, 60).show(3, 13).show(6, 70);
    only(minutes.report(), EventKind.REFILL, 72, 73);
  }

  /** A dip lasts as long as the run and six minutes; an hour at most. */
  @Test
  void aDipLastsAsLongAsTheLongestRun() {
    for (int[] run : new int[][] {{20, 26}, {5, 12}, {40, 46}, {120, 60}, {0, 12}}) {
      LogSystem system = LogFixtures.system(ZoneOffset.UTC, 0, run[0] * 60);
      for (int more = 0; more < 2; more++) {
        HandLog log = new HandLog(system, NOON, MINUTE);
        LogReport r = log.show(5, 120).show(3, run[1] + more).show(6, 70).report();
        assertThat(r.count(EventKind.REFILL)).as("%s min, %s", run[0], more).isEqualTo(more);
      }
    }
  }

  /** Seldom rows: three are looked at while they lie within an hour, else two. */
  @Test
  void aDipInSeldomRows() {
    HandLog half = new HandLog(SYSTEM, NOON, 30 * MINUTE).show(5, 9).show(3, 2).show(6, 9);
    assertThat(half.report().events()).isEmpty();
    half = new HandLog(SYSTEM, NOON, 30 * MINUTE).show(5, 9).show(3, 3).show(6, 9);
    only(half.report(), EventKind.REFILL, 330, 360);
    HandLog forty = new HandLog(SYSTEM, NOON, 40 * MINUTE).show(5, 9).show(3, 1).show(6, 9);
    assertThat(forty.report().events()).isEmpty();
    forty = new HandLog(SYSTEM, NOON, 40 * MINUTE).show(5, 9).show(3, 2).show(6, 9);
    only(forty.report(), EventKind.REFILL, 400, 440);
  }

  /** Three steps down are no dip: what is poured back is a can, 33 L before and 65 after. */
  @Test
  void afterATrueFallTheNextRiseCounts() {
    LogEvent e =
        only(log().show(5, 24).show(2, 2).show(5, 30).report(), EventKind.REFILL, 125, 130);
    litres(e, 32, 21, 42);
    // A tower that keeps 25 L up dips three steps: a fall of five is a true one.
    LogSystem tall = LogFixtures.system(ZoneOffset.UTC, 0.025);
    assertThat(new HandLog(tall, NOON, FIVE).show(5, 24).show(2, 2).show(5, 30).report().events())
        .isEmpty();
    assertThat(new HandLog(tall, NOON, FIVE).show(5, 24).show(1, 2).show(5, 30).report().events())
        .isEmpty();
    assertThat(new HandLog(tall, NOON, FIVE).show(5, 24).show(0, 2).show(5, 30).report().events())
        .isNotEmpty();
  }

  @Test
  void rowsWithoutAReadingAmidACan() {
    HandLog log = log().show(2, 24).read(Double.NaN, 3).show(5, 30);
    litres(only(log.report(), EventKind.REFILL, 115, 135), 31, 20, 42);
    log = log().read(Double.NaN, 3).show(2, 2).show(5, 30);
    litres(only(log.report(), EventKind.REFILL, 20, 25), 31, 20, 42);
  }

  /** Emptied from above 30 % to below 17 % of the sender's eight steps: from 3 to 1, not from 2. */
  @Test
  void emptiedAndFilled() {
    LogEvent e =
        only(
            log().show(3, 24).show(1, 12).show(6, 30).report(),
            EventKind.SOLUTION_CHANGE,
            115,
            180);
    litres(e, 51, 40, 62);
    only(log().show(2, 24).show(0, 12).show(6, 30).report(), EventKind.REFILL, 175, 180);
    only(log().show(5, 24).show(2, 12).show(6, 30).report(), EventKind.REFILL, 175, 180);
    only(log().show(4, 24).show(0, 12).show(6, 30).report(), EventKind.SOLUTION_CHANGE, 115, 180);
  }

  /** 75 minutes from the last high row; it began to fall for good at the last row of step 2. */
  @Test
  void emptiedWithinFiveQuartersOfAnHour() {
    for (int rows : new int[] {14, 15}) {
      HandLog log = log().show(3, 24).show(2, rows).show(1, 12).show(6, 30);
      int low = 120 + 5 * rows;
      if (rows == 14) {
        only(log.report(), EventKind.SOLUTION_CHANGE, low - 5, low + 60);
      } else {
        only(log.report(), EventKind.REFILL, low + 55, low + 60);
      }
    }
  }

  /** Two steps higher just before: the fall took longer, so nobody emptied the tank by hand. */
  @Test
  void aFallThatBeganEarlierIsNoEmptying() {
    int[][] cases = {{8, 16, 1}, {8, 15, 0}, {7, 15, 0}, {6, 15, 1}};
    for (int[] c : cases) {
      LogReport r = log().show(c[0], 24).show(5, c[1]).show(1, 12).show(6, 30).report();
      assertThat(r.count(EventKind.SOLUTION_CHANGE)).as("%d, %d", c[0], c[1]).isEqualTo(c[2]);
      assertThat(r.count(EventKind.REFILL)).isEqualTo(1 - c[2]);
    }
  }

  /** Who empties a tank stops the pump; who changes the solution does not start it before. */
  @Test
  void aPumpThatRunsIsNoChange() {
    HandLog running = log().show(3, 24).pump(true).show(1, 1).pump(false).show(1, 11).show(6, 30);
    only(running.report(), EventKind.REFILL, 175, 180);
    HandLog once =
        log().show(3, 24).show(1, 4).pump(true).show(1, 1).pump(false).show(1, 7).show(6, 30);
    only(once.report(), EventKind.SOLUTION_CHANGE, 115, 180);
    HandLog twice =
        log().show(3, 24).show(1, 4).pump(true).show(1, 2).pump(false).show(1, 6).show(6, 30);
    LogReport r = twice.report();
    assertThat(r.events()).hasSize(2);
    is(r.events().get(0), EventKind.LEAK, 115, 120, LogEvent.HOSE_OFF);
    is(r.events().get(1), EventKind.REFILL, 175, 180, "");
    assertThat(r.days().get(0).isSure()).isFalse();
  }

  /** Eight hours from the first low row; a row later it was a loss. */
  @Test
  void filledWithinEightHours() {
    for (int rows : new int[] {97, 98}) {
      LogReport r = log().show(3, 24).show(1, rows).show(6, 30).report();
      int filled = 120 + 5 * rows;
      if (rows == 97) {
        only(r, EventKind.SOLUTION_CHANGE, 115, filled);
      } else {
        assertThat(r.events()).hasSize(2);
        LogEvent lost = r.events().get(0);
        is(lost, EventKind.LEAK, 115, 120, LogEvent.DRAINED);
        assertThat((lost.told() - NOON) / MINUTE).isEqualTo(120 + 485);
        assertThat(lost.isOpen()).isFalse();
        is(r.events().get(1), EventKind.REFILL, filled - 5, filled, "");
        assertThat(r.days().get(0).isSure()).isFalse();
      }
    }
  }

  /** Drained and left: the tank holds what its step says, 18 to 30 L. */
  @Test
  void drainedAndLeft() {
    LogReport r = log().show(3, 24).show(1, 120).report();
    assertThat(r.events()).hasSize(1);
    is(r.events().get(0), EventKind.LEAK, 115, 120, LogEvent.DRAINED);
    assertThat(1000 * r.volumeLow()).isCloseTo(18, offset(1e-6));
    assertThat(1000 * r.volume()).isCloseTo(24, offset(1e-6));
    assertThat(1000 * r.volumeHigh()).isCloseTo(30, offset(1e-6));
  }

  /** Across a gap of three hours three steps are a can within it, two are not known. */
  @Test
  void pouredWithinAGap() {
    LogReport r = log().show(2, 24).at(at(300)).show(5, 24).report();
    assertThat(r.events()).hasSize(2);
    is(r.events().get(0), EventKind.REFILL, 115, 300, LogEvent.WITHIN_GAP);
    litres(r.events().get(0), 31, 20, 42);
    is(r.events().get(1), EventKind.GAP, 115, 300, "");
    only(log().show(2, 24).at(at(300)).show(4, 24).report(), EventKind.GAP, 115, 300);
    only(log().show(0, 24).at(at(300)).show(2, 24).report(), EventKind.GAP, 115, 300);
    assertThat(log().show(0, 24).at(at(300)).show(3, 24).report().events()).hasSize(2);
    // A dip before the gap: the tank held step 5.
    only(log().show(5, 24).show(3, 1).at(at(300)).show(6, 24).report(), EventKind.GAP, 120, 300);
    // Before and after the gap: 2 steps across it and one more are no can.
    only(log().show(2, 24).at(at(300)).show(4, 1).show(5, 24).report(), EventKind.GAP, 115, 300);
    // Nor was the tank emptied before the gap and filled after it.
    LogReport low = log().show(4, 24).at(at(300)).show(1, 12).show(5, 24).report();
    assertThat(low.events())
        .extracting(LogEvent::kind)
        .containsExactly(EventKind.GAP, EventKind.REFILL);
  }

  /** A can under way when the rows stop ends there. */
  @Test
  void aGapEndsACan() {
    LogReport r = log().show(2, 24).show(5, 2).at(at(145)).show(6, 24).report();
    assertThat(r.events()).hasSize(2);
    is(r.events().get(0), EventKind.REFILL, 115, 120, "");
    is(r.events().get(1), EventKind.GAP, 125, 145, "");
  }

  /** A cloudburst of 16 mm on 1 m2 explains more than half of three steps, 15 mm does not. */
  @Test
  void aCloudburstIsNoCan() {
    for (double mm : new double[] {8, 7.5}) {
      HandLog log = log().show(2, 24).rain(3, mm).rain(5, mm).show(5, 30);
      for (LogRow row : log.rows) {
        row.rain = row.rain > 0 ? row.rain : 0;
      }
      LogReport r = log.report();
      assertThat(r.events())
          .extracting(LogEvent::kind)
          .isEqualTo(mm == 8 ? List.of(EventKind.RAIN) : List.of(EventKind.REFILL, EventKind.RAIN));
      assertThat(1000 * r.days().get(0).rain()).as("each row's").isCloseTo(2 * mm, offset(1e-9));
      assertThat(r.days().get(0).refill() > 0).isEqualTo(mm != 8);
    }
  }
}

package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Leaks, faults, stuck floats and missing readings in whole logs, by hand. Rows every ten minutes
 * from midnight; a step falls at noon of each day, so that plants drink 10 L a day with the sheet's
 * rhythm: a day weighs 13.44 h, an hour by day 1 h. An edge is passed half way between two rows, at
 * 11:55.
 */
class WatchByHandTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final long DAY = LogFixtures.DAY;
  private static final double DAY_H = 13.44;
  private static final LogSystem SYSTEM = LogFixtures.system(ZoneOffset.UTC, 0);

  private static HandLog log() {
    return new HandLog(SYSTEM, JUNE, 10 * MINUTE);
  }

  private static long at(int day, int hour, int minute) {
    return JUNE + day * DAY + hour * HOUR + minute * MINUTE;
  }

  /** As fourDays, and the pump runs from then on: nobody empties the tank by hand. */
  private static HandLog running() {
    return fourDays().pump(true);
  }

  /** From step 8 down to 4, a step at noon of each day: 58 L at 11:55 of the fourth. */
  private static HandLog fourDays() {
    HandLog log = log();
    for (int day = 0; day < 4; day++) {
      log.until(at(day, 12, 0), 8 - day);
    }
    return log;
  }

  private static LogEvent only(LogReport r, EventKind kind) {
    assertThat(r.events()).extracting(LogEvent::kind).containsExactly(kind);
    return r.events().get(0);
  }

  private static void litres(double volume, double litres) {
    assertThat(1000 * volume).isCloseTo(litres, offset(1e-6));
  }

  /**
   * 10 L in the first hour after 11:55, and twice 10 L in 20 minutes: 30 less 100 min of thirst.
   */
  @Test
  void aLeakByItsEdges() {
    HandLog log = running().until(at(3, 13, 0), 4).until(at(3, 13, 20), 3).until(at(3, 13, 40), 2);
    LogReport r = log.until(at(4, 0, 0), 1).report();
    LogEvent leak = only(r, EventKind.LEAK);
    assertThat(leak.start()).isEqualTo(at(3, 11, 55));
    assertThat(leak.end()).isEqualTo(at(3, 13, 35));
    double lost = 30 - 10 * (100 / 60.0) / DAY_H;
    litres(leak.volume(), lost);
    litres(leak.volumeLow(), lost - 10);
    litres(leak.volumeHigh(), lost + 10);
    assertThat(leak.isOpen()).isTrue();
    assertThat(leak.cause()).isEmpty();
    assertThat(r.days().get(2).isSure()).isTrue();
    assertThat(r.days().get(3).isSure()).isFalse();
    List<LogAlarm> alarms = r.alarms(r.last(), Double.NaN);
    assertThat(alarms).extracting(LogAlarm::kind).contains(LogAlarm.Kind.LEAK);
    assertThat(alarms.get(0).since()).isEqualTo(at(3, 11, 55));
  }

  /**
   * It is over once 1.8 times the thirst since then would have taken the next step: 10/1.8 L are
   * 7.47 h of thirst, 5.42 h until the evening, 1.44 h by night and 0.61 h of the morning.
   */
  @Test
  void aLeakIsOverWhenTheNextStepIsDue() {
    for (int minute : new int[] {30, 40}) {
      HandLog log = running().until(at(3, 13, 0), 4).until(at(3, 13, 20), 3);
      LogReport r = log.until(at(3, 13, 40), 2).until(at(4, 7, minute), 1).show(1, 1).report();
      assertThat(r.last()).isEqualTo(at(4, 7, minute));
      assertThat(only(r, EventKind.LEAK).isOpen()).as("7:%d", minute).isEqualTo(minute == 30);
    }
  }

  /** One quick fall alone, a step in the hour, is heat or a wave. */
  @Test
  void oneQuickFallIsNoLeak() {
    assertThat(running().until(at(3, 13, 0), 4).until(at(4, 0, 0), 3).report().events()).isEmpty();
    // Two, the second as slow as thirst: 24 h later.
    HandLog log = running().until(at(3, 13, 0), 4).until(at(4, 13, 0), 3);
    assertThat(log.until(at(5, 0, 0), 2).report().events()).isEmpty();
  }

  /** Three steps between two rows: 58 to 28 L from 11:55 to 13 h. */
  @Test
  void aLeakOfSeveralStepsAtOnce() {
    LogReport r = running().until(at(3, 13, 0), 4).until(at(4, 0, 0), 1).report();
    LogEvent leak = only(r, EventKind.LEAK);
    assertThat(leak.start()).isEqualTo(at(3, 11, 55));
    assertThat(leak.end()).isEqualTo(at(3, 13, 0));
    litres(leak.volume(), 30 - 10 * (65 / 60.0) / DAY_H);
    // The band is the step's, 18 to 28 L and a tenth of a step.
    litres(r.volumeLow(), 18);
  }

  /**
   * After a can nothing but the step is known: of a fall from 6 to 3 the first step says nothing.
   */
  @Test
  void aLeakAfterACan() {
    HandLog log = running().until(at(3, 13, 0), 4).until(at(3, 15, 0), 7);
    LogReport r = log.until(at(4, 0, 0), 4).report();
    assertThat(r.events()).hasSize(2);
    LogEvent leak = r.events().get(1);
    assertThat(leak.kind()).isEqualTo(EventKind.LEAK);
    assertThat(leak.start()).isEqualTo(at(3, 14, 50));
    assertThat(leak.end()).isEqualTo(at(3, 15, 0));
    // 78 to 58 L less ten minutes.
    litres(leak.volume(), 20 - 10 / 6.0 / DAY_H);
    // One step, or two in a row whose first began anywhere, is no proof.
    log = running().until(at(3, 13, 0), 4).until(at(3, 15, 0), 7);
    assertThat(log.until(at(4, 0, 0), 5).report().count(EventKind.LEAK)).isZero();
    log = running().until(at(3, 13, 0), 4).until(at(3, 15, 0), 7);
    assertThat(log.until(at(4, 0, 0), 6).report().count(EventKind.LEAK)).isZero();
  }

  /** The hose came off: water is lost, and the cap is dry from then on. */
  @Test
  void aLeakWithADryCapIsAHose() {
    HandLog log = running().cap(1000).until(at(3, 13, 0), 4).cap(1990);
    LogReport r =
        log.until(at(3, 13, 20), 3).until(at(3, 13, 40), 2).until(at(4, 0, 0), 1).report();
    assertThat(r.events())
        .extracting(LogEvent::kind)
        .containsExactly(EventKind.LEAK, EventKind.PUMP_FAILURE);
    assertThat(r.events())
        .extracting(LogEvent::cause)
        .containsExactly(LogEvent.HOSE_OFF, LogEvent.HOSE_OFF);
    assertThat(r.events().get(1).start()).isEqualTo(at(3, 12, 50));
    assertThat(r.alarms(r.last(), Double.NaN))
        .extracting(LogAlarm::kind)
        .startsWith(LogAlarm.Kind.LEAK, LogAlarm.Kind.NO_WATER_AT_CAP);
  }

  /** The emptying before a change of solution is no leak, though it is as quick. */
  @Test
  void anEmptyingIsNoLeak() {
    HandLog log = fourDays().until(at(3, 13, 0), 4).until(at(3, 13, 10), 3);
    log.until(at(3, 13, 20), 2).until(at(3, 15, 0), 1).until(at(4, 0, 0), 7);
    LogReport r = log.report();
    assertThat(r.count(EventKind.LEAK)).isZero();
    assertThat(r.count(EventKind.SOLUTION_CHANGE)).isEqualTo(1);
  }

  /** A cap that is dry while the tank is emptied and filled anew is excused for 90 minutes. */
  @Test
  void aChangeExcusesTheCap() {
    for (int minutes : new int[] {90, 100}) {
      HandLog log = fourDays().cap(1000).until(at(3, 13, 0), 4).cap(1990);
      log.until(at(3, 15, 0), 0).until(at(3, 15, 0) + (minutes + 1) * MINUTE, 7).cap(1000);
      LogReport r = log.until(at(4, 6, 0), 7).report();
      assertThat(r.count(EventKind.SOLUTION_CHANGE)).isEqualTo(1);
      assertThat(r.count(EventKind.PUMP_FAILURE)).as("%d min", minutes).isEqualTo(minutes / 100);
    }
  }

  /**
   * Two days and more without a move: 2.5 steps of 10 L at 10 L a day are seen when 25 L are due.
   */
  @Test
  void aStuckFloat() {
    // Read from day 3 at noon; 25 L are 33.6 h of thirst: 7.6 h, a day and 12.56 h, 18:43 on day 5.
    LogReport r = fourDays().until(at(5, 18, 50), 4).report();
    assertThat(r.events()).isEmpty();
    r = fourDays().until(at(7, 0, 0), 4).report();
    LogEvent stuck = only(r, EventKind.STUCK_FLOAT);
    assertThat(stuck.start()).isEqualTo(at(3, 12, 0));
    assertThat(stuck.end()).isEqualTo(at(6, 23, 50));
    assertThat(stuck.isOpen()).isTrue();
    assertThat(r.days().get(3).isSure()).isFalse();
    assertThat(r.days().get(5).isSure()).isFalse();
    assertThat(r.days().get(2).isSure()).isTrue();
    // Looked at every half an hour.
    assertThat(stuck.told()).isEqualTo(at(5, 19, 10));
  }

  /** It comes free with a jump of two steps after 1.4 were due, not of one, nor after less. */
  @Test
  void aFloatThatComesFree() {
    LogReport r = fourDays().until(at(5, 12, 0), 4).until(at(6, 0, 0), 2).report();
    LogEvent stuck = only(r, EventKind.STUCK_FLOAT);
    assertThat(stuck.start()).isEqualTo(at(3, 12, 0));
    assertThat(stuck.end()).isEqualTo(at(5, 11, 50));
    assertThat(stuck.told()).isEqualTo(at(5, 12, 0));
    assertThat(stuck.isOpen()).isFalse();
    assertThat(r.days().get(4).isSure()).isFalse();
    r = fourDays().until(at(5, 12, 0), 4).until(at(6, 0, 0), 3).report();
    assertThat(r.count(EventKind.STUCK_FLOAT)).as("one step").isZero();
    r = fourDays().until(at(4, 12, 0), 4).until(at(5, 0, 0), 2).report();
    assertThat(r.count(EventKind.STUCK_FLOAT)).as("one day").isZero();
    // It comes free with a jump to the bottom while the pump rests: nobody emptied the tank.
    r = fourDays().until(at(6, 12, 0), 4).until(at(7, 12, 0), 1).report();
    only(r, EventKind.STUCK_FLOAT);
  }

  /** Rain fills what is drunk: 20 mm on 1 m2 are 20 L more until a float is stuck. */
  @Test
  void rainKeepsAFloat() {
    HandLog log = fourDays().until(at(5, 0, 0), 4).rain(4, 20);
    assertThat(log.until(at(7, 0, 0), 4).report().count(EventKind.STUCK_FLOAT)).isZero();
  }

  /** At the blind top 10 L above its edge drink away unseen; 90 L are full here, so nothing. */
  @Test
  void aStuckFloatIsForgottenOverAGap() {
    HandLog log = fourDays().until(at(5, 0, 0), 4).at(at(5, 3, 0)).until(at(6, 12, 0), 4);
    assertThat(log.report().count(EventKind.STUCK_FLOAT)).isZero();
    log = fourDays().until(at(7, 0, 0), 4).at(at(7, 3, 0)).until(at(7, 12, 0), 4);
    LogReport r = log.report();
    LogEvent stuck = r.events().get(0);
    assertThat(stuck.kind()).isEqualTo(EventKind.STUCK_FLOAT);
    assertThat(stuck.isOpen()).isFalse();
    assertThat(stuck.end()).isEqualTo(at(6, 23, 50));
  }

  /** Rows without a reading: an hour is rest, what is longer makes its days unsure. */
  @Test
  void rowsWithoutAReading() {
    for (int rows : new int[] {5, 6}) {
      HandLog log = fourDays().until(at(4, 10, 0), 4).read(Double.NaN, rows);
      LogReport r = log.until(at(4, 12, 0), 4).until(at(5, 2, 0), 3).report();
      assertThat(r.days().get(4).isSure()).as("%d rows", rows).isEqualTo(rows == 5);
      assertThat(r.days().get(3).isSure()).isTrue();
    }
    // From 23:40 to 1 h: both days.
    HandLog log = fourDays().until(at(4, 12, 0), 4).until(at(4, 23, 50), 3).read(Double.NaN, 7);
    LogReport r = log.until(at(5, 12, 0), 3).until(at(6, 2, 0), 2).report();
    assertThat(r.days().get(4).isSure()).isFalse();
    assertThat(r.days().get(5).isSure()).isFalse();
    // A short or open wire is a reading: its own event tells of it.
    for (double ohm : new double[] {2000, 0}) {
      log = fourDays().until(at(4, 10, 0), 4).read(Double.NaN, 4).read(ohm, 1);
      log.read(Double.NaN, 4).until(at(4, 12, 0), 4).until(at(5, 2, 0), 3);
      assertThat(log.report().days().get(4).isSure()).as("%s ohm", ohm).isTrue();
    }
  }

  /** Rows every half an hour: three of them are longer than an hour. */
  @Test
  void seldomRowsWithoutAReading() {
    for (int rows : new int[] {2, 3}) {
      HandLog log = new HandLog(SYSTEM, JUNE, 30 * MINUTE).until(at(1, 10, 0), 5);
      LogReport r = log.read(Double.NaN, rows).until(at(3, 0, 0), 5).report();
      assertThat(r.days().get(1).isSure()).as("%d rows", rows).isEqualTo(rows == 2);
    }
  }

  /** At the end of the log: an hour after the last reading the level is a guess. */
  @Test
  void aLogThatGoesOnWithoutReadings() {
    HandLog log = log().until(at(0, 10, 0), 5);
    assertThat(log.read(Double.NaN, 6).report().alarms(log.now(), 0)).isEmpty();
    LogReport r = log.read(Double.NaN, 1).report();
    LogAlarm silent = r.alarms(r.last(), Double.NaN).get(0);
    assertThat(silent.kind()).isEqualTo(LogAlarm.Kind.LOG_SILENT);
    assertThat(silent.since()).isEqualTo(at(0, 9, 50));
    assertThat(silent.opened()).isEqualTo(at(0, 10, 50));
    assertThat(silent.cause()).isEqualTo(LogAlarm.NO_READING);
    assertThat(r.hasVolume()).isTrue();
    LogReport never = log().read(Double.NaN, 30).report();
    assertThat(never.hasVolume()).isFalse();
    assertThat(never.alarms(never.last(), Double.NaN)).isEmpty();
  }

  /** Two open rows before a gap are a fault that ends there; one after it is a single row. */
  @Test
  void aFaultEndsAtAGap() {
    for (double ohm : new double[] {2000, 0}) {
      HandLog log = log().until(at(0, 10, 0), 5).read(ohm, 2);
      log.at(at(0, 10, 40)).read(ohm, 1).until(at(1, 0, 0), 5);
      LogReport r = log.report();
      assertThat(r.events()).hasSize(2);
      LogEvent fault = r.events().get(0);
      assertThat(fault.kind()).isEqualTo(ohm > 0 ? EventKind.SENSOR_OPEN : EventKind.SENSOR_SHORT);
      assertThat(fault.end()).isEqualTo(at(0, 10, 10));
      assertThat(fault.isOpen()).isFalse();
      log = log().until(at(0, 10, 0), 5).read(ohm, 2);
      LogReport now = log.report();
      assertThat(now.alarms(now.last(), Double.NaN))
          .extracting(LogAlarm::kind)
          .containsExactly(ohm > 0 ? LogAlarm.Kind.SENSOR_OPEN : LogAlarm.Kind.SENSOR_SHORT);
      assertThat(now.isKiloOhm()).isFalse();
    }
  }

  /** The time that the cap may be dry, 45 min and two rows, counts anew after a gap. */
  @Test
  void theCapCountsAnewAfterAGap() {
    HandLog log = log().cap(1000).until(at(0, 10, 0), 5).cap(1990).until(at(0, 11, 0), 5);
    log.at(at(0, 11, 40)).until(at(0, 12, 50), 5);
    assertThat(log.report().count(EventKind.PUMP_FAILURE)).isZero();
    log.show(5, 1);
    LogReport r = log.report();
    assertThat(r.count(EventKind.PUMP_FAILURE)).isEqualTo(1);
    assertThat(r.alarms(r.last(), Double.NaN))
        .extracting(LogAlarm::kind)
        .containsExactly(LogAlarm.Kind.NO_WATER_AT_CAP);
  }

  /** Two hours without water are borne; a longer failure makes the day unsure: plants wilt. */
  @Test
  void aLongFailureLeavesItsDayOut() {
    for (int minutes : new int[] {120, 130}) {
      HandLog log = log().cap(1000).until(at(1, 10, 0), 5).cap(1990);
      LogReport r =
          log.until(at(1, 9, 50) + (minutes + 1) * MINUTE, 5)
              .cap(1000)
              .until(at(3, 0, 0), 5)
              .report();
      assertThat(r.count(EventKind.PUMP_FAILURE)).isEqualTo(1);
      assertThat(r.days().get(1).isSure()).as("%d min", minutes).isEqualTo(minutes == 120);
    }
  }

  /** Without a rain column a step more and an EC that falls by 0.1 are rain; not across a gap. */
  @Test
  void rainByLevelAndEc() {
    HandLog log = log().ec(1.6).until(at(0, 10, 0), 5).ec(1.5).until(at(1, 0, 0), 6);
    LogReport r = log.report();
    LogEvent rain = only(r, EventKind.RAIN);
    assertThat(rain.start()).isEqualTo(at(0, 9, 50));
    assertThat(rain.end()).isEqualTo(at(0, 10, 0));
    litres(rain.volume(), 10);
    log = log().ec(1.6).until(at(0, 10, 0), 5).show(6, 1).ec(1.5);
    r = log.at(at(0, 11, 0)).until(at(1, 0, 0), 6).report();
    only(r, EventKind.GAP);
    // A column of rain without rain: a rise is no rain.
    log = log().ec(1.6).rain(5, 0).until(at(0, 10, 0), 5).ec(1.5).until(at(1, 0, 0), 6);
    assertThat(log.report().events()).isEmpty();
    // A can that follows at once explains it.
    log = log().ec(1.6).until(at(0, 10, 0), 2).show(3, 2).ec(1.5).until(at(1, 0, 0), 6);
    only(log.report(), EventKind.REFILL);
  }

  /** By the column, with a rise of a step meanwhile: rain, and no use less than nothing. */
  @Test
  void rainByItsColumn() {
    HandLog log = fourDays().until(at(3, 20, 0), 4).rain(4, 6).rain(4, 6);
    LogReport r = log.until(at(5, 0, 0), 5).report();
    LogEvent rain = only(r, EventKind.RAIN);
    litres(rain.volume(), 12);
    assertThat(rain.mm()).isCloseTo(12, offset(1e-9));
    litres(r.days().get(3).rain(), 12);
    assertThat(r.days().get(3).isCounted()).isFalse();
  }
}

package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Logs of one happening each, rows ten minutes apart, in the box of LogFixtures: its steps begin at
 * 20, 30, ... 90 L and last 2 L lower while it is drunk from; nothing is kept up by a run. Plants
 * drink 6 L a day, between 7 and 19 h. What must be found is known from the way they are made.
 */
class MadeByHandTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final long DAY = LogFixtures.DAY;
  private static final LogSystem SYSTEM = LogFixtures.system(ZoneOffset.UTC, 0);

  /** Litres drunk since the begin at a steady 6 L a day by day. */
  private static double drunk(long since) {
    double today = (since % DAY - 7 * HOUR) / (12.0 * HOUR);
    return 6 * (since / DAY) + 6 * Math.min(1, Math.max(0, today));
  }

  /** Rows from litres by the time since the begin; the step lasts 2 L on the way down. */
  private static List<LogRow> rows(double days, LongToDoubleFunction litres) {
    List<LogRow> rows = new ArrayList<>();
    int step = -1;
    for (long t = 0; t <= days * DAY; t += 10 * MINUTE) {
      double v = litres.applyAsDouble(t);
      int up = (int) Math.min(8, Math.max(0, Math.floor(v / 10 + 1e-9) - 1));
      int down = (int) Math.min(8, Math.max(0, Math.floor((v + 2) / 10 - 1e-9) - 1));
      step = step < 0 ? up : Math.max(up, Math.min(step, down));
      LogRow row = LogFixtures.row(JUNE + t);
      row.reading = 10.4 + 20 * step;
      row.pump = 0;
      rows.add(row);
    }
    return rows;
  }

  private static LogReport pass(List<LogRow> rows) {
    LogPass pass = new LogPass(SYSTEM, LogLimits.DEFAULT);
    for (LogRow row : rows) {
      pass.accept(row);
    }
    return pass.finish();
  }

  private static LogReport report(double days, LongToDoubleFunction litres) {
    return pass(rows(days, litres));
  }

  private static LogEvent only(LogReport report, EventKind kind) {
    assertThat(report.events()).extracting(LogEvent::kind).containsExactly(kind);
    return report.events().get(0);
  }

  @Test
  void anOrdinaryWeekHasNoEvent() {
    LogReport r = report(9.5, t -> 85 - drunk(t));
    assertThat(r.events()).isEmpty();
    assertThat(r.rows()).isEqualTo(1369);
    assertThat(r.interval()).isEqualTo(10 * MINUTE);
    assertThat(r.days()).hasSize(10);
    assertThat(r.days().get(9).isWhole()).as("today").isFalse();
    assertThat(r.use().n()).isEqualTo(7);
    assertThat(1000 * r.use().mean()).isCloseTo(6, within(0.2));
    assertThat(1000 * r.volume()).isCloseTo(85 - drunk((long) (9.5 * DAY)), within(1.0));
    assertThat(r.volumeLow()).isLessThanOrEqualTo(r.volume());
    assertThat(r.volumeHigh()).isGreaterThanOrEqualTo(r.volume());
    // 28 L now, 20 at the low mark.
    assertThat(r.daysLeft().days()).isCloseTo((r.volume() - 0.02) / r.use().mean(), within(1e-9));
    assertThat(r.isBlind()).isFalse();
    assertThat(r.isOtherSender()).isFalse();
    for (int i = 2; i < 8; i++) {
      LogDay day = r.days().get(i);
      assertThat(day.isSure()).as("day " + i).isTrue();
      assertThat(1000 * day.used()).as("day " + i).isCloseTo(6, within(0.7));
      assertThat(day.date()).isEqualTo(JUNE / DAY + i);
    }
  }

  /** From 43 L, in the middle of a step, 30 L poured at noon are three steps. */
  @Test
  void threeStepsPouredAreARefillTwoAreNot() {
    long noon = 4 * DAY + 12 * HOUR;
    for (int litres : new int[] {30, 20}) {
      LogReport r = report(8, t -> 70 - drunk(t) + (t > noon ? litres : 0));
      assertThat(r.count(EventKind.REFILL)).isEqualTo(litres == 30 ? 1 : 0);
      if (litres == 30) {
        LogEvent refill = only(r, EventKind.REFILL);
        assertThat(refill.start()).isEqualTo(JUNE + noon);
        assertThat(refill.end()).isEqualTo(JUNE + noon + 10 * MINUTE);
        assertThat(1000 * refill.volume()).isCloseTo(30, within(1.5));
        assertThat(1000 * refill.volumeLow()).isLessThanOrEqualTo(30);
        assertThat(1000 * refill.volumeHigh()).isGreaterThanOrEqualTo(30);
        assertThat(r.days().get(4).refill()).isCloseTo(refill.volume(), within(0.006));
        assertThat(1000 * r.days().get(4).used()).isCloseTo(6, within(2.0));
        assertThat(refill.isOpen()).isFalse();
      }
    }
  }

  /** Two cans within an hour are one pouring, two apart are two. */
  @Test
  void cansPouredTogetherAreOnePouring() {
    long noon = 4 * DAY + 12 * HOUR;
    for (long apart : new long[] {50 * MINUTE, 4 * HOUR}) {
      LogReport r =
          report(8, t -> 50 - drunk(t) + (t > noon ? 30 : 0) + (t > noon + apart ? 30 : 0));
      assertThat(r.count(EventKind.REFILL)).isEqualTo(apart < HOUR ? 1 : 2);
      double sum = r.events().stream().mapToDouble(LogEvent::volume).sum();
      assertThat(1000 * sum).isCloseTo(60, within(5.0));
    }
  }

  /** 10 L an hour from noon on day 5, for two hours: half an hour takes what thirst takes in a day. */
  @Test
  void aLeakIsAFallThatThirstDoesNotExplain() {
    long noon = 5 * DAY + 12 * HOUR;
    LongToDoubleFunction lost = t -> Math.min(20, Math.max(0, 10.0 * (t - noon) / HOUR));
    LogReport r = report(7, t -> 89 - drunk(t) - lost.applyAsDouble(t));
    LogEvent leak = only(r, EventKind.LEAK);
    assertThat(leak.start()).isBetween(JUNE + noon - DAY, JUNE + noon + HOUR);
    assertThat(leak.end()).isBetween(JUNE + noon + HOUR, JUNE + noon + 3 * HOUR);
    assertThat(1000 * leak.volume()).isCloseTo(18, within(8.0));
    assertThat(r.days().get(5).isSure()).isFalse();
    assertThat(r.days().get(3).isSure()).isTrue();
    assertThat(report(7, t -> 89 - drunk(t) * 1.5).events()).as("heat is no leak").isEmpty();
  }

  /** A step that began on day 3 stays from day 5 on: 2.5 steps of 10 L are 6 L for four days. */
  @Test
  void aFloatThatStaysIsStuck() {
    LongToDoubleFunction seen = t -> 89 - drunk(Math.min(t, 5 * DAY));
    assertThat(report(7, seen).events()).as("three days are no proof").isEmpty();
    LogReport r = report(11, seen);
    LogEvent stuck = only(r, EventKind.STUCK_FLOAT);
    assertThat(stuck.start()).isBetween(JUNE + 3 * DAY, JUNE + 5 * DAY);
    assertThat(stuck.isOpen()).isTrue();
    assertThat(r.days().get(8).isSure()).isFalse();
    assertThat(r.alarms(r.last(), Double.NaN))
        .extracting(LogAlarm::kind)
        .contains(LogAlarm.Kind.STUCK_FLOAT);
  }

  /** Emptied at noon within the hour, filled two hours later. */
  @Test
  void emptiedAndFilledIsAChange() {
    long noon = 4 * DAY + 12 * HOUR;
    LongToDoubleFunction litres =
        t -> {
          if (t <= noon) {
            return 85 - drunk(t);
          }
          if (t < noon + 2 * HOUR) {
            return Math.max(2, 61 - 80.0 * (t - noon) / HOUR);
          }
          return 85 - (drunk(t) - drunk(noon));
        };
    LogReport r = report(8, litres);
    LogEvent change = only(r, EventKind.SOLUTION_CHANGE);
    assertThat(change.start()).isBetween(JUNE + noon - HOUR, JUNE + noon + HOUR);
    assertThat(change.end()).isBetween(JUNE + noon + 2 * HOUR, JUNE + noon + 3 * HOUR);
    LogReport never = report(8, t -> t <= noon ? 85 - drunk(t) : litres.applyAsDouble(noon + HOUR));
    LogEvent leak = only(never, EventKind.LEAK);
    assertThat(leak.cause()).isEqualTo(LogEvent.DRAINED);
    assertThat(leak.told()).as("a change may take eight hours").isGreaterThan(JUNE + noon + 8 * HOUR);
  }

  /** Two and a half intervals are no silence yet. */
  @Test
  void aGapIsLongerThanTwoAndAHalfIntervals() {
    for (int missing : new int[] {1, 2}) {
      List<LogRow> rows = rows(6, t -> 85 - drunk(t));
      for (int i = 0; i < missing; i++) {
        rows.remove(500);
      }
      LogReport r = pass(rows);
      assertThat(r.count(EventKind.GAP)).isEqualTo(missing - 1);
      assertThat(r.days().get(3).isSure()).isEqualTo(missing == 1);
      if (missing == 2) {
        LogEvent gap = only(r, EventKind.GAP);
        assertThat(gap.start()).isEqualTo(JUNE + 499 * 10 * MINUTE);
        assertThat(gap.end()).isEqualTo(JUNE + 502 * 10 * MINUTE);
      }
    }
  }

  /** Twice at one instant, alike and not; late by an hour and by three; a clock that is not set. */
  @Test
  void rowsThatDoNotComeInOrder() {
    List<LogRow> rows = rows(4, t -> 85 - drunk(t));
    LogRow again = LogFixtures.row(0);
    again.copy(rows.get(100));
    rows.add(101, again);
    LogRow other = LogFixtures.row(0);
    other.copy(rows.get(200));
    other.reading = 10.4;
    rows.add(201, other);
    rows.add(306, rows.remove(300));
    rows.add(420, rows.remove(400));
    LogRow unset = LogFixtures.row(5000);
    unset.reading = 10.4;
    rows.add(450, unset);
    LogReport r = pass(rows);
    assertThat(r.rows()).isEqualTo(4 * 144 + 1 + 3);
    assertThat(r.duplicates()).isEqualTo(2);
    assertThat(r.conflicting()).isEqualTo(1);
    assertThat(r.lateRows()).isEqualTo(2);
    assertThat(r.tooLateRows()).isEqualTo(1);
    assertThat(r.clockNotSet()).isEqualTo(1);
    assertThat(r.badReadings()).isZero();
    assertThat(r.events()).as("the odd one of two is not believed").isEmpty();
    assertThat(r.first()).isEqualTo(JUNE);
    assertThat(r.last()).isEqualTo(JUNE + 4 * DAY);
  }

  @Test
  void anotherSenderIsTold() {
    for (int share : new int[] {20, 19}) {
      List<LogRow> rows = rows(3, t -> 85 - drunk(t));
      for (int i = 0; i < rows.size(); i++) {
        rows.get(i).reading = i * 100 / rows.size() < share + 1 ? 300 : rows.get(i).reading;
      }
      LogReport r = pass(rows);
      assertThat(r.isOtherSender()).isEqualTo(r.badReadings() > 0.2 * r.rows());
      assertThat(r.badReadings()).isGreaterThan(60);
    }
  }

  /** 26 L and less at the end, 20 L at the low mark; silent after three intervals. */
  @Test
  void alarmsOfNow() {
    LogReport r = report(9.5, t -> 85 - drunk(t));
    double left = r.daysLeft().days();
    assertThat(r.alarms(r.last(), left - 0.01)).isEmpty();
    LogAlarm few = r.alarms(r.last(), left + 0.5).get(0);
    assertThat(few.kind()).isEqualTo(LogAlarm.Kind.DAYS_LEFT);
    assertThat(few.opened()).isCloseTo(r.last() - DAY / 2, within(1000L));
    assertThat(r.alarms(r.last() + 30 * MINUTE, Double.NaN)).isEmpty();
    LogAlarm silent = r.alarms(r.last() + 30 * MINUTE + 1, Double.NaN).get(0);
    assertThat(silent.kind()).isEqualTo(LogAlarm.Kind.LOG_SILENT);
    assertThat(silent.opened()).isEqualTo(r.last() + 30 * MINUTE);
    assertThat(silent.since()).isEqualTo(r.last());
    LogReport low = report(9.5, t -> 70 - drunk(t));
    assertThat(low.alarms(low.last(), Double.NaN))
        .extracting(LogAlarm::kind)
        .containsExactly(LogAlarm.Kind.BELOW_LOW);
    assertThat(low.daysLeft().days()).isZero();
    assertThat(r.topupBy()).isBetween(JUNE / DAY + 9, JUNE / DAY + 11);
    assertThat(r.dateAfter(2)).isEqualTo(JUNE / DAY + 11);
    assertThat(r.daysBefore(2)).isEqualTo(r.last() - 2 * DAY);
    assertThat(r.dateOf(JUNE - 1)).isEqualTo(JUNE / DAY - 1);
  }
}

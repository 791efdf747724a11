package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.List;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** The judges alone, each threshold of the sheet at its limit and just over it. */
class JudgesTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final LogLimits LIMITS = LogLimits.DEFAULT;

  private final Interval interval = LogFixtures.tenMinutes();
  private final EventBook events = new EventBook(LogFixtures.days(interval));
  private final LogSystem system = LogFixtures.system();
  private final StepVolumes volumes = new StepVolumes(system);

  private LogEvent only() {
    assertThat(events.all()).hasSize(1);
    return events.all().get(0);
  }

  private static LogRow step(long time, int step) {
    LogRow row = LogFixtures.row(time);
    row.step = step;
    row.rest = step;
    return row;
  }

  private FaultJudge faults() {
    return new FaultJudge(EventKind.SENSOR_OPEN, StepReader.OPEN, events, interval, LIMITS);
  }

  @Test
  void oneFaultyRowIsNoFaultTwoWithinThreeQuartersOfAnHourAre() {
    FaultJudge judge = faults();
    judge.row(step(JUNE, StepReader.OPEN));
    assertThat(events.all()).isEmpty();
    judge.row(step(JUNE + 45 * MINUTE, StepReader.OPEN));
    assertThat(only().start()).isEqualTo(JUNE);
    assertThat(only().end()).isEqualTo(JUNE + 45 * MINUTE);
    assertThat(only().kind()).isEqualTo(EventKind.SENSOR_OPEN);
    assertThat(only().isOpen()).isTrue();
    judge.row(step(JUNE + 50 * MINUTE, StepReader.OPEN));
    assertThat(only().end()).isEqualTo(JUNE + 50 * MINUTE);
    judge.row(step(JUNE + 55 * MINUTE, StepReader.SHORT));
    assertThat(only().isOpen()).as("another fault says nothing of it").isTrue();
    judge.row(step(JUNE + 60 * MINUTE, 3));
    assertThat(only().isOpen()).isFalse();
  }

  @Test
  void faultyRowsTooFarApartAreTwoSingleRows() {
    FaultJudge judge = faults();
    judge.row(step(JUNE, StepReader.OPEN));
    judge.row(step(JUNE + 45 * MINUTE + 1, StepReader.OPEN));
    assertThat(events.all()).isEmpty();
    judge.gap();
    judge.row(step(JUNE + 46 * MINUTE, StepReader.OPEN));
    assertThat(events.all()).as("a gap between them").isEmpty();
  }

  @Test
  void fourGoodRowsBetweenTwoFaultyOnesAndNotFive() {
    for (int good : new int[] {4, 5}) {
      events.all().clear();
      FaultJudge judge = faults();
      judge.row(step(JUNE, StepReader.OPEN));
      for (int i = 1; i <= good; i++) {
        judge.row(step(JUNE + i * MINUTE, 3));
      }
      judge.row(step(JUNE + 10 * MINUTE, StepReader.OPEN));
      assertThat(events.all()).hasSize(good == 4 ? 1 : 0);
      judge.gap();
      assertThat(events.all()).allMatch(e -> !e.isOpen());
    }
  }

  private LogRow cap(long time, double counts, boolean on, int step, int rest) {
    LogRow row = step(time, step);
    row.cap = counts;
    row.pump = on ? 1 : 0;
    row.rest = rest;
    return row;
  }

  private CapJudge caps() {
    return new CapJudge(LIMITS, system, volumes, events, interval);
  }

  /** 45 min of the plan and two intervals of ten minutes: dry for longer than 65 min. */
  @Test
  void theCapMayBeDryForItsTime() {
    CapJudge judge = caps();
    judge.row(cap(JUNE, 1800, false, 5, 5)); // 80 % is still wet
    judge.row(cap(JUNE + 65 * MINUTE, 1801, false, 5, 5));
    assertThat(events.all()).isEmpty();
    judge.row(cap(JUNE + 65 * MINUTE + 1, 1900, false, 5, 5));
    assertThat(only().kind()).isEqualTo(EventKind.PUMP_FAILURE);
    assertThat(only().start()).isEqualTo(JUNE);
    assertThat(only().isOpen()).isTrue();
    assertThat(only().cause()).isEqualTo(LogEvent.PUMP_DEAD);
    assertThat(judge.isDead()).isTrue();
    assertThat(judge.isFailing()).isTrue();
    assertThat(judge.dryCounts()).isEqualTo(1900);
    judge.row(cap(JUNE + 70 * MINUTE, 1932, false, 5, 5));
    assertThat(judge.dryCounts()).isEqualTo(1901);
    judge.row(cap(JUNE + 80 * MINUTE, 1100, true, 5, 5));
    assertThat(only().end()).isEqualTo(JUNE + 80 * MINUTE);
    assertThat(only().isOpen()).isFalse();
    assertThat(judge.isFailing()).isFalse();
    assertThat(judge.isDead()).isFalse();
    assertThat(judge.wetCounts()).isEqualTo(1100);
    judge.row(cap(JUNE + 90 * MINUTE, 1132, true, 5, 5));
    assertThat(judge.wetCounts()).isEqualTo(1101);
    judge.row(cap(JUNE + 95 * MINUTE, 1500, true, 5, 5));
    assertThat(judge.wetCounts()).as("half dry is not running water").isEqualTo(1101);
    judge.row(cap(JUNE + 96 * MINUTE, 1000, false, 5, 5));
    assertThat(judge.wetCounts()).as("nor is rest").isEqualTo(1101);
  }

  @Test
  void aDryCapByItsCause() {
    CapJudge judge = caps();
    judge.row(cap(JUNE, 1000, true, 5, 5));
    judge.row(cap(JUNE + 70 * MINUTE, 1950, true, 4, 5));
    assertThat(only().cause()).as("one dip may be chance").isEqualTo(LogEvent.PUMP_DEAD);
    judge.row(cap(JUNE + 80 * MINUTE, 1950, true, 4, 5));
    assertThat(only().cause()).isEqualTo(LogEvent.CAP_SENSOR_DRY);
    assertThat(judge.isDead()).isFalse();
    judge.row(cap(JUNE + 90 * MINUTE, 1950, true, 0, 1));
    assertThat(only().cause()).as("at the intake").isEqualTo(LogEvent.PUMP_DREW_AIR);
    judge.gap();
    assertThat(only().isOpen()).isFalse();
    judge.row(cap(JUNE + 100 * MINUTE, 1950, true, 4, 5));
    judge.row(cap(JUNE + 165 * MINUTE, 1950, true, 4, 5));
    assertThat(events.all()).as("the time counts anew after a gap").hasSize(1);
    judge.row(cap(JUNE + 166 * MINUTE, 1950, false, 4, 5));
    assertThat(events.all()).hasSize(2);
    assertThat(events.all().get(1).cause()).isEqualTo(LogEvent.PUMP_DEAD);
  }

  /** Emptied at noon, filled at 13 h: 90 min before and after nothing is a failure. */
  @Test
  void aChangeOfSolutionExcusesADryCap() {
    long noon = JUNE + 12 * HOUR;
    for (long early : new long[] {90 * MINUTE, 90 * MINUTE + 1}) {
      events.all().clear();
      CapJudge judge = caps();
      judge.change(noon, noon + HOUR);
      judge.row(cap(noon - early, 1000, true, 5, 5));
      judge.row(cap(noon + HOUR + 90 * MINUTE, 1950, false, 5, 5));
      assertThat(events.all()).hasSize(early == 90 * MINUTE ? 0 : 1);
      judge.row(cap(noon + HOUR + 90 * MINUTE + 1, 1950, false, 5, 5));
      assertThat(events.all()).hasSize(1);
    }
  }

  @Test
  void countsOfNoCapSayNothing() {
    CapJudge judge = caps();
    judge.row(cap(JUNE, 1000, true, 5, 5));
    judge.row(cap(JUNE + 3 * HOUR, 2251, false, 5, 5));
    judge.row(cap(JUNE + 3 * HOUR, Double.NaN, false, 5, 5));
    assertThat(events.all()).isEmpty();
  }

  private static LogRow rain(long time, double mm) {
    LogRow row = LogFixtures.row(time);
    row.rain = mm;
    return row;
  }

  /** On 1 m2 a mm is a litre; half a step of 10 L makes an event. */
  @Test
  void fiveMillimetresAreRain() {
    RainJudge judge = new RainJudge(LIMITS, system, volumes, events);
    assertThat(judge.row(rain(JUNE, 2), JUNE - 10 * MINUTE)).isCloseTo(0.002, within(1e-15));
    assertThat(judge.row(rain(JUNE + 10 * MINUTE, 0), JUNE)).isZero();
    assertThat(judge.row(rain(JUNE + 10 * MINUTE, Double.NaN), JUNE)).isZero();
    judge.row(rain(JUNE + 20 * MINUTE, 2.9), JUNE + 10 * MINUTE);
    assertThat(events.all()).isEmpty();
    assertThat(judge.isRecent(JUNE + 140 * MINUTE)).isTrue();
    assertThat(judge.isRecent(JUNE + 140 * MINUTE + 1)).isFalse();
    judge.row(rain(JUNE + 140 * MINUTE, 0.6), JUNE + 130 * MINUTE);
    assertThat(only().start()).isEqualTo(JUNE - 10 * MINUTE);
    assertThat(only().end()).isEqualTo(JUNE + 140 * MINUTE);
    assertThat(only().mm()).isCloseTo(5.5, within(1e-12));
    assertThat(only().volume()).isCloseTo(0.0055, within(1e-15));
    judge.row(rain(JUNE + 260 * MINUTE + 1, 5.5), JUNE + 250 * MINUTE);
    assertThat(events.all()).as("two hours later it is another rain").hasSize(2);
    assertThat(events.all().get(1).mm()).isCloseTo(5.5, within(1e-12));
    assertThat(events.all().get(1).start()).isEqualTo(JUNE + 250 * MINUTE);
  }

  /** From step 3 to 4 while the EC falls by 0.02; told after seven intervals of ten minutes. */
  @Test
  void withoutAColumnRainIsARiseWithAFallOfTheEc() {
    for (double after : new double[] {1.58, 1.5801}) {
      events.all().clear();
      RiseJudge judge = new RiseJudge(LIMITS, volumes, events, interval);
      judge.rise(JUNE, JUNE + 10 * MINUTE, 3, 4, 1.6);
      judge.row(LogFixtures.row(JUNE + 80 * MINUTE - 1), after);
      assertThat(events.all()).isEmpty();
      judge.row(LogFixtures.row(JUNE + 80 * MINUTE), after);
      judge.row(LogFixtures.row(JUNE + 90 * MINUTE), 1);
      assertThat(events.all()).hasSize(after == 1.58 ? 1 : 0);
    }
    events.all().clear();
    RiseJudge judge = new RiseJudge(LIMITS, volumes, events, interval);
    judge.rise(JUNE, JUNE + 10 * MINUTE, 3, 4, 1.6);
    judge.rise(JUNE + 20 * MINUTE, JUNE + 30 * MINUTE, 4, 5, 1.55);
    judge.row(LogFixtures.row(JUNE + 100 * MINUTE), 1.5);
    assertThat(only().kind()).isEqualTo(EventKind.RAIN);
    assertThat(only().start()).isEqualTo(JUNE);
    assertThat(only().end()).isEqualTo(JUNE + 30 * MINUTE);
    assertThat(only().told()).isEqualTo(JUNE + 100 * MINUTE);
    assertThat(only().volume()).isCloseTo(0.02, within(1e-12));
    assertThat(only().volumeLow()).isCloseTo(0.01, within(1e-12));
    assertThat(only().volumeHigh()).isCloseTo(0.03, within(1e-12));
    judge.rise(JUNE + 140 * MINUTE, JUNE + 150 * MINUTE, 5, 6, 1.5);
    judge.row(LogFixtures.row(JUNE + 220 * MINUTE), 1.4);
    assertThat(only().volume()).as("within two hours it is one").isCloseTo(0.03, within(1e-12));
    judge.rise(JUNE + 290 * MINUTE, JUNE + 300 * MINUTE, 6, 7, 1.4);
    judge.drop();
    judge.row(LogFixtures.row(JUNE + 400 * MINUTE), 1.2);
    assertThat(only().end()).isEqualTo(JUNE + 150 * MINUTE);
    judge.rise(JUNE + 400 * MINUTE, JUNE + 410 * MINUTE, 6, 7, 1.4);
    judge.row(rain(JUNE + 420 * MINUTE, 0), 1.4);
    judge.row(LogFixtures.row(JUNE + 500 * MINUTE), 1.2);
    assertThat(events.all()).as("there is a column of rain").hasSize(1);
  }

  /** The median of six rows, looked at every ten minutes. */
  @Test
  void theEcIsOutOfItsBandByItsMedian() {
    BandWatch watch = new BandWatch(system, LIMITS);
    UseBook book = new UseBook(volumes, new Rhythm(new LocalClock(ZoneOffset.UTC), LIMITS), null);
    double[] ecs = {1.9, 2.2, 1.9, 2.2, 2.2, 1.8, 2.2, 1.9, 1.9, 1.9};
    for (int i = 0; i < ecs.length; i++) {
      LogRow row = LogFixtures.row(JUNE + i * 10 * MINUTE);
      row.ec = ecs[i];
      watch.row(row, book, StepReader.BLANK);
      if (i == 4) {
        assertThat(watch.ec()).as("five rows are too few").isNaN();
      }
      if (i == 5) {
        // 1.8 1.9 1.9 2.2 2.2 2.2
        assertThat(watch.ec()).isCloseTo(2.05, within(1e-12));
      }
      if (i == 8) {
        assertThat(watch.outSince()).isEqualTo(JUNE + 50 * MINUTE);
      }
    }
    // 2.2 1.8 2.2 1.9 1.9 1.9
    assertThat(watch.ec()).isCloseTo(1.9, within(1e-12));
    assertThat(watch.outSince()).isEqualTo(Long.MIN_VALUE);
    assertThat(watch.belowSince()).isEqualTo(Long.MIN_VALUE);
  }

  @Test
  void volumesOfTheSteps() {
    assertThat(volumes.top()).isEqualTo(8);
    assertThat(volumes.meanStep()).isCloseTo(0.01, within(1e-12));
    assertThat(volumes.meanHysteresis()).isCloseTo(0.002, within(1e-12));
    assertThat(volumes.rising(3)).isCloseTo(0.04, within(1e-12));
    assertThat(volumes.rising(9)).as("above the top the rim").isCloseTo(0.1, within(1e-12));
    assertThat(volumes.least(0)).isZero();
    assertThat(volumes.least(3)).isCloseTo(0.038, within(1e-12));
    assertThat(volumes.falling(0, true)).isZero();
    // The dip of a run shakes the hysteresis of 2 L out; without a run it stays.
    assertThat(volumes.falling(3, true)).isCloseTo(0.04, within(1e-12));
    assertThat(volumes.falling(3, false)).isCloseTo(0.038, within(1e-12));
    volumes.learned(0.5);
    assertThat(volumes.falling(3, true)).isCloseTo(0.039, within(1e-12));
    assertThat(volumes.stepOf(0.0399)).isEqualTo(2);
    assertThat(volumes.stepOf(0.0401)).isEqualTo(3);
    assertThat(volumes.stepOf(1)).isEqualTo(8);
    assertThat(volumes.dipSteps()).isEqualTo(1);
    StepVolumes told = new StepVolumes(LogFixtures.system(ZoneOffset.UTC, 0.0005));
    told.learned(0);
    assertThat(told.falling(3, true)).isCloseTo(0.0385, within(1e-12));
    assertThat(new StepVolumes(LogFixtures.system(ZoneOffset.UTC, 0.013)).dipSteps()).isEqualTo(2);
  }

  /** 10 % of the span from wet to dry, and 0.05 mS/cm in 30 days: common practice, no source. */
  @Test
  void whatIsWorthSaying() {
    double no = Double.NaN;
    double[][] counts = {
      {1100, 1900, 0}, {1101, 2000, 1}, {1000, 1899, 1}, {899, no, 1}, {no, no, 0}
    };
    for (double[] c : counts) {
      LogLessons l = new LogLessons(no, no, no, no, false, c[0], c[1], no, 0, no);
      assertThat(l.isCapOff(system)).as("%s %s", c[0], c[1]).isEqualTo(c[2] == 1);
    }
    double[][] drifts = {{0.05, 0}, {0.051, 1}, {-0.05, 0}, {-0.051, 1}, {no, 0}};
    for (double[] d : drifts) {
      assertThat(new LogLessons(no, no, no, no, false, no, no, no, 0, d[0]).isDrifting())
          .isEqualTo(d[1] == 1);
    }
  }

  /** Uses 1, 2, 3: mean 2, scatter 1, interval 2 -/+ 1.28155/sqrt(3). */
  @Test
  void aPlanOutsideTheIntervalIsContradicted() {
    UseMean use = UseMean.of(1, 2, 3);
    double half = 1.2815515655446 / Math.sqrt(3);
    assertThat(use.low()).isCloseTo(2 - half, within(1e-9));
    assertThat(use.high()).isCloseTo(2 + half, within(1e-9));
    for (double day : new double[] {1.25, 1.27, 2.73, 2.75}) {
      boolean out = day == 1.25 || day == 2.75;
      assertThat(use.contradicts(day / 86_400)).isEqualTo(out);
      assertThat(use.contradicts(day / 86_400 / 2, 2)).isEqualTo(out);
    }
    assertThat(use.thirst(1 / 86_400.0)).isCloseTo(2, within(1e-12));
    assertThat(UseMean.of(0, 1).low()).isZero();
    assertThat(UseMean.of(5).sd()).isZero();
    assertThatThrownBy(UseMean::of).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> use.thirst(0)).isInstanceOf(Impossible.class);
    // A weekday of three days differs by more than 2/sqrt(3) = 1.155.
    assertThat(use.differs(UseMean.of(3.2, 3.2, 3.2), 3)).isTrue();
    assertThat(use.differs(UseMean.of(3.1, 3.1, 3.1), 3)).isFalse();
    assertThat(use.differs(UseMean.of(0.8, 0.8, 0.8), 3)).isTrue();
    assertThat(use.differs(UseMean.of(9, 9), 3)).as("two days are too few").isFalse();
  }

  @Test
  void aSpanOfTheEcHasAMedianAtEachEnd() {
    EcSpan span = new EcSpan(3);
    LogEvent poured = new LogEvent(EventKind.REFILL, JUNE, JUNE);
    span.after = poured;
    double[] ecs = {1.5, 1.9, 1.6, 1.7, 1.4, 1.3};
    for (int i = 0; i < ecs.length; i++) {
      assertThat(span.hasStart()).isEqualTo(i >= 3);
      assertThat(span.isWhole()).isFalse();
      span.add(JUNE + i * 10 * MINUTE, ecs[i]);
    }
    assertThat(span.isWhole()).isTrue();
    assertThat(span.start()).isEqualTo(1.6);
    assertThat(span.end()).isEqualTo(1.4);
    assertThat(poured.ecAfter()).isEqualTo(1.6);
    assertThat(span.startTime()).isEqualTo(JUNE + 10 * MINUTE);
    assertThat(span.endTime()).isEqualTo(JUNE + 40 * MINUTE);
    EcSpan even = new EcSpan(2);
    even.add(JUNE, 1.2);
    even.add(JUNE, 1.6);
    assertThat(even.start()).isCloseTo(1.4, within(1e-12));
  }

  /** Two spans of a day add up, each split as EcSplit splits it. */
  @Test
  void aDayAddsItsSpans() {
    LogDay day = new LogDay(20_000, JUNE, JUNE + LogFixtures.DAY);
    EcSplit one = EcSplit.of(0.05, 1.6, 0.047, 1.65, 0.001);
    for (int i = 0; i < 2; i++) {
      EcSpan span = new EcSpan(2);
      for (double ec : new double[] {1.6, 1.6, 1.65, 1.65}) {
        span.add(JUNE, ec);
      }
      span.volume = 0.05;
      span.rain = 0.001;
      span.used = 0.004;
      day.spans.add(span);
    }
    day.spans.add(new EcSpan(2));
    day.settle();
    assertThat(day.resolved).isTrue();
    assertThat(day.byConcentration()).isCloseTo(2 * one.byConcentration(), within(1e-12));
    assertThat(day.byDilution()).isCloseTo(2 * one.byDilution(), within(1e-12));
    assertThat(day.bySalt()).isCloseTo(2 * one.bySalt(), within(1e-12));
    assertThat(day.isSure()).isFalse();
    day.beginsWhole = true;
    assertThat(day.isWhole()).isFalse();
    day.endsWhole = true;
    assertThat(day.isSure()).isTrue();
    assertThat(day.isCounted()).isTrue();
    day.rain = 0.001;
    assertThat(day.isCounted()).isFalse();
    day.sure = false;
    assertThat(day.isSure()).isFalse();
  }

  @Test
  void aCapWithinTwoHoursOfALeakTellsOfAHose() {
    for (long apart : new long[] {2 * HOUR, 2 * HOUR + 1}) {
      for (boolean before : new boolean[] {true, false}) {
        LogEvent leak = new LogEvent(EventKind.LEAK, JUNE, JUNE + HOUR);
        long dries = before ? JUNE - apart : JUNE + HOUR + apart;
        LogEvent dry = new LogEvent(EventKind.PUMP_FAILURE, dries, dries + HOUR);
        dry.cause = LogEvent.PUMP_DEAD;
        Causes.name(before ? List.of(dry, leak) : List.of(leak, dry));
        boolean near = apart == 2 * HOUR;
        assertThat(leak.cause()).isEqualTo(near ? LogEvent.HOSE_OFF : "");
        assertThat(dry.cause()).isEqualTo(near ? LogEvent.HOSE_OFF : LogEvent.PUMP_DEAD);
      }
    }
    LogEvent leak = new LogEvent(EventKind.LEAK, JUNE, JUNE + HOUR);
    LogEvent air = new LogEvent(EventKind.PUMP_FAILURE, JUNE, JUNE + HOUR);
    air.cause = LogEvent.PUMP_DREW_AIR;
    LogEvent rain = new LogEvent(EventKind.RAIN, JUNE, JUNE + HOUR);
    Causes.name(List.of(leak, rain, air));
    assertThat(leak.cause()).isEqualTo(LogEvent.HOSE_OFF);
    assertThat(air.cause()).as("its own cause stays").isEqualTo(LogEvent.PUMP_DREW_AIR);
    assertThat(rain.cause()).isEmpty();
  }

  @Test
  void aLearnedDipNeedsTwentyRows() {
    Lessons lessons = new Lessons(volumes);
    for (int i = 0; i < 20; i++) {
      assertThat(lessons.mean()).isNaN();
      lessons.row(cap(JUNE + i * MINUTE, 1000, true, i % 4 == 0 ? 4 : 5, 5), false);
    }
    assertThat(lessons.mean()).as("one row of four read a step lower").isEqualTo(0.25);
    assertThat(lessons.dipSteps()).as("no whole stay yet").isNaN();
    lessons.row(cap(JUNE + HOUR, 1000, false, 4, 5), false);
    lessons.row(cap(JUNE + HOUR, 1000, true, StepReader.OPEN, 5), false);
    assertThat(lessons.mean()).as("rows at rest or without a step do not count").isEqualTo(0.25);
    // 21 of 22 rows ran: within a quarter of 0.8 and of 0.95, not of 0.7.
    assertThat(lessons.meetsAnyMoment(0.95)).isTrue();
    assertThat(lessons.meetsAnyMoment(0.8)).isTrue();
    assertThat(lessons.meetsAnyMoment(0.7)).isFalse();
    assertThat(lessons.meetsAnyMoment(0)).isFalse();
  }

  /** From step 5 down to 4 and down to 3: the stay at 4 is whole, that at 5 has no beginning. */
  @Test
  void onlyAWholeStayTeachesTheDip() {
    for (int spoilt = 0; spoilt < 3; spoilt++) {
      Lessons lessons = new Lessons(volumes);
      for (int rest = 5; rest >= 3; rest--) {
        for (int i = 0; i < 30; i++) {
          int step = rest == 4 && i % 2 == 0 ? 3 : rest;
          lessons.row(cap(JUNE, 1000, true, step, rest), spoilt == 1 && rest == 4 && i == 9);
        }
        if (spoilt == 2 && rest == 4) {
          lessons.gap();
        }
      }
      assertThat(lessons.dipSteps()).isEqualTo(Double.valueOf(spoilt == 0 ? 0.5 : Double.NaN));
    }
  }
}

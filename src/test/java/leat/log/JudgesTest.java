package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.List;
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
      RiseJudge judge = new RiseJudge(LIMITS, system, volumes, events, interval);
      judge.rise(JUNE, JUNE + 10 * MINUTE, 3, 4, 1.6);
      judge.row(LogFixtures.row(JUNE + 80 * MINUTE - 1), after);
      assertThat(events.all()).isEmpty();
      judge.row(LogFixtures.row(JUNE + 80 * MINUTE), after);
      judge.row(LogFixtures.row(JUNE + 90 * MINUTE), 1);
      assertThat(events.all()).hasSize(after == 1.58 ? 1 : 0);
    }
    events.all().clear();
    RiseJudge judge = new RiseJudge(LIMITS, system, volumes, events, interval);
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

  /** Two steps in one row, or a rise where no rain can fall, is a can: by hand. */
  @Test
  void aSmallCanIsNoRain() {
    for (int minutes : new int[] {20, 21}) {
      events.all().clear();
      RiseJudge judge = new RiseJudge(LIMITS, system, volumes, events, interval);
      judge.rise(JUNE, JUNE + minutes * MINUTE, 3, 5, 1.6);
      judge.row(LogFixtures.row(JUNE + 200 * MINUTE), 1.5);
      assertThat(only().kind()).isEqualTo(minutes == 20 ? EventKind.REFILL : EventKind.RAIN);
      assertThat(only().volume()).isCloseTo(0.02, within(1e-12));
    }
    LogSystem indoors = LogFixtures.roofed();
    events.all().clear();
    RiseJudge judge = new RiseJudge(LIMITS, indoors, volumes, events, interval);
    judge.rise(JUNE, JUNE + 100 * MINUTE, 3, 4, 1.6);
    judge.row(LogFixtures.row(JUNE + 300 * MINUTE), 1.5);
    assertThat(only().kind()).isEqualTo(EventKind.REFILL);
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
}

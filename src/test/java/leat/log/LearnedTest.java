package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** What a log teaches: volumes of steps, use, EC and the dip of a run, by hand. */
class LearnedTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;

  private final LogSystem system = LogFixtures.system();
  private final StepVolumes volumes = new StepVolumes(system);

  private static LogRow running(long time, int step, int rest) {
    LogRow row = LogFixtures.row(time);
    row.step = step;
    row.rest = rest;
    row.pump = 1;
    return row;
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
    span.follows(poured);
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
  void aLearnedDipNeedsTwentyRows() {
    Lessons lessons = new Lessons(volumes);
    for (int i = 0; i < 20; i++) {
      assertThat(lessons.mean()).isNaN();
      lessons.row(running(JUNE + i * MINUTE, i % 4 == 0 ? 4 : 5, 5), false);
    }
    assertThat(lessons.mean()).as("one row of four read a step lower").isEqualTo(0.25);
    assertThat(lessons.dipSteps()).as("no whole stay yet").isNaN();
    LogRow resting = running(JUNE + HOUR, 4, 5);
    resting.pump = 0;
    lessons.row(resting, false);
    lessons.row(running(JUNE + HOUR, StepReader.OPEN, 5), false);
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
          lessons.row(running(JUNE, step, rest), spoilt == 1 && rest == 4 && i == 9);
        }
        if (spoilt == 2 && rest == 4) {
          lessons.gap();
        }
      }
      assertThat(lessons.dipSteps()).isEqualTo(Double.valueOf(spoilt == 0 ? 0.5 : Double.NaN));
    }
  }

  /** Both ends solve the sheet's equation, m D +- z sqrt(sv2 + s2 D + s2 D2/n) = V - V_low. */
  @Test
  void theEndsOfTheDaysLeftSolveTheirEquation() {
    double z = DaysLeft.Z;
    java.util.Random r = new java.util.Random(3);
    int endless = 0;
    for (int i = 0; i < 2000; i++) {
      double left = 0.08 * r.nextDouble();
      double band = 0.01 * r.nextDouble();
      double m = 0.002 + 0.01 * r.nextDouble();
      double s = (i % 2 == 0 ? 0.3 : 4) * m * r.nextDouble();
      int n = 1 + r.nextInt(7);
      DaysLeft d = DaysLeft.of(0.02 + left, band, 0.02, m, s, n);
      assertThat(d.days()).isCloseTo(left / m, within(1e-9));
      assertThat(d.low()).isLessThanOrEqualTo(d.days() + 1e-9);
      assertThat(d.high()).isGreaterThanOrEqualTo(d.days() - 1e-9);
      double sv2 = band * band / 12;
      double low = d.low();
      double scatter = z * Math.sqrt(sv2 + s * s * low + s * s * low * low / n);
      if (low > 0) {
        assertThat(m * low + scatter).isCloseTo(left, within(1e-9));
      } else {
        assertThat(left).as("not even now is sure").isLessThanOrEqualTo(scatter + 1e-9);
      }
      if (Double.isInfinite(d.high())) {
        endless++;
        assertThat(m * m).isLessThanOrEqualTo(z * z * s * s / n);
      } else {
        double high = d.high();
        double wide = z * Math.sqrt(sv2 + s * s * high + s * s * high * high / n);
        assertThat(m * high - wide).isCloseTo(left, within(1e-9));
      }
    }
    assertThat(endless).isBetween(100, 1000);
  }

  @Test
  void underTheMarkNoDayIsLeft() {
    DaysLeft below = DaysLeft.of(0.01, 0, 0.02, 0.006, 0, 3);
    assertThat(below).isEqualTo(new DaysLeft(0, 0, 0));
    assertThatThrownBy(() -> DaysLeft.of(0.01, 0, 0.02, 0, 0, 3)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> DaysLeft.of(0.01, 0, 0.02, 1, 0, 0)).isInstanceOf(Impossible.class);
  }
}

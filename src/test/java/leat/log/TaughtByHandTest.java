package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.time.ZoneOffset;
import java.util.List;
import leat.level.CapSensor;
import leat.level.Divider;
import leat.level.LevelFixtures;
import leat.level.Limits;
import leat.level.Sender;
import leat.level.Staircase;
import leat.level.Tank;
import leat.level.TaperedBox;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** What whole small logs teach of the dip, the EC and the days left, by hand. */
class TaughtByHandTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final long DAY = LogFixtures.DAY;
  private static final long TEN = 10 * MINUTE;
  private static final LogSystem SYSTEM = LogFixtures.system(ZoneOffset.UTC, 0);

  /** 0.5 m x 0.4 m: 50 mm are 10 L. */
  private static final Tank TANK = TaperedBox.box(0.5, 0.4, 0.5, 0);

  private static void litres(double volume, double litres) {
    assertThat(1000 * volume).isCloseTo(litres, offset(1e-6));
  }

  /**
   * Every tenth row runs, as the plan's pump does; on step 4 every second of these reads a step
   * lower. 400 rows at step 4 are one whole stay: 40 running rows, 20 of them lower, 5 L in the
   * mean; the hysteresis is 2 L.
   */
  private static HandLog dipping(LogSystem system, int rows) {
    HandLog log = new HandLog(system, JUNE, TEN).show(5, 20);
    for (int i = 0; i < rows; i++) {
      boolean runs = i % 10 == 5;
      log.pump(runs).show(runs && i % 20 == 5 ? 3 : 4, 1);
    }
    return log.pump(false).show(3, 20);
  }

  /**
   * With u = d - h and a ramp of 60 of 90 s: 5 = u2/(3 (u + 2)) + u/3, 2 u2 - 13 u - 30 = 0, u =
   * 8.306. Without a ramp u = 5; with the whole run as ramp u2 - 10 u - 20 = 0, u = 11.708.
   */
  @Test
  void theDipOfARun() {
    LogReport r = dipping(LogFixtures.system(), 400).report();
    LogLessons taught = r.lessons();
    double u = (13 + Math.sqrt(169 + 240)) / 4;
    litres(taught.dip(), 2 + u);
    litres(taught.dipLow(), 7);
    litres(taught.dipHigh(), 7 + Math.sqrt(45));
    assertThat(taught.dipBelowHysteresis()).isFalse();
    assertThat(taught.hysteresis()).as("the plan does not say what a run keeps up").isNaN();
    assertThat(r.hysteresisLevel(TANK)).isNaN();
    // 50 mm are 10 L in this box.
    assertThat(1000 * r.dipLevel(TANK)).isCloseTo(5 * (2 + u), offset(1e-6));
    assertThat(r.meanStep()).isCloseTo(0.01, offset(1e-12));
  }

  /** The plan says 10 L: 5 = u2/30 + u/3, u2 + 10 u - 150 = 0, u = 8.229 and h = 1.771 L. */
  @Test
  void theHysteresisWhereThePlanSaysWhatARunKeepsUp() {
    LogReport r = dipping(LogFixtures.system(ZoneOffset.UTC, 0.01), 400).report();
    double h = 10 - (Math.sqrt(175) - 5);
    litres(r.lessons().hysteresis(), h);
    assertThat(1000 * r.hysteresisLevel(TANK)).isCloseTo(5 * h, offset(1e-6));
  }

  /**
   * A plan without the pump's timing: half of a run is taken for the ramp, and no moment is met.
   */
  @Test
  void withoutTheTimingOnlyTheLowEndIsKnown() {
    LogSystem silent = LogFixtures.timed(0, 0, 0);
    LogReport r = dipping(silent, 400).report();
    assertThat(r.lessons().dip()).isNaN();
    assertThat(r.lessons().dipHigh()).isNaN();
    assertThat(r.lessons().hysteresis()).isNaN();
    litres(r.lessons().dipLow(), 7);
    assertThat(r.dipLevel(TANK)).isNaN();
    LogSystem half = LogFixtures.timed(0, 0, 0.1);
    // 5 = u2/(4 (u + 2)) + u/2: 3 u2 - 16 u - 40 = 0.
    litres(dipping(half, 400).report().lessons().dip(), 2 + (16 + Math.sqrt(256 + 480)) / 6);
    LogSystem quick = LogFixtures.timed(30, 30, 0.1);
    // A run of half a minute is all ramp.
    litres(dipping(quick, 400).report().lessons().dip(), 7 + Math.sqrt(45));
  }

  /** Fewer than twenty running rows say nothing; rows that never read lower say a bound. */
  @Test
  void aDipThatIsNotSeen() {
    LogLessons few = dipping(LogFixtures.system(), 190).report().lessons();
    assertThat(few.dipLow()).isNaN();
    assertThat(few.dipBelowHysteresis()).isFalse();
    assertThat(dipping(LogFixtures.system(), 200).report().lessons().dipLow()).isNotNaN();
    HandLog log = new HandLog(SYSTEM, JUNE, TEN).show(5, 20);
    for (int i = 0; i < 400; i++) {
      log.pump(i % 10 == 5).show(4, 1);
    }
    LogReport r = log.pump(false).show(3, 20).report();
    assertThat(r.lessons().dipBelowHysteresis()).isTrue();
    assertThat(r.lessons().dipLow()).isNaN();
    assertThat(r.dipLevel(TANK)).isNaN();
    // Nothing can be lower than the floor: 7 L in a tank of 6.
    LogReport r2 = dipping(LogFixtures.system(), 400).report();
    assertThat(r2.volume()).isGreaterThan(r2.lessons().dip());
  }

  /** A stay that a gap cuts is not a whole one. */
  @Test
  void aStayOverAGapTeachesNothing() {
    HandLog log = dipping(LogFixtures.system(), 400);
    log.rows.subList(200, 210).clear();
    assertThat(log.report().lessons().dipLow()).isNaN();
  }

  /** Three cans ten days apart read 1.60, 1.64 and 1.70 mS/cm: by least squares 0.15 in 30 days. */
  @Test
  void theEcAfterPouringsDrifts() {
    HandLog log = new HandLog(SYSTEM, JUNE, TEN).ec(1.5).until(JUNE + HOUR, 2);
    double[] ecs = {1.60, 1.64, 1.70};
    for (int i = 0; i < 3; i++) {
      log.ec(ecs[i]).until(JUNE + (10 * i + 5) * DAY, 5).until(JUNE + (10 * i + 10) * DAY, 2);
      if (i < 2) {
        log.until(JUNE + (10 * i + 10) * DAY + HOUR, 2);
      }
    }
    LogReport r = log.report();
    assertThat(r.count(EventKind.REFILL)).isEqualTo(3);
    LogLessons taught = r.lessons();
    assertThat(taught.pourings()).isEqualTo(3);
    assertThat(taught.pouredEc()).isCloseTo(4.94 / 3, offset(1e-9));
    // Even ten days apart, the slope of three points is that of the outer two: 0.1 in 20 days.
    assertThat(taught.ecDrift()).isCloseTo(0.15, offset(1e-6));
    List<LogEvent> cans = r.events().stream().filter(e -> e.kind() == EventKind.REFILL).toList();
    assertThat(cans).extracting(LogEvent::ecAfter).containsExactly(1.60, 1.64, 1.70);
  }

  /** Two cans make no line. */
  @Test
  void twoPouringsAreNoDrift() {
    HandLog log = new HandLog(SYSTEM, JUNE, TEN).ec(1.5).show(2, 8).ec(1.6).show(5, 20);
    LogLessons taught = log.ec(1.7).show(8, 20).report().lessons();
    assertThat(taught.pourings()).isEqualTo(2);
    assertThat(taught.pouredEc()).isCloseTo(1.65, offset(1e-9));
    assertThat(taught.ecDrift()).isNaN();
    LogLessons none = new HandLog(SYSTEM, JUNE, TEN).show(2, 30).report().lessons();
    assertThat(none.pouredEc()).isNaN();
    assertThat(none.pourings()).isZero();
  }

  /**
   * EC of a day: the medians of its first and last six rows, 1.50 and 1.62; a can at noon ends the
   * stretch before it, with 1.55, and is told with what was read before and after.
   */
  @Test
  void theEcOfADay() {
    HandLog log = new HandLog(SYSTEM, JUNE, TEN).ec(1.5).until(JUNE + 6 * HOUR, 2).ec(1.55);
    log.until(JUNE + 12 * HOUR, 2).ec(1.7).until(JUNE + 20 * HOUR, 5).ec(1.62);
    log.until(JUNE + DAY, 5).ec(12).show(5, 10).ec(0).show(5, 10).ec(10).show(5, 10);
    LogReport r = log.report();
    LogDay day = r.days().get(0);
    assertThat(day.ecStart()).isEqualTo(1.5);
    assertThat(day.ecEnd()).isEqualTo(1.62);
    assertThat(r.events().get(0).ecAfter()).isEqualTo(1.7);
    assertThat(r.events().get(0).ecBefore).isEqualTo(1.55);
    assertThat(r.days().get(1).ecStart()).as("0 and 12 are no EC, 10 is").isEqualTo(10);
    assertThat(r.days().get(1).ecEnd()).isEqualTo(10);
    assertThat(r.ec()).isEqualTo(10);
    HandLog few = new HandLog(SYSTEM, JUNE, TEN).ec(1.5).show(2, 5).ec(Double.NaN).show(2, 20);
    assertThat(few.report().days().get(0).ecStart()).isNaN();
    assertThat(few.report().days().get(0).ecEnd()).isNaN();
    assertThat(few.report().ec()).isNaN();
  }

  /**
   * 10 L a day from step to step at noon, EC steady in a day of 1.5 to 1.6 by three and three hours
   * of rows: why it changed is what EcSplit says of the volumes at the middles of those rows.
   */
  @Test
  void whyTheEcChanged() {
    HandLog log = new HandLog(SYSTEM, JUNE, TEN);
    for (int day = 0; day < 4; day++) {
      log.ec(1.5).until(JUNE + day * DAY + 12 * HOUR, 8 - day);
      log.ec(1.6).until(JUNE + (day + 1) * DAY, 7 - day);
    }
    LogReport r = log.until(JUNE + 4 * DAY + 2 * HOUR, 4).report();
    // Day 2 from 0:25 to 23:25: 78 L at 11:55 of day 1, less what 12.08 h of it drank.
    double perHour = 10 / 13.44;
    double first = 78 - perHour * (7 + 5 / 60.0 + 5 * 0.12 + 25 / 60.0 * 0.12);
    double second = 68 - perHour * (7 + 5 / 60.0 + (4 + 25 / 60.0) * 0.12);
    EcSplit split = EcSplit.of(first, 1.5, second, 1.6, 0);
    LogDay day = r.days().get(2);
    assertThat(day.byConcentration()).isCloseTo(split.byConcentration(), offset(1e-6));
    assertThat(day.bySalt()).isCloseTo(split.bySalt(), offset(1e-6));
    assertThat(day.byDilution()).isCloseTo(0, offset(1e-9));
  }

  /** The first day is whole when its first row comes within 2.5 intervals of midnight. */
  @Test
  void aDayIsWholeFromItsFirstRowsToItsLast() {
    for (long late : new long[] {25 * MINUTE, 25 * MINUTE + 1000}) {
      HandLog log = new HandLog(SYSTEM, JUNE + late, TEN).until(JUNE + DAY + HOUR, 5);
      assertThat(log.report().days().get(0).isWhole()).isEqualTo(late == 25 * MINUTE);
    }
    for (long early : new long[] {25 * MINUTE, 25 * MINUTE + 1000}) {
      HandLog log = new HandLog(SYSTEM, JUNE + DAY - early - 90 * TEN, TEN).show(5, 91);
      LogReport r = log.report();
      assertThat(r.days()).hasSize(1);
      assertThat(r.days().get(0).isWhole()).isFalse();
      log = new HandLog(SYSTEM, JUNE + DAY - early - 130 * TEN, TEN).show(5, 131);
      assertThat(log.report().days().get(0).isWhole()).isFalse();
      log = new HandLog(SYSTEM, JUNE + DAY - early - 141 * TEN, TEN).show(5, 142);
      assertThat(log.report().days().get(0).endsWhole).isEqualTo(early == 25 * MINUTE);
    }
    // Not a day after one that the log lacks.
    HandLog log = new HandLog(SYSTEM, JUNE, TEN).until(JUNE + 12 * HOUR, 5);
    LogReport r = log.at(JUNE + DAY + 12 * HOUR).until(JUNE + 3 * DAY, 5).report();
    assertThat(r.days()).extracting(LogDay::isWhole).containsExactly(false, false, true);
    assertThat(r.days()).extracting(LogDay::isSure).containsExactly(false, false, true);
    log = new HandLog(SYSTEM, JUNE, TEN).until(JUNE + 12 * HOUR, 5);
    r = log.at(JUNE + 2 * DAY).until(JUNE + 3 * DAY, 5).report();
    assertThat(r.days()).extracting(LogDay::isWhole).containsExactly(false, true);
    // Silent from 23:50 until half past midnight: neither day is sure, the third is.
    log = new HandLog(SYSTEM, JUNE, TEN).until(JUNE + DAY, 5);
    r = log.at(JUNE + DAY + 30 * MINUTE).until(JUNE + 3 * DAY, 5).report();
    assertThat(r.days()).extracting(LogDay::isSure).containsExactly(false, false, true);
  }

  /** The moment from which two days are left, reckoned from a mean use; not before a can. */
  @Test
  void daysLeftAreReckonedBack() {
    HandLog log = new HandLog(SYSTEM, JUNE, TEN);
    for (int day = 0; day < 5; day++) {
      log.until(JUNE + day * DAY + 12 * HOUR, 8 - day);
    }
    log.until(JUNE + 5 * DAY, 3);
    LogReport r = log.report();
    DaysLeft left = r.daysLeft();
    assertThat(left.days()).isCloseTo((r.volume() - 0.02) / r.use().mean(), offset(1e-9));
    double band = r.volumeHigh() - r.volumeLow();
    assertThat(left)
        .isEqualTo(DaysLeft.of(r.volume(), band, 0.02, r.use().mean(), r.use().sd(), r.use().n()));
    double asked = left.days() + 1;
    long back = r.last() - DAY;
    assertThat(r.whenLeft(asked, left.days())).isCloseTo(back, offset(1L));
    assertThat(r.alarms(r.last(), asked)).extracting(LogAlarm::opened).containsExactly(back);
    assertThat(r.alarms(r.last(), left.days())).as("just so many").isEmpty();
    assertThat(r.topupBy()).isEqualTo(TopupDay.of(r.last(), left.low(), SYSTEM));
    log.at(JUNE + 5 * DAY).show(6, 80);
    LogReport poured = log.report();
    LogEvent can = poured.events().get(poured.events().size() - 1);
    assertThat(can.kind()).isEqualTo(EventKind.REFILL);
    assertThat(poured.whenLeft(20, 1)).isEqualTo(can.end());
    // A leak or rain is no pouring.
    LogReport short_ = new HandLog(SYSTEM, JUNE, TEN).show(5, 30).read(0, 3).report();
    assertThat(short_.whenLeft(20, 1)).isEqualTo(JUNE);
  }

  /** No sender, no mark, no use: no days left. */
  @Test
  void withoutAMarkNoDaysAreLeft() {
    LogSystem s = SYSTEM;
    for (double low : new double[] {Double.NaN, 0}) {
      LogSystem system =
          new LogSystem(
              s.sender(),
              null,
              s.zone(),
              low,
              0,
              Double.NaN,
              1,
              null,
              2700,
              90,
              90,
              0.1,
              0,
              Double.NaN,
              Double.NaN,
              s.keeperS());
      HandLog log = new HandLog(system, JUNE, TEN);
      for (int day = 0; day < 5; day++) {
        log.until(JUNE + day * DAY + 12 * HOUR, 8 - day);
      }
      assertThat(log.report().daysLeft() == null).isEqualTo(low != low);
      if (low != low) {
        assertThatThrownBy(() -> log.report().topupBy()).isInstanceOf(Impossible.class);
      }
    }
    LogReport empty = new LogPass(SYSTEM, LogLimits.DEFAULT).finish();
    assertThat(empty.isEmpty()).isTrue();
    assertThat(empty.alarms(JUNE, 3)).isEmpty();
    assertThat(empty.hasVolume()).isFalse();
    assertThat(empty.daysLeft()).isNull();
  }

  /** Below the mark of 20 L, and out of the EC's band of 1.2 to 2.0 mS/cm. */
  @Test
  void alarmsOfTheMarks() {
    LogReport low = new HandLog(SYSTEM, JUNE, TEN).ec(2.1).show(0, 30).report();
    assertThat(low.alarms(low.last(), Double.NaN))
        .extracting(LogAlarm::kind)
        .containsExactly(LogAlarm.Kind.BELOW_LOW, LogAlarm.Kind.EC_OUT_OF_BAND);
    LogReport ends = new HandLog(SYSTEM, JUNE, TEN).ec(1.2).show(2, 30).report();
    assertThat(ends.alarms(ends.last(), Double.NaN)).isEmpty();
    ends = new HandLog(SYSTEM, JUNE, TEN).ec(2.0).show(2, 30).report();
    assertThat(ends.alarms(ends.last(), Double.NaN)).isEmpty();
  }

  /** Readings that belong to no step: a fifth of the rows is borne. */
  @Test
  void readingsOfAnotherSender() {
    for (int odd : new int[] {20, 21}) {
      LogReport r = new HandLog(SYSTEM, JUNE, TEN).show(5, 100 - odd).read(400, odd).report();
      assertThat(r.badReadings()).isEqualTo(odd);
      assertThat(r.isOtherSender()).isEqualTo(odd == 21);
    }
  }

  /** 0.11 for 110 ohm: three rows and four fifths of the readings say kilo-ohm. */
  @Test
  void readingsInKiloOhm() {
    LogReport r = new HandLog(SYSTEM, JUNE, TEN).read(0.11, 3).report();
    assertThat(r.isKiloOhm()).isTrue();
    assertThat(r.kiloOhm()).isEqualTo(0.11);
    assertThat(r.kiloOhmInOhm()).isCloseTo(110, offset(1e-9));
    LogEvent fault = r.events().get(0);
    assertThat(fault.kind()).isEqualTo(EventKind.SENSOR_SHORT);
    assertThat(fault.cause()).isEqualTo(LogEvent.KILO_OHM);
    assertThat(new HandLog(SYSTEM, JUNE, TEN).read(0.11, 2).report().isKiloOhm()).isFalse();
    LogReport part = new HandLog(SYSTEM, JUNE, TEN).show(5, 2).read(0.11, 8).report();
    assertThat(part.isKiloOhm()).isTrue();
    part = new HandLog(SYSTEM, JUNE, TEN).show(5, 3).read(0.11, 8).report();
    assertThat(part.isKiloOhm()).isFalse();
    assertThat(part.events().get(0).cause()).isEmpty();
    LogReport blank = new HandLog(SYSTEM, JUNE, TEN).read(Double.NaN, 5).read(0.11, 4).report();
    assertThat(blank.isKiloOhm()).as("cells without a number say nothing").isTrue();
    LogReport wires = new HandLog(SYSTEM, JUNE, TEN).read(0, 9).report();
    assertThat(wires.isKiloOhm()).isFalse();
    assertThat(wires.kiloOhm()).isNaN();
    LogReport wide = new HandLog(SYSTEM, JUNE, TEN).read(0.9, 9).report();
    assertThat(wide.isKiloOhm()).as("no step has 900 ohm").isFalse();
  }

  private static StepReader reader(double tolerance, Divider divider, double... ohms) {
    double[] levels = new double[ohms.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = 0.05 * (i + 1);
    }
    Staircase stairs = Staircase.bySteps(TaperedBox.box(0.5, 0.4, 0.5, 0), levels, ohms, 0.01);
    return new StepReader(
        new Sender(stairs, new Limits(1.5, tolerance, 0, 1000, 2), 0.09), divider);
  }

  /** Steps of 100 and 150 ohm are 25 apart from their middle: 16 % of 150 is 24, 17 % 25.5. */
  @Test
  void stepsThatCannotBeToldApart() {
    assertThat(reader(0.16, null, 10, 100, 150).step(150)).isEqualTo(2);
    assertThatThrownBy(() -> reader(0.17, null, 10, 100, 150))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("100 and 150 ohm cannot be told apart");
    assertThat(reader(0.125, null, 150, 200).step(200)).as("just half").isEqualTo(1);
  }

  /** Unevenly spaced steps: within half the distance on each side; at the ends that of the one. */
  @Test
  void howFarAReadingMayLie() {
    StepReader r = reader(0.02, null, 20, 60, 160);
    double[][] cases = {
      {0.5, StepReader.SHORT},
      {2, 0},
      {40, 0},
      {40.1, 1},
      {110, 1},
      {110.1, 2},
      {210, 2},
      {210.1, StepReader.BAD},
      {1000, StepReader.OPEN}
    };
    for (double[] c : cases) {
      assertThat(r.step(c[0])).as("%s ohm", c[0]).isEqualTo((int) c[1]);
    }
    StepReader high = reader(0.02, null, 60, 80, 160);
    assertThat(high.step(50)).isZero();
    assertThat(high.step(49.9)).as("further below than half a step").isEqualTo(StepReader.BAD);
    assertThat(high.step(200)).isEqualTo(2);
    assertThat(high.step(200.1)).isEqualTo(StepReader.BAD);
  }

  /** 10 bit, 100 ohm fixed, sender to ground: 100 ohm are half of 1024 counts. */
  @Test
  void countsOfADivider() {
    for (Divider.Side side : Divider.Side.values()) {
      Divider divider = LevelFixtures.divider(side, 3.3, 100, 10, 3.3);
      StepReader r = reader(0.02, divider, 10, 100, 190);
      assertThat(r.step(512)).isEqualTo(1);
      double ten = side == Divider.Side.LOW ? 1024 / 11.0 : 10240 / 11.0;
      assertThat(r.step(Math.round(ten))).isZero();
      assertThat(r.step(1023))
          .isEqualTo(side == Divider.Side.LOW ? StepReader.OPEN : StepReader.SHORT);
      assertThat(r.step(1023.5)).isEqualTo(StepReader.BAD);
      assertThat(r.step(-1)).isEqualTo(StepReader.BAD);
      assertThat(r.step(Double.NaN)).isEqualTo(StepReader.BLANK);
      assertThat(r.isKiloOhm(0.512)).as("counts have no unit").isFalse();
      LogSystem s = SYSTEM;
      LogSystem counts =
          new LogSystem(
              s.sender(),
              divider,
              s.zone(),
              0.02,
              0.011,
              Double.NaN,
              1,
              s.cap(),
              2700,
              90,
              90,
              0.1,
              0,
              1.2,
              2,
              s.keeperS());
      LogRow row = LogFixtures.row(1);
      assertThat(LogCell.READING.put(row, 0, counts)).isTrue();
      assertThat(LogCell.READING.put(row, 1023, counts)).isTrue();
      assertThat(LogCell.READING.put(row, 1024, counts)).isFalse();
      assertThat(LogCell.READING.put(row, -1, counts)).isFalse();
    }
  }

  /** What a row is told as: step, step at rest, and its fault. */
  @Test
  void theWordsOfARow() {
    HandLog log = new HandLog(SYSTEM, JUNE, TEN).show(5, 2).read(2000, 1).read(0, 1).read(400, 1);
    StringBuilder told = new StringBuilder();
    log.report(
        (row, volume, low, high) ->
            told.append(row.step() >= 0 ? "step " + row.step() + "/" + row.rest() : "")
                .append(row.isOpen() ? "open" : "")
                .append(row.isShort() ? "short" : "")
                .append(row.isOdd() ? "odd" : "")
                .append(volume == volume ? " " + Math.round(1000 * volume) : "")
                .append('\n'));
    assertThat(told.toString()).isEqualTo("step 5/5 64\nstep 5/5 64\nopen 64\nshort 64\nodd 64\n");
    StringBuilder none = new StringBuilder();
    new HandLog(SYSTEM, JUNE, TEN)
        .read(Double.NaN, 2)
        .report((row, volume, low, high) -> none.append(volume + " " + low + " " + high + ";"));
    assertThat(none.toString()).isEqualTo("NaN NaN NaN;NaN NaN NaN;");
  }

  /** 10 % of the span of 1000 counts from wet to dry is borne. */
  @Test
  void theCapAsSeen() {
    HandLog log = new HandLog(SYSTEM, JUNE, TEN).pump(true).cap(1090).show(5, 30).cap(1950);
    LogLessons taught = log.show(5, 20).report().lessons();
    assertThat(taught.capWet()).isCloseTo(1090, offset(1e-9));
    assertThat(taught.capDry()).isCloseTo(1950, offset(1e-9));
    assertThat(taught.isCapOff(SYSTEM)).isFalse();
    assertThat(new CapSensor(1000, 2000).dryness(1090)).isCloseTo(0.09, offset(1e-12));
  }
}

package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What keeps rows and looks along them, each by a second route or by hand. */
class RowsTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;

  @Test
  void theMedianOfTheLastDifferences() {
    Random r = new Random(4);
    for (int trial = 0; trial < 20; trial++) {
      Interval interval = new Interval();
      List<Long> all = new ArrayList<>();
      int usual = 1 + r.nextInt(900);
      for (int i = 0; i < 700; i++) {
        long s = i < 350 ? usual + r.nextInt(9) : 1 + r.nextInt(2000);
        all.add(s);
        interval.add(s * 1000);
        List<Long> last = new ArrayList<>(all.subList(Math.max(0, i - 254), i + 1));
        Collections.sort(last);
        assertThat(interval.millis()).isEqualTo(1000 * last.get((last.size() - 1) / 2));
      }
    }
  }

  @Test
  void anIntervalIsASecondAtLeastAndADayAtMost() {
    Interval interval = new Interval();
    assertThat(interval.isKnown()).isFalse();
    assertThat(interval.millis()).isZero();
    interval.add(400);
    assertThat(interval.isKnown()).isTrue();
    assertThat(interval.millis()).isEqualTo(1000);
    Interval slow = new Interval();
    slow.add(30 * HOUR);
    assertThat(slow.millis()).isEqualTo(24 * HOUR);
  }

  /** Weight 1 from 7 to 19 h, 0.12 in the dark: the sheet's defaults. */
  @Test
  void thirstByTheHour() {
    Rhythm rhythm = new Rhythm(new LocalClock(ZoneOffset.UTC), LogLimits.DEFAULT);
    assertThat(rhythm.day()).isCloseTo(43_200 * 1.12, within(1e-9));
    assertThat(rhythm.between(JUNE, JUNE + 24 * HOUR)).isCloseTo(48_384, within(1e-6));
    assertThat(rhythm.between(JUNE, JUNE + 7 * HOUR)).isCloseTo(3024, within(1e-6));
    assertThat(rhythm.between(JUNE + 7 * HOUR, JUNE + 19 * HOUR)).isCloseTo(43_200, within(1e-6));
    assertThat(rhythm.between(JUNE + 19 * HOUR, JUNE + 24 * HOUR)).isCloseTo(2160, within(1e-6));
    assertThat(rhythm.between(JUNE + 6 * HOUR, JUNE + 8 * HOUR)).isCloseTo(4032, within(1e-6));
    assertThat(rhythm.between(JUNE + 12 * HOUR, JUNE + 12 * HOUR + 500))
        .isCloseTo(0.5, within(1e-6));
    assertThat(rhythm.between(JUNE + 5, JUNE + 5)).isZero();
    assertThat(rhythm.between(JUNE + 12 * HOUR, JUNE)).as("backwards").isZero();
    Rhythm vienna = new Rhythm(new LocalClock(ZoneId.of("Europe/Vienna")), LogLimits.DEFAULT);
    assertThat(vienna.between(JUNE + 5 * HOUR, JUNE + 6 * HOUR)).isCloseTo(3600, within(1e-6));
    assertThat(vienna.between(JUNE + 4 * HOUR, JUNE + 5 * HOUR)).isCloseTo(432, within(1e-6));
  }

  /** Second route: all rows kept in a list; falling steps fill the window beyond its first size. */
  @Test
  void theHighestOfAWindow() {
    Random r = new Random(8);
    for (int trial = 0; trial < 50; trial++) {
      StepMax max = new StepMax();
      List<int[]> plain = new ArrayList<>();
      for (int i = 0; i < 400; i++) {
        int step = trial % 2 == 0 ? 500 - i + r.nextInt(3) : r.nextInt(12) - 2;
        max.add(i, step);
        plain.add(new int[] {i, step});
        if (r.nextInt(40) == 0) {
          int before = i - r.nextInt(200);
          max.dropBefore(before);
          plain.removeIf(p -> p[0] < before);
        }
        if (r.nextInt(300) == 0) {
          max.clear();
          plain.clear();
        }
        int highest = StepReader.BLANK;
        for (int[] p : plain) {
          highest = Math.max(highest, p[1]);
        }
        assertThat(max.max()).as("trial %d row %d", trial, i).isEqualTo(highest);
      }
    }
  }

  /** Second route: a list that is sorted anew, rows of one time in the order they came. */
  @Test
  void rowsAreInsertedWhereTheirTimeBelongs() {
    Random r = new Random(9);
    RowRing ring = new RowRing();
    List<LogRow> plain = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      LogRow row = LogFixtures.row(i + r.nextInt(60));
      row.reading = i;
      ring.insert(row);
      int at = plain.size();
      while (at > 0 && plain.get(at - 1).time > row.time) {
        at--;
      }
      plain.add(at, row);
      while (plain.size() > 100 + 100 * (i / 1000)) {
        plain.remove(0);
        ring.dropFirst();
      }
      assertThat(ring.size()).isEqualTo(plain.size());
      for (int k = 0; k < plain.size(); k++) {
        assertThat(ring.get(ring.first() + k).reading).isEqualTo(plain.get(k).reading);
      }
      assertThat(ring.last().reading).isEqualTo(plain.get(plain.size() - 1).reading);
    }
    LogRow copied = LogFixtures.row(7);
    assertThat(ring.add(copied)).isNotSameAs(copied);
  }

  @Test
  void rowsAreAlikeCellByCell() {
    LogRow one = LogFixtures.row(1);
    LogRow other = LogFixtures.row(1);
    assertThat(one.same(other)).as("blank is like blank").isTrue();
    for (LogCell cell : LogCell.all()) {
      LogRow changed = LogFixtures.row(1);
      assertThat(cell.put(changed, 1, LogFixtures.system())).isEqualTo(cell != LogCell.CAP);
      if (cell == LogCell.CAP) {
        changed.cap = 1500;
      }
      assertThat(one.same(changed)).as("%s", cell).isFalse();
      assertThat(changed.same(one)).as("%s", cell).isFalse();
      LogRow copy = LogFixtures.row(1);
      copy.copy(changed);
      assertThat(copy.same(changed)).as("%s", cell).isTrue();
    }
  }

  private static boolean puts(LogCell cell, double value) {
    LogRow row = LogFixtures.row(1);
    boolean good = cell.put(row, value, LogFixtures.system());
    double kept =
        switch (cell) {
          case READING -> row.reading;
          case EC -> row.ec;
          case CELSIUS -> row.celsius;
          case PUMP -> row.pump;
          case CAP -> row.cap;
          case RAIN -> row.rain;
        };
    assertThat(kept).isEqualTo(Double.valueOf(good ? value : Double.NaN));
    return good;
  }

  /** Each cell at its ends: sheet log.md section 1. */
  @Test
  void whatACellHolds() {
    double[][] good = {{-10, 0, 1e9}, {0.001, 10}, {-5, 50}, {0, 1}, {750, 2250}, {0, 500}};
    double[][] bad = {
      {-10.1}, {0, -1, 10.1}, {-5.1, 50.1}, {0.5, 2, -1}, {749, 2251}, {-0.1, 1.0 / 0}
    };
    LogCell[] cells = LogCell.all();
    for (int c = 0; c < cells.length; c++) {
      for (double value : good[c]) {
        assertThat(puts(cells[c], value)).as("%s %s", cells[c], value).isTrue();
      }
      for (double value : bad[c]) {
        assertThat(puts(cells[c], value)).as("%s %s", cells[c], value).isFalse();
      }
      assertThat(puts(cells[c], Double.NaN)).as("%s", cells[c]).isFalse();
    }
  }

  /** 1 June at noon; the keeper pours at 18 h. */
  @Test
  void theDayOfTheNextCan() {
    LogSystem system = LogFixtures.system();
    long noon = JUNE + 12 * HOUR;
    long today = JUNE / LogFixtures.DAY;
    assertThat(TopupDay.of(noon, 2, system)).as("noon is before his hour").isEqualTo(today + 1);
    assertThat(TopupDay.of(noon, 2.25, system)).as("his hour itself").isEqualTo(today + 2);
    assertThat(TopupDay.of(noon, 0.1, system)).as("never before today").isEqualTo(today);
    assertThat(TopupDay.of(noon, 3649.25, system)).isEqualTo(today + 3649);
    assertThat(TopupDay.of(noon, 3650, system)).isEqualTo(today + 3650);
    assertThat(TopupDay.of(noon, Double.POSITIVE_INFINITY, system)).isEqualTo(today + 3650);
    assertThat(TopupDay.of(noon, Double.NaN, system)).isEqualTo(today + 3650);
  }

  /** A row is judged when the hour after it is known; the days left are reckoned by a day's use. */
  @Test
  void anAlarmIsNewForAWhile() {
    for (LogAlarm.Kind kind : LogAlarm.Kind.values()) {
      long ago = kind == LogAlarm.Kind.DAYS_LEFT ? LogFixtures.DAY : HOUR;
      assertThat(new LogAlarm(kind, JUNE - ago, JUNE, "").isNewSince(JUNE)).isFalse();
      assertThat(new LogAlarm(kind, JUNE - ago + 1, JUNE, "").isNewSince(JUNE)).isTrue();
    }
    assertThat(LogAlarm.Kind.values())
        .filteredOn(LogAlarm.Kind::hidesLevel)
        .containsExactly(
            LogAlarm.Kind.SENSOR_OPEN,
            LogAlarm.Kind.SENSOR_SHORT,
            LogAlarm.Kind.STUCK_FLOAT,
            LogAlarm.Kind.LOG_SILENT);
  }

  /** Half way between two steps the lower is read; beyond half a step nothing is. */
  @Test
  void aReadingIsTheNearestStep() {
    StepReader reader = new StepReader(LogFixtures.sender(false, 0.02), null);
    double[][] steps = {
      {10, 0}, {20, 0}, {20.1, 1}, {30, 1}, {40, 1}, {40.1, 2}, {170, 8}, {180, 8}, {2, 0}
    };
    for (double[] step : steps) {
      assertThat(reader.step(step[0] + 0.4)).as("%s ohm", step[0]).isEqualTo((int) step[1]);
    }
    assertThat(reader.step(1.9 + 0.4)).isEqualTo(StepReader.SHORT);
    assertThat(reader.step(-5)).isEqualTo(StepReader.SHORT);
    assertThat(reader.step(180.1 + 0.4)).isEqualTo(StepReader.BAD);
    assertThat(reader.step(999 + 0.4)).isEqualTo(StepReader.BAD);
    assertThat(reader.step(1000 + 0.4)).isEqualTo(StepReader.OPEN);
    assertThat(reader.step(Double.NaN)).isEqualTo(StepReader.BLANK);
    StepReader falling = new StepReader(LogFixtures.sender(true, 0.02), null);
    assertThat(falling.step(170.4)).isZero();
    assertThat(falling.step(30.4)).isEqualTo(7);
    assertThat(falling.step(20.4)).isEqualTo(8);
    assertThat(falling.step(1)).isEqualTo(StepReader.SHORT);
  }
}

package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Single sums of a log at their edges, by hand or by java.time. */
class EdgesByHandTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final long DAY = LogFixtures.DAY;
  private static final double DAY_S = 86_400;

  /** Uses 2, 4, 6: mean 4, scatter 2, interval 4 -/+ 1.28155 x 2/sqrt(3). */
  @Test
  void theMeanOfSomeDays() {
    UseMean use = UseMean.of(2, 4, 6);
    double half = 1.2815515655446 * 2 / Math.sqrt(3);
    assertThat(use.low()).isCloseTo(4 - half, offset(1e-9));
    assertThat(use.high()).isCloseTo(4 + half, offset(1e-9));
    assertThat(use.thirst(2 / DAY_S)).isCloseTo(2, offset(1e-12));
    // A weekday of four days differs by more than 2 x 2/sqrt(4) = 2.
    assertThat(use.differs(UseMean.of(6, 6, 6, 6), 4)).isFalse();
    assertThat(use.differs(UseMean.of(6.1, 6.1, 6.1, 6.1), 4)).isTrue();
    assertThat(use.differs(UseMean.of(1.9, 1.9, 1.9, 1.9), 4)).isTrue();
    // Days all alike contradict only a plan that says another number.
    UseMean same = UseMean.of(DAY_S, DAY_S, DAY_S);
    assertThat(same.contradicts(1)).isFalse();
    assertThat(same.contradicts(1.0001)).isTrue();
    assertThat(same.contradicts(0.9999)).isTrue();
    assertThat(same.differs(same, 3)).isFalse();
  }

  /** Three litres under the mark with a scatter: no days are left, and none is endless. */
  @Test
  void underTheMarkNoDayIsLeftThoughUseScatters() {
    assertThat(DaysLeft.of(0.017, 0, 0.02, 0.006, 0.001, 7)).isEqualTo(new DaysLeft(0, 0, 0));
    // A wide band may reach above it: (-1 + 1.28155 x 12/sqrt(12))/6.
    DaysLeft wide = DaysLeft.of(0.019, 0.012, 0.02, 0.006, 0, 7);
    assertThat(wide.days()).isZero();
    assertThat(wide.low()).isZero();
    assertThat(wide.high())
        .isCloseTo((-1 + 1.2815515655446 * 12 / Math.sqrt(12)) / 6, offset(1e-6));
    // Without band and scatter all three are alike.
    DaysLeft sure = DaysLeft.of(0.032, 0, 0.02, 0.006, 0, 1);
    assertThat(sure.low()).isCloseTo(2, offset(1e-9));
    assertThat(sure.high()).isCloseTo(2, offset(1e-9));
  }

  @Test
  void aDipOfNoRunIsRefused() {
    assertThatThrownBy(() -> RunDip.seen(1, -1, 0.5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RunDip.seen(1, 0, 1.1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RunDip.dip(1, -1, 0.5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RunDip.dip(1, 0, 1.1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RunDip.hysteresis(1, 2, 1.1)).isInstanceOf(Impossible.class);
    // Without a ramp what is not seen of the dip is the hysteresis.
    assertThat(RunDip.hysteresis(3, 5, 0)).isEqualTo(2);
    assertThat(RunDip.hysteresis(6, 5, 0)).isZero();
    assertThat(RunDip.seen(2, 2, 0.5)).isZero();
  }

  /** The second of a change of offset, and those beside it, forwards and backwards. */
  @Test
  void theClockAtAChangeOfOffset() {
    for (String name : new String[] {"Europe/Vienna", "America/Sao_Paulo", "Asia/Kathmandu"}) {
      ZoneId zone = ZoneId.of(name);
      LocalClock clock = new LocalClock(zone);
      long spring = Instant.parse("2027-03-28T01:00:00Z").getEpochSecond();
      long autumn = Instant.parse("2027-10-31T01:00:00Z").getEpochSecond();
      long brazil = Instant.parse("2018-11-04T03:00:00Z").getEpochSecond();
      for (long change : new long[] {spring, autumn, brazil, spring}) {
        for (long second : new long[] {-1, 0, 1, -3600, 3600, 0, -1}) {
          long utc = change + second;
          long seconds = zone.getRules().getOffset(Instant.ofEpochSecond(utc)).getTotalSeconds();
          assertThat(clock.local(utc)).as("%s %d", name, utc).isEqualTo(utc + seconds);
        }
      }
      LocalDate[] dates = {
        LocalDate.of(2018, 11, 3), LocalDate.of(2018, 11, 4), LocalDate.of(2018, 11, 5),
        LocalDate.of(2027, 3, 28), LocalDate.of(2027, 10, 31), LocalDate.of(2018, 11, 4)
      };
      for (LocalDate date : dates) {
        assertThat(clock.startOf(date.toEpochDay()))
            .as("%s %s", name, date)
            .isEqualTo(1000 * date.atStartOfDay(zone).toEpochSecond());
      }
    }
  }

  @Test
  void aTimeWithoutAnOffsetIsLocal() {
    LogTimes times = new LogTimes(ZoneId.of("Europe/Vienna"), "time");
    for (String local : new String[] {"2027-06-04T12:00", "2027-06-04 12:00:00"}) {
      times.read(local);
      assertThat(times.isLocal()).as(local).isTrue();
    }
    for (String known : new String[] {"2027-06-04T12:00Z", "2027-06-04T12:00+02", "1800000000"}) {
      times.read(known);
      assertThat(times.isLocal()).as(known).isFalse();
    }
  }

  private final StepVolumes volumes = new StepVolumes(LogFixtures.system(ZoneOffset.UTC, 0));
  private final DayBook days = LogFixtures.days(LogFixtures.tenMinutes());
  private final EventBook events = new EventBook(days);

  /** Plants drink 13.44 L a day: a litre an hour by day. */
  private LeakJudge leaks() {
    Rhythm rhythm = new Rhythm(new LocalClock(ZoneOffset.UTC), LogLimits.DEFAULT);
    UseBook book = new UseBook(volumes, rhythm, days);
    days.row(LogFixtures.row(JUNE), 0);
    book.start(JUNE, 8);
    book.edge(JUNE + 12 * HOUR, 0.08, true, true);
    book.edge(JUNE + 36 * HOUR, 0.08 - 0.01344, true, true);
    return new LeakJudge(LogLimits.DEFAULT, volumes, events, book);
  }

  private static long at(double hour) {
    return JUNE + 2 * DAY + Math.round(hour * HOUR);
  }

  /** 1.8 times what is expected is heat; two falls of 4 L beyond it, 0.8 of a step, are a leak. */
  @Test
  void aLeakAtItsThresholds() {
    LeakJudge judge = leaks();
    assertThat(judge.fall(at(8), at(9), 0.0018 - 1e-9, 1)).isFalse();
    assertThat(judge.isCounting()).isFalse();
    assertThat(judge.fall(at(9), at(10), 0.0018 + 1e-9, 1)).isTrue();
    assertThat(judge.isCounting()).isTrue();
    judge.close();
    assertThat(judge.isCounting()).isFalse();
    for (double each : new double[] {5.01, 4.99}) {
      events.all().clear();
      judge.close();
      assertThat(judge.fall(at(8), at(9), each / 1000, 1)).isTrue();
      assertThat(events.all()).as("one fall").isEmpty();
      assertThat(judge.fall(at(9), at(10), each / 1000, 1)).isTrue();
      assertThat(events.all()).hasSize(each > 5 ? 1 : 0);
    }
    judge.close();
    events.all().clear();
    judge.fall(at(8), at(9), 0.007, 2);
    assertThat(events.all()).as("two steps, 6 L").isEmpty();
    judge.close();
    judge.fall(at(8), at(9), 0.0125, 2);
    LogEvent leak = events.all().get(0);
    assertThat(1000 * leak.volume()).isCloseTo(11.5, offset(1e-9));
    assertThat(1000 * leak.volumeLow()).isCloseTo(1.5, offset(1e-9));
    assertThat(1000 * leak.volumeHigh()).isCloseTo(21.5, offset(1e-9));
    // A slow fall ends it.
    assertThat(judge.fall(at(9), at(15), 0.006, 1)).isFalse();
    assertThat(leak.isOpen()).isFalse();
    assertThat(leak.end()).isEqualTo(at(9));
  }

  /** Falls an hour apart are in succession, further apart the count begins anew. */
  @Test
  void fallsInSuccession() {
    for (int minutes : new int[] {60, 61}) {
      events.all().clear();
      LeakJudge judge = leaks();
      judge.fall(at(8), at(9), 0.006, 1);
      long next = at(9) + minutes * MINUTE;
      judge.fall(next, next + HOUR, 0.006, 1);
      assertThat(events.all()).as("%d min", minutes).hasSize(minutes == 60 ? 1 : 0);
      assertThat(judge.isCounting()).isTrue();
    }
  }

  /** An emptying that began up to an hour after takes a leak back; an older leak stays. */
  @Test
  void aChangeTakesALeakBack() {
    for (int minutes : new int[] {60, 61}) {
      events.all().clear();
      LeakJudge judge = leaks();
      judge.fall(at(8), at(9), 0.02, 2);
      assertThat(events.all()).hasSize(1);
      judge.change(at(8) + minutes * MINUTE);
      assertThat(events.all()).hasSize(minutes == 60 ? 0 : 1);
      assertThat(judge.isCounting()).isFalse();
    }
  }

  /** Just above thirst at the end: a step of 10 L is due after 10/1.8 h. */
  @Test
  void aLeakAtTheEndOfALog() {
    for (double hours : new double[] {5.55, 5.56}) {
      events.all().clear();
      LeakJudge judge = leaks();
      judge.fall(at(8), at(9), 0.02, 2);
      judge.finish(at(9 + hours));
      assertThat(events.all().get(0).isOpen()).isEqualTo(hours == 5.55);
    }
    leaks().finish(at(10));
  }

  /** Events of one moment stand in the order of their kinds. */
  @Test
  void eventsInOrder() {
    events.add(EventKind.GAP, at(3), at(4));
    events.add(EventKind.REFILL, at(3), at(4));
    events.add(EventKind.LEAK, at(2), at(5));
    assertThat(events.sorted())
        .extracting(LogEvent::kind)
        .containsExactly(EventKind.LEAK, EventKind.REFILL, EventKind.GAP);
  }

  /** A rain that ends at a moment and one that begins two hours later are one; a second more. */
  @Test
  void risesFurtherApartAreTwo() {
    for (long apart : new long[] {2 * HOUR, 2 * HOUR + 1000}) {
      events.all().clear();
      RiseJudge judge =
          new RiseJudge(LogLimits.DEFAULT, LogFixtures.system(), volumes, events, new Interval());
      judge.rise(JUNE, JUNE + 10 * MINUTE, 3, 4, 1.6);
      judge.rise(JUNE + 10 * MINUTE, JUNE + 10 * MINUTE + apart, 4, 5, 1.5);
      judge.row(LogFixtures.row(JUNE + 10 * MINUTE + apart + 20 * MINUTE), 1.4);
      LogEvent rain = events.all().get(0);
      assertThat(rain.start()).isEqualTo(apart == 2 * HOUR ? JUNE : JUNE + 10 * MINUTE);
      assertThat(1000 * rain.volume()).isCloseTo(apart == 2 * HOUR ? 20 : 10, offset(1e-9));
    }
  }
}

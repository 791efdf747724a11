package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Litres drunk and poured, by hand: plants drink 10 L a day with the sheet's rhythm, weight 1 from
 * 7 to 19 h and 0.12 in the dark, so that a day weighs 12 + 12 x 0.12 = 13.44 h, its morning until
 * noon 7 x 0.12 + 5 = 5.84 h, its rest 7 + 5 x 0.12 = 7.6 h. Steps of 10 L begin at 20, 30, ... 90
 * L and last 2 L longer on the way down; a tenth of a step is 1 L.
 */
class UseByHandTest {
  private static final long JUNE = LogFixtures.JUNE;
  private static final long MINUTE = LogFixtures.MINUTE;
  private static final long HOUR = LogFixtures.HOUR;
  private static final long DAY = LogFixtures.DAY;
  private static final long NOON = JUNE + 12 * HOUR;
  private static final double DAY_H = 13.44;

  private StepVolumes volumes;
  private DayBook days;
  private UseBook book;

  @BeforeEach
  void book() {
    LocalClock clock = new LocalClock(ZoneOffset.UTC);
    Rhythm rhythm = new Rhythm(clock, LogLimits.DEFAULT);
    volumes = new StepVolumes(LogFixtures.system(ZoneOffset.UTC, 0));
    days = new DayBook(LogLimits.DEFAULT, clock, rhythm, LogFixtures.tenMinutes());
    book = new UseBook(volumes, rhythm, days);
  }

  private void rowsUntil(double day) {
    for (long t = JUNE; t <= JUNE + day * DAY; t += 10 * MINUTE) {
      days.row(LogFixtures.row(t), 0);
    }
  }

  /** Ordinary falls of one step at noon of each day, 10 L a day, from 58 L on the first. */
  private void falls(int n) {
    book.start(JUNE, 5);
    for (int i = 0; i < n; i++) {
      rowsUntil(i + 0.5);
      book.edge(NOON + i * DAY, 0.058 - 0.01 * i, true, true);
    }
  }

  private static void litres(double volume, double litres) {
    assertThat(1000 * volume).isCloseTo(litres, offset(1e-6));
  }

  private void used(int day, double litres) {
    litres(days.days().get(day).used(), litres);
  }

  /** A day between two edges; the morning before the first one by the same rate. */
  @Test
  void aDayBetweenTwoEdgesIsLaidByTheHour() {
    falls(2);
    used(0, 10);
    used(1, 10 * 5.84 / DAY_H);
    rowsUntil(2);
    book.finish(JUNE + 2 * DAY, 3);
    used(1, 10);
    used(2, 0);
  }

  /** What is drunk since the last edge cannot be more than the step allows: 48 to 38 L. */
  @Test
  void theEndOfALogIsHeldToItsStep() {
    falls(2);
    rowsUntil(4);
    book.finish(JUNE + 4 * DAY, 3);
    double sum = days.days().stream().mapToDouble(LogDay::used).sum();
    litres(sum, 10 * 5.84 / DAY_H + 10 + 10);
  }

  @Test
  void ratesNeedHalfADay() {
    book.start(JUNE, 5);
    rowsUntil(0.5);
    book.edge(JUNE + 7 * HOUR, 0.058, true, true);
    long half = (long) (6.72 * HOUR);
    book.edge(JUNE + 7 * HOUR + half, 0.053, true, true);
    assertThat(book.expected(NOON, NOON + HOUR)).as("half a day and no more").isNaN();
    book.edge(JUNE + 7 * HOUR + half + 6 * MINUTE, 0.0529, true, true);
    litres(book.expected(NOON, NOON + HOUR), 5.1 / 6.82);
  }

  /** 10 L on the first day, 20 on the second: 15 a day; the last rate and the mean are 17.5. */
  @Test
  void heatIsBelievedToItsBounds() {
    book.start(JUNE, 8);
    rowsUntil(0.5);
    book.edge(NOON, 0.088, true, true);
    book.edge(NOON + DAY, 0.078, true, true);
    litres(book.expected(NOON, NOON + DAY), 10);
    litres(book.expectedAtMost(NOON, NOON + DAY), 10);
    book.edge(NOON + 2 * DAY, 0.058, true, true);
    litres(book.expected(NOON, NOON + DAY), 15);
    litres(book.expectedAtMost(NOON, NOON + DAY), 17.5);
    // 40 L in a day are held to 2.5 times 15; the mean is 70 / 3.
    book.edge(NOON + 3 * DAY, 0.018, true, true);
    litres(book.expectedAtMost(NOON, NOON + DAY), (37.5 + 70.0 / 3) / 2);
    litres(book.volumeAt(NOON + 3 * DAY, 0), 18);
    // 1 L in a day is held to 0.4 times 70/3; cold is not taken for what is expected at most.
    book.edge(NOON + 4 * DAY, 0.017, true, true);
    litres(book.expectedAtMost(NOON, NOON + DAY), 71.0 / 4);
    litres(0.017 - book.volumeAt(NOON + 5 * DAY, 0), (0.4 * 70 / 3 + 71.0 / 4) / 2);
  }

  /** An eighth of a day, 1.68 h, says nothing of a rate; nor does a fall that thirst is not. */
  @Test
  void aShortStretchOrALeakIsNoRate() {
    book.start(JUNE, 5);
    rowsUntil(0.5);
    for (int i = 0; i < 3; i++) {
      book.edge(NOON + i * DAY, 0.058 - 0.01 * i, true, true);
    }
    book.edge(NOON + 2 * DAY + (long) (1.68 * HOUR), 0.0355, true, true);
    double mean = 22.5 / (2 + 0.125);
    litres(book.expected(NOON, NOON + DAY), mean);
    litres(book.expectedAtMost(NOON, NOON + DAY), mean);
    book.edge(NOON + 3 * DAY, 0.018, true, false);
    litres(book.expected(NOON, NOON + DAY), mean);
    litres(book.expectedAtMost(NOON, NOON + DAY), mean);
    // 1.69 h: 2 L are 15.9 a day.
    book.edge(NOON + 3 * DAY + (long) (1.69 * HOUR), 0.016, true, true);
    double next = 24.5 / (2 + 0.125 + 1.69 / DAY_H);
    litres(book.expectedAtMost(NOON, NOON + DAY), (2 * DAY_H / 1.69 + next) / 2);
  }

  /** Rain adds to what must have been drunk, up to 2.5 times what is expected. */
  @Test
  void rainBetweenTwoEdgesWasDrunkToo() {
    falls(2);
    rowsUntil(2.5);
    book.rain(0.004, 3);
    litres(book.rainSince(), 4);
    litres(book.volumeAt(NOON + DAY, 3), 50);
    book.edge(NOON + 2 * DAY, 0.038, true, true);
    litres(book.rainSince(), 0);
    used(1, 10 * 5.84 / DAY_H + 14 * 7.6 / DAY_H);
    rowsUntil(3.5);
    book.rain(0.05, 2);
    book.edge(NOON + 3 * DAY, 0.028, true, true);
    // The median of both whole days, 10 and 12.26: of 60 L no more than 2.5 times are believed.
    double usual = (10 + (10 * 5.84 + 14 * 7.6) / DAY_H) / 2;
    used(2, 14 * 5.84 / DAY_H + 2.5 * usual * 7.6 / DAY_H);
  }

  /** More came than rain: nothing was drunk rather than less than nothing. */
  @Test
  void aRiseBetweenEdgesIsNoUse() {
    falls(2);
    book.edge(NOON + 2 * DAY, 0.05, true, true);
    used(1, 10 * 5.84 / DAY_H);
  }

  /** 10 L a day from 48 L at noon: 45.77 L at 15 h, with 0.4 and 2.5 times that and 1 L about. */
  @Test
  void theVolumeBetweenEdges() {
    falls(2);
    long three = NOON + DAY + 3 * HOUR;
    double drunk = 30 / DAY_H;
    litres(book.volumeAt(three, 3), 48 - drunk);
    litres(book.bandHigh(three, 3), 49 - 0.4 * drunk);
    litres(book.bandLow(three, 3), 47 - 2.5 * drunk);
    litres(book.volumeAt(NOON + 4 * DAY, 3), 38);
    litres(book.bandLow(NOON + 4 * DAY, 3), 38);
    litres(book.bandHigh(NOON + 4 * DAY, 3), 38);
    litres(book.bandHigh(NOON + DAY, 3), 49);
    book.rain(0.003, 3);
    litres(book.volumeAt(three, 3), Math.min(50, 51 - drunk));
    litres(book.bandHigh(NOON + DAY, 3), 50);
    litres(book.bandLow(three, 3), 38);
  }

  @Test
  void theFirstReadingIsTheMiddleOfItsStep() {
    assertThat(book.isStarted()).isFalse();
    book.start(JUNE, 3);
    assertThat(book.isStarted()).isTrue();
    litres(book.volumeAt(JUNE, 3), 44);
    litres(book.bandLow(JUNE, 3), 38);
    litres(book.bandHigh(JUNE, 3), 50);
    book.rain(0.002, 3);
    litres(book.volumeAt(JUNE, 3), 46);
    book.start(JUNE, 0);
    litres(book.bandLow(JUNE, 0), 0);
    assertThat(book.anchorVolume()).isNaN();
  }

  /** At the blind top the tank is taken for no more than full, 90 L, unless it rained: 100 L. */
  @Test
  void theTopStepReachesToFullOrToTheRim() {
    book.start(JUNE, 8);
    litres(book.volumeAt(JUNE, 8), 89);
    litres(book.bandHigh(JUNE, 8), 90);
    book.rain(0.02, 8);
    litres(book.volumeAt(JUNE, 8), 100);
    litres(book.bandHigh(JUNE, 8), 100);
    book.rain(0, 8);
    litres(book.bandHigh(JUNE, 8), 100);
    book.blur(JUNE, 8);
    litres(book.volumeAt(JUNE, 8), 94);
    book.rain(0, 7);
    book.blur(JUNE, 8);
    litres(book.volumeAt(JUNE, 8), 89);
    book.rain(0.02, 7);
    book.blur(JUNE, 8);
    litres(book.volumeAt(JUNE, 8), 89);
  }

  /** After a fall that thirst is not, or of several steps, only the step is known. */
  @Test
  void afterALeakTheBandIsTheStep() {
    falls(2);
    assertThat(book.isExact()).isTrue();
    book.edge(NOON + DAY + HOUR, 0.038, true, false);
    litres(book.bandLow(NOON + DAY + HOUR, 2), 28);
    litres(book.bandHigh(NOON + DAY + HOUR, 2), 39);
    litres(book.anchorVolume(), 38);
    book.edge(NOON + DAY + 2 * HOUR, 0.023, false, true);
    assertThat(book.isExact()).isFalse();
    book.widen(0.018, 0.028);
    litres(book.volumeAt(NOON + DAY + 2 * HOUR, 1), 23);
    litres(book.bandLow(NOON + DAY + 2 * HOUR, 1), 18);
    litres(book.bandHigh(NOON + DAY + 2 * HOUR, 1), 29);
    book.blur(NOON + DAY + 3 * HOUR, 4);
    assertThat(book.anchorVolume()).isNaN();
    litres(book.volumeAt(NOON + DAY + 3 * HOUR, 4), 54);
    book.empties(NOON + DAY + 4 * HOUR, 2);
    litres(book.volumeAt(NOON + DAY + 4 * HOUR, 2), 34);
  }

  private Pour pour(long start, int from, int to) {
    Pour pour = new Pour();
    pour.start = start;
    pour.end = start + 10 * MINUTE;
    pour.fromStep = from;
    pour.toStep = to;
    pour.event = new LogEvent(EventKind.REFILL, pour.start, pour.end);
    return pour;
  }

  /**
   * At 15 h there are 48 - 30/13.44 = 45.77 L. Step 6 after it is 70 to 80 L. The edge at noon of
   * the next day, 68 L, says 68 + what 15:10 to noon drinks: 23 h 50 min less ..., 10.27 h of
   * thirst.
   */
  @Test
  void aRefillIsMadeExactByTheNextEdge() {
    falls(2);
    long three = NOON + DAY + 3 * HOUR;
    Pour pour = pour(three, 3, 6);
    book.pour(pour, 6);
    double before = 48 - 30 / DAY_H;
    litres(pour.event.volume(), 75 - before);
    litres(pour.event.volumeLow(), 70 - (49 - 12 / DAY_H));
    litres(pour.event.volumeHigh(), 80 - (47 - 75 / DAY_H));
    assertThat(book.anchorVolume()).isNaN();
    litres(book.volumeAt(three + 10 * MINUTE, 6), 75);
    rowsUntil(2.5);
    book.edge(NOON + 2 * DAY, 0.068, true, true);
    rowsUntil(3.5);
    book.edge(NOON + 3 * DAY, 0.058, true, true);
    double later = 10 * (3 + 50 / 60.0 + 0.6 + 5.84) / DAY_H;
    litres(pour.event.volume(), 68 + later - before);
    // The ten minutes of pouring are nobody's.
    used(1, 10 - 10 / 6.0 / DAY_H);
    used(2, 10);
  }

  /** The edge comes an hour after: the step began at 70 L, so 2 L at least were drunk. */
  @Test
  void whatIsDrunkAfterAPouringIsHeldToItsStep() {
    for (double hours : new double[] {0.5, 96}) {
      book();
      falls(2);
      Pour pour = pour(NOON + DAY, 3, 6);
      book.pour(pour, 6);
      long edge = pour.end + (long) (hours * HOUR);
      rowsUntil(6);
      book.edge(edge, 0.068, true, true);
      book.edge(edge + DAY, 0.058, true, true);
      litres(pour.event.volume(), (hours < 1 ? 70 : 80) - 48);
    }
  }

  /** A can that is told with wide ends keeps within them. */
  @Test
  void aPouringKeepsWithinItsBand() {
    falls(2);
    Pour pour = pour(NOON + DAY, 3, 6);
    book.pour(pour, 6);
    pour.event.volumeHigh = 0.0272;
    book.edge(NOON + 2 * DAY, 0.068, true, true);
    book.edge(NOON + 3 * DAY, 0.058, true, true);
    litres(pour.event.volume(), 27.2);
  }

  /** From 48 L the step ends at 38: no more than 10 L before a can, though four days would. */
  @Test
  void beforeAPouringNoMoreIsDrunkThanTheStepHolds() {
    falls(2);
    rowsUntil(7);
    Pour pour = pour(NOON + 5 * DAY, 3, 6);
    book.pour(pour, 6);
    litres(pour.event.volume(), 75 - 38);
    book.edge(NOON + 6 * DAY, 0.068, true, true);
    book.edge(NOON + 7 * DAY, 0.058, true, true);
    double before = 0;
    for (int day = 1; day < 5; day++) {
      before += 1000 * days.days().get(day).used();
    }
    before += 1000 * days.days().get(5).used();
    double after = 10 * (6 + 50 / 60.0 + 0.6) / DAY_H;
    assertThat(before).isCloseTo(10 * 5.84 / DAY_H + 10 + after, offset(1e-6));
  }

  /** Emptied at noon, filled at 14 h: nothing drunk meanwhile; before it was the step's middle. */
  @Test
  void aChangeOfSolution() {
    falls(2);
    Pour pour = pour(NOON + DAY + 2 * HOUR, 1, 7);
    pour.emptiedFrom = NOON + DAY;
    book.pour(pour, 7);
    litres(pour.event.volume(), 85 - 24);
    litres(pour.event.volumeLow(), 80 - 30);
    litres(pour.event.volumeHigh(), 90 - 18);
    rowsUntil(2.5);
    book.edge(NOON + 2 * DAY, 0.078, true, true);
    rowsUntil(3.5);
    book.edge(NOON + 3 * DAY, 0.068, true, true);
    used(1, 10 * (5.84 + 4 + 50 / 60.0 + 0.6) / DAY_H);
  }

  /** Two cans with an hour between: what is drunk between counts. */
  @Test
  void twoCans() {
    falls(2);
    Pour one = pour(NOON + DAY, 3, 5);
    book.pour(one, 5);
    Pour two = pour(NOON + DAY + 2 * HOUR, 5, 8);
    book.pour(two, 8);
    litres(two.event.volume(), 90 - (65 - 10 * (1 + 50 / 60.0) / DAY_H));
    rowsUntil(2.5);
    book.edge(NOON + 2 * DAY, 0.088, true, true);
    rowsUntil(3.5);
    book.edge(NOON + 3 * DAY, 0.078, true, true);
    used(1, 10 * (DAY_H - 2 / 6.0) / DAY_H);
  }

  /** A log that ends after a can, or before it ever knew a volume. */
  @Test
  void aLogThatEndsWithoutAnEdge() {
    falls(2);
    book.pour(pour(NOON + DAY + 10 * MINUTE, 3, 6), 6);
    rowsUntil(2);
    book.finish(JUNE + 2 * DAY, 6);
    used(1, 10 * (DAY_H - 1 / 6.0) / DAY_H);
    book();
    rowsUntil(1);
    book.finish(JUNE + DAY, 0);
    used(0, 0);
    book.start(JUNE, 3);
    book.finish(JUNE + DAY, 3);
    used(0, 0);
  }

  /** The first edge is followed by the end: its morning is laid by nothing but the median. */
  @Test
  void aPendingStretchIsSettledAtTheEnd() {
    falls(3);
    rowsUntil(3);
    book.blur(NOON + 2 * DAY + HOUR, 3);
    rowsUntil(4);
    book.edge(NOON + 3 * DAY, 0.038, true, true);
    book.finish(NOON + 3 * DAY, 2);
    used(2, 10);
  }
}

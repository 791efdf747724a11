package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.List;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SowingTest {
  private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);

  private static Sowing every(int pots, int growing, int turnaround, int days, Sizes sizes) {
    return new Sowing(
        pots, MARCH, MARCH.plusDays(200), 21, growing, turnaround, days, 0.9, sizes, null, null);
  }

  /** Second route: the binomial sum in exact numbers. */
  @Property(tries = 400)
  void seedsAgreeWithTheBinomialSum(
      @ForAll @IntRange(min = 1, max = 40) int plants,
      @ForAll @IntRange(min = 20, max = 100) int percent) {
    int seeds = Seeds.nineOfTen(plants, percent / 100.0);
    assertThat(atLeast(plants, seeds, percent)).isGreaterThanOrEqualTo(new BigDecimal("0.9"));
    if (seeds > plants) {
      assertThat(atLeast(plants, seeds - 1, percent)).isLessThan(new BigDecimal("0.9"));
    }
    assertThat(Seeds.onAverage(plants, percent / 100.0))
        .isEqualTo((100 * plants + percent - 1) / percent);
  }

  private static BigDecimal atLeast(int plants, int seeds, int percent) {
    BigDecimal p = BigDecimal.valueOf(percent, 2);
    BigDecimal q = BigDecimal.ONE.subtract(p);
    BigDecimal sum = BigDecimal.ZERO;
    for (int k = plants; k <= seeds; k++) {
      sum = sum.add(new BigDecimal(choose(seeds, k)).multiply(p.pow(k)).multiply(q.pow(seeds - k)));
    }
    return sum;
  }

  private static BigInteger choose(int n, int k) {
    BigInteger c = BigInteger.ONE;
    for (int i = 1; i <= k; i++) {
      c = c.multiply(BigInteger.valueOf(n - k + i)).divide(BigInteger.valueOf(i));
    }
    return c;
  }

  @Test
  void manySeedsDoNotUnderflow() {
    // Normal approximation: 5000 plants at 50 % want about 10 000 + 1.2816 sqrt(10 000 x 0.25)/0.5.
    assertThat(Seeds.nineOfTen(5000, 0.5)).isBetween(10_100, 10_160);
  }

  @Test
  void nothingComesOfNoSeed() {
    assertThatThrownBy(() -> Seeds.onAverage(5, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Seeds.nineOfTen(5, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Seeds.nineOfTen(5, 1e-12)).isInstanceOf(Impossible.class);
    // 9.1 million on average, some 13 million for nine of ten: found while counting.
    assertThatThrownBy(() -> Seeds.nineOfTen(10, 1.1e-6)).isInstanceOf(Impossible.class);
  }

  @Property(tries = 500)
  void spreadFillsAndNeverOverfills(
      @ForAll @IntRange(min = 1, max = 60) int pots,
      @ForAll @IntRange(min = 10, max = 80) int growing,
      @ForAll @IntRange(max = 5) int turnaround,
      @ForAll @IntRange(min = 1, max = 30) int days) {
    Sowing s = every(pots, growing, turnaround, days, Sizes.SPREAD);
    PotUse use = PotUse.of(List.of(Batches.of(s)));
    assertThat(use.over(pots)).isNull();
    if ((growing + turnaround) % days == 0) {
      assertThat(use.most()).isEqualTo(pots);
    }
    if (pots >= s.batchesAtOnce()) {
      assertThat(Batches.of(s).batches()).hasSize(Batches.of(s).kept());
    }
  }

  @Test
  void equalLeavesPotsIdle() {
    Sowing s = every(24, 35, 0, 7, Sizes.EQUAL);
    assertThat(s.idlePots()).isEqualTo(4);
    assertThat(PotUse.of(List.of(Batches.of(s))).most()).isEqualTo(20);
    assertThat(s.plantsAWeek()).isEqualTo(4);
    assertThat(every(24, 35, 0, 7, Sizes.SPREAD).plantsAWeek()).isEqualTo(4.8);
    assertThat(every(24, 35, 0, 7, Sizes.SPREAD).plantsAWeekAtMost()).isEqualTo(4.8);
  }

  @Test
  void fewerPotsThanBatchesGetsAdvice() {
    Sowing s = every(5, 45, 1, 3, Sizes.SPREAD);
    assertThat(Batches.of(s).kept()).isGreaterThan(Batches.of(s).batches().size());
    int better = s.everyForNoEmptyBatch();
    assertThat(better).isEqualTo(10);
    Batches mended = Batches.of(every(5, 45, 1, better, Sizes.SPREAD));
    assertThat(mended.kept()).isEqualTo(mended.batches().size());
    Batches short1 = Batches.of(every(5, 45, 1, better - 1, Sizes.SPREAD));
    assertThat(short1.kept()).isGreaterThan(short1.batches().size());
  }

  @Test
  void aLimitDropsAndSaysWhichDateWorks() {
    LocalDate free = LocalDate.of(2027, 4, 10);
    LocalDate end = LocalDate.of(2027, 10, 15);
    Sowing s =
        new Sowing(24, MARCH, MARCH.plusDays(203), 21, 35, 0, 7, 0.9, Sizes.SPREAD, free, end);
    assertThat(s.firstThatWorks()).isEqualTo(LocalDate.of(2027, 3, 20));
    assertThat(s.lastThatWorks()).isEqualTo(LocalDate.of(2027, 8, 20));
    for (DroppedBatch d : Batches.of(s).dropped()) {
      boolean early = d.reason() == DroppedBatch.Reason.TOO_EARLY;
      assertThat(early ? d.sow().isBefore(s.firstThatWorks()) : d.sow().isAfter(s.lastThatWorks()))
          .isTrue();
    }
  }

  @Test
  void oneSowingFillsAllPots() {
    Batches b = Batches.of(Sowing.once(10, MARCH, 28, 70, 0, 1, null, null));
    assertThat(b.batches()).hasSize(1);
    assertThat(b.batches().get(0).plants()).isEqualTo(10);
    assertThat(SowSum.of(List.of(b)).longestHarvestGapDays()).isZero();
  }

  @Test
  void cropsThatFollowEachOtherShareATower() {
    Batches first = Batches.of(Sowing.once(20, MARCH, 10, 30, 2, 1, null, null));
    LocalDate free = first.batches().get(0).free();
    Batches next = Batches.of(Sowing.once(18, free.minusDays(10), 10, 40, 0, 1, null, null));
    Batches early = Batches.of(Sowing.once(18, free.minusDays(11), 10, 40, 0, 1, null, null));
    assertThat(PotUse.of(List.of(first, next)).over(20)).isNull();
    PotUse.Overfull over = PotUse.of(List.of(first, early)).over(20);
    assertThat(over).isEqualTo(new PotUse.Overfull(free.minusDays(1), 38, 20));
    PotUse use = PotUse.of(List.of(first, next));
    assertThat(use.emptyDays()).isEqualTo(2);
  }

  @Test
  void anEmptyTowerIsNoPlanUnlessOnesOwnLimitMadeIt() {
    Batches spring = Batches.of(Sowing.once(10, MARCH, 10, 30, 0, 1, null, null));
    LocalDate cut = spring.lastHarvest();
    Batches at14 = Batches.of(Sowing.once(10, cut.plusDays(4), 10, 30, 0, 1, null, null));
    Batches at15 = Batches.of(Sowing.once(10, cut.plusDays(5), 10, 30, 0, 1, null, null));
    assertThat(PotUse.of(List.of(spring, at14)).longestEmpty().tooLong()).isFalse();
    PotUse.EmptyTime empty = PotUse.of(List.of(spring, at15)).longestEmpty();
    assertThat(empty).isEqualTo(new PotUse.EmptyTime(cut, 15, false));
    assertThat(empty.tooLong()).isTrue();
    Batches dropped = Batches.of(Sowing.once(10, cut, 2, 30, 0, 1, cut.plusDays(60), null));
    PotUse.EmptyTime own = PotUse.of(List.of(spring, at15, dropped)).longestEmpty();
    assertThat(own.ownLimit()).isTrue();
    assertThat(own.tooLong()).isFalse();
    assertThat(PotUse.of(List.of(dropped)).empty()).isTrue();
    assertThat(PotUse.of(List.of(dropped)).longestEmpty().days()).isZero();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> every(0, 35, 0, 7, Sizes.SPREAD)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> every(5, 0, 0, 7, Sizes.SPREAD)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> every(5, 35, 0, 0, Sizes.SPREAD)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Sowing.once(5, MARCH, 1, 30, 0, 0, null, null))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(
            () ->
                new Sowing(5, MARCH, MARCH.minusDays(1), 21, 35, 0, 7, 1, Sizes.SPREAD, null, null))
        .isInstanceOf(Impossible.class);
  }

  @Test
  void theBoundsThemselvesAreTaken() {
    Sowing least = new Sowing(1, MARCH, MARCH, 0, 1, 0, 1, 1, Sizes.SPREAD, null, null);
    assertThat(Batches.of(least).plants()).isEqualTo(1);
    LocalDate tenYears = MARCH.plusDays(3660);
    Sowing most =
        new Sowing(
            100_000, MARCH, tenYears, 3660, 3660, 3660, 7320, 0.01, Sizes.SPREAD, null, null);
    assertThat(most.batchesAtOnce()).isEqualTo(1);
    assertThatThrownBy(
            () ->
                new Sowing(5, MARCH, tenYears.plusDays(1), 0, 1, 0, 1, 1, Sizes.SPREAD, null, null))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> every(100_001, 35, 0, 7, Sizes.SPREAD)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> every(5, 35, 3661, 7, Sizes.SPREAD)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> every(5, 35, -1, 7, Sizes.SPREAD)).isInstanceOf(Impossible.class);
  }

  @Test
  void theLossIsNamedWhereNoSeedBecomesAPlant() {
    for (double success : new double[] {0, -0.1, 1.1, Double.NaN}) {
      assertThatThrownBy(() -> Seeds.onAverage(5, success)).hasMessageContaining("under 100 %");
      assertThatThrownBy(() -> Seeds.nineOfTen(5, success)).hasMessageContaining("under 100 %");
    }
    assertThat(Seeds.onAverage(5, 1)).isEqualTo(5);
    assertThat(Seeds.nineOfTen(5, 1)).isEqualTo(5);
    assertThat(Seeds.nineOfTen(0, 0.5)).isZero();
    assertThat(Seeds.onAverage(1, 1e-7)).as("as many as can be counted").isEqualTo(10_000_000);
    assertThatThrownBy(() -> Seeds.onAverage(1, 0.9e-7)).hasMessageContaining("counted on");
  }

  /** 35 days and 5 for cleaning: 40 busy days. 7 x 24/40 plants a week. */
  @Test
  void thePotsOwnDaysCountBothGrowingAndTurnaround() {
    Sowing s = every(24, 35, 5, 50, Sizes.SPREAD);
    assertThat(s.plantsAWeekAtMost()).isEqualTo(4.2);
    assertThat(s.emptyDaysBetween()).isEqualTo(10);
    assertThat(s.leavesPotsEmpty()).isTrue();
    assertThat(every(24, 35, 5, 40, Sizes.SPREAD).leavesPotsEmpty()).isFalse();
    assertThat(every(24, 35, 5, 40, Sizes.SPREAD).emptyDaysBetween()).isZero();
    assertThat(every(24, 35, 5, 41, Sizes.SPREAD).leavesPotsEmpty()).isTrue();
    assertThat(every(24, 35, 5, 7, Sizes.SPREAD).emptyDaysBetween()).isZero();
    // 50 busy days over 5 pots: a batch every 10 days, and not 11.
    assertThat(every(5, 45, 5, 3, Sizes.SPREAD).everyForNoEmptyBatch()).isEqualTo(10);
  }
}

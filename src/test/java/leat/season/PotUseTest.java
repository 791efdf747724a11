package leat.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.api.Test;

/** Pots on single days, and sums over crops of one tower. */
class PotUseTest {
  private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);

  /** Transplanted on the day, cut after 30 days, the pots free 2 days later. */
  private static Batches planted(LocalDate day) {
    return Batches.of(Sowing.once(10, day, 0, 30, 2, 1, null, null));
  }

  @Test
  void aPotIsTakenUntilItIsFree() {
    PotUse use = PotUse.of(List.of(planted(MARCH)));
    assertThat(use.empty()).isFalse();
    assertThat(use.over(9)).isEqualTo(new PotUse.Overfull(MARCH, 10, 9));
    // Cut after 30 days, free after 32: until then the pots of the next are taken as well.
    Batches early = planted(MARCH.plusDays(31));
    Batches next = planted(MARCH.plusDays(32));
    assertThat(PotUse.of(List.of(planted(MARCH), early)).most()).isEqualTo(20);
    assertThat(PotUse.of(List.of(planted(MARCH), next)).most()).isEqualTo(10);
    assertThat(PotUse.of(List.of(planted(MARCH), early)).emptyDays()).isEqualTo(1);
    assertThat(PotUse.of(List.of(planted(MARCH), next)).emptyDays()).isEqualTo(2);
    PotUse none = PotUse.of(List.of());
    assertThat(none.empty()).isTrue();
    assertThat(none.most()).isZero();
    assertThat(none.over(0)).isNull();
  }

  @Test
  void asManyPlantsAsPotsIsNotTooMany() {
    PotUse use = PotUse.of(List.of(planted(MARCH), planted(MARCH.plusDays(31))));
    assertThat(use.over(20)).isNull();
    assertThat(use.over(19)).isEqualTo(new PotUse.Overfull(MARCH.plusDays(31), 20, 19));
  }

  /** Cut on day 30, planted again on 50; cut on 80, planted again on 100. */
  @Test
  void ofEqualEmptyTimesTheFirst() {
    List<Batches> crops =
        List.of(planted(MARCH), planted(MARCH.plusDays(50)), planted(MARCH.plusDays(100)));
    PotUse use = PotUse.of(crops);
    assertThat(use.longestEmpty()).isEqualTo(new PotUse.EmptyTime(MARCH.plusDays(30), 20, false));
    assertThat(use.emptyDays()).isEqualTo(40);
  }

  /** The last empty time, 15 days, is nobody's own wish; the 20 days before it are the crop's. */
  @Test
  void anEmptyTimeOfNobodysOwnComesBeforeALongerOne() {
    List<Batches> crops = new ArrayList<>();
    crops.add(planted(MARCH));
    crops.add(planted(MARCH.plusDays(50)));
    crops.add(planted(MARCH.plusDays(95)));
    LocalDate from = MARCH.plusDays(40);
    Batches dropped = Batches.of(Sowing.once(10, from, 0, 5, 0, 1, from.plusDays(1), null));
    assertThat(dropped.batches()).isEmpty();
    crops.add(dropped);
    PotUse.EmptyTime told = PotUse.of(crops).longestEmpty();
    assertThat(told).isEqualTo(new PotUse.EmptyTime(MARCH.plusDays(80), 15, false));
    assertThat(told.tooLong()).isTrue();
  }

  /** A dropped batch that ends as the time begins, or begins as it ends, did not make it. */
  @Test
  void aDroppedBatchBesideAnEmptyTimeIsNotItsReason() {
    for (int transplant : new int[] {25, 26, 49, 50}) {
      LocalDate day = MARCH.plusDays(transplant);
      Batches dropped = Batches.of(Sowing.once(10, day, 0, 5, 0, 1, day.plusDays(1), null));
      PotUse use = PotUse.of(List.of(planted(MARCH), planted(MARCH.plusDays(50)), dropped));
      assertThat(use.longestEmpty().ownLimit())
          .as("dropped on day " + transplant)
          .isEqualTo(transplant == 26 || transplant == 49);
    }
  }

  /** The sums over all plans of season-sow.csv as if they were one tower's crops. */
  @Test
  void sumsOverCropsAreTheSheetsSums() {
    List<Row> sheet = Sheet.of("season-sow.csv").having("plants_total").atLeast(7).toList();
    List<Batches> crops = new ArrayList<>();
    for (Row r : sheet) {
      crops.add(Batches.of(SowSheetTest.sowing(r)));
    }
    SowSum sum = SowSum.of(crops);
    assertThat(sum.kept()).isEqualTo(sum(sheet, "batches_kept"));
    assertThat(sum.withPlants()).isEqualTo(sum(sheet, "batches_with_plants"));
    assertThat(sum.dropped(DroppedBatch.Reason.TOO_EARLY))
        .isEqualTo(sum(sheet, "batches_too_early"));
    assertThat(sum.dropped(DroppedBatch.Reason.TOO_LATE)).isEqualTo(sum(sheet, "batches_too_late"));
    assertThat(sum.plants()).isEqualTo(sum(sheet, "plants_total"));
    assertThat(sum.seeds()).isEqualTo(sum(sheet, "seeds_total"));
    assertThat(sum.seeds90()).isEqualTo(sum(sheet, "seeds_total_90"));
    assertThat(sum.potDaysUsed()).isEqualTo(sum(sheet, "pot_days_used"));
    assertThat(sum.potDaysAvailable()).isEqualTo(sum(sheet, "pot_days_available"));
    assertThat(sum.firstHarvest())
        .isEqualTo(
            sheet.stream()
                .map(r -> LocalDate.parse(r.text("first_harvest")))
                .min(LocalDate::compareTo)
                .orElseThrow());
    assertThat(sum.lastHarvest())
        .isEqualTo(
            sheet.stream()
                .map(r -> LocalDate.parse(r.text("last_harvest")))
                .max(LocalDate::compareTo)
                .orElseThrow());
  }

  private static int sum(List<Row> sheet, String column) {
    ToIntFunction<Row> number = r -> (int) r.num(column);
    return sheet.stream().mapToInt(number).sum();
  }

  /** Harvests on days 30, 32 and 75 of two crops. */
  @Test
  void theLongestGapIsBetweenHarvestsOfAnyCrop() {
    Batches one = planted(MARCH);
    Batches other = planted(MARCH.plusDays(2));
    Batches late = planted(MARCH.plusDays(45));
    assertThat(SowSum.of(List.of(late, one, other)).longestHarvestGapDays()).isEqualTo(43);
    SowSum none = SowSum.of(List.of());
    assertThat(none.firstHarvest()).isNull();
    assertThat(none.lastHarvest()).isNull();
    assertThat(none.longestHarvestGapDays()).isZero();
  }

  /** 5 pots, a batch every 7 days over 21: 2, 1, 2 plants; all grow from as many seeds. */
  @Test
  void theSmallestAndTheLargestBatch() {
    Batches b =
        Batches.of(
            new Sowing(5, MARCH, MARCH.plusDays(20), 10, 21, 0, 7, 1, Sizes.SPREAD, null, null));
    assertThat(b.batches()).extracting(Batch::plants).containsExactly(1, 2, 2);
    assertThat(b.fewestSeeds()).isEqualTo(1);
    assertThat(b.mostSeeds()).isEqualTo(2);
    Batches none = Batches.of(Sowing.once(5, MARCH, 0, 30, 0, 1, MARCH.plusDays(1), null));
    assertThat(none.fewestSeeds()).isZero();
    assertThat(none.mostSeeds()).isZero();
  }
}

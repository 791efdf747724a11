package leat.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of season-sow.csv and season-sow-batches.csv, and a second route pot by pot. */
class SowSheetTest {
  static Stream<Row> plans() {
    return Sheet.of("season-sow.csv").having("plants_total").atLeast(7);
  }

  private static LocalDate date(Row r, String column) {
    return LocalDate.parse(r.text(column));
  }

  static Sowing sowing(Row r) {
    return new Sowing(
        (int) r.num("pots"),
        date(r, "first_sow"),
        date(r, "sow_until"),
        (int) r.num("nursery_days"),
        (int) r.num("growing_days"),
        (int) r.num("turnaround_days"),
        (int) r.num("every_days"),
        1 - r.num("loss"),
        r.text("rule").equals("equal") ? Sizes.EQUAL : Sizes.SPREAD,
        date(r, "earliest_transplant"),
        date(r, "latest_harvest"));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void sumsAgree(Row r) {
    Sowing sowing = sowing(r);
    Batches b = Batches.of(sowing);
    PotUse pots = PotUse.of(List.of(b));
    assertThat(sowing.batchesAtOnce()).isEqualTo((int) r.num("batches_at_once"));
    assertThat(b.kept()).isEqualTo((int) r.num("batches_kept"));
    assertThat(b.batches()).hasSize((int) r.num("batches_with_plants"));
    assertThat(b.dropped(DroppedBatch.Reason.TOO_EARLY))
        .isEqualTo((int) r.num("batches_too_early"));
    assertThat(b.dropped(DroppedBatch.Reason.TOO_LATE)).isEqualTo((int) r.num("batches_too_late"));
    assertThat(b.plants()).isEqualTo((int) r.num("plants_total"));
    assertThat(b.seeds()).isEqualTo((int) r.num("seeds_total"));
    assertThat(b.seeds90()).isEqualTo((int) r.num("seeds_total_90"));
    assertThat(pots.most()).isEqualTo((int) r.num("pots_max_in_use"));
    assertThat(b.firstHarvest()).isEqualTo(date(r, "first_harvest"));
    assertThat(b.lastHarvest()).isEqualTo(date(r, "last_harvest"));
    assertThat(SowSum.of(List.of(b)).longestHarvestGapDays())
        .isEqualTo((int) r.num("longest_harvest_gap_days"));
    assertThat(b.potDaysUsed()).isEqualTo((int) r.num("pot_days_used"));
    assertThat(b.potDaysAvailable()).isEqualTo((int) r.num("pot_days_available"));
    assertThat(pots.emptyDays()).isEqualTo((int) r.num("days_tower_empty"));
    assertThat(pots.over(sowing.pots())).isNull();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyBatchAgrees(Row plan) {
    List<Row> sheet =
        Sheet.of("season-sow-batches.csv").where(r -> r.id().equals(plan.id())).rows();
    Batches all = Batches.of(sowing(plan));
    assertThat(all.kept()).isEqualTo(sheet.size());
    Iterator<Batch> batches = all.batches().iterator();
    for (Row r : sheet) {
      if (r.num("plants") == 0) {
        continue; // an empty batch has its number and no row
      }
      Batch b = batches.next();
      assertThat(b.sow()).as(r.id()).isEqualTo(date(r, "sow"));
      assertThat(b.number()).as(r.id() + " " + b.sow()).isEqualTo((int) r.num("batch"));
      assertThat(b.transplant()).isEqualTo(date(r, "transplant"));
      assertThat(b.harvest()).isEqualTo(date(r, "harvest"));
      assertThat(b.plants()).isEqualTo((int) r.num("plants"));
      assertThat(b.seeds()).as(r.id() + " " + b.sow()).isEqualTo((int) r.num("seeds"));
      assertThat(b.seeds90()).as(r.id() + " " + b.sow()).isEqualTo((int) r.num("seeds_90"));
    }
    assertThat(batches).isExhausted();
  }

  /** Each plant walks into a free pot of its own, day by day; a pot is never asked for twice. */
  @ParameterizedTest
  @MethodSource("plans")
  void potByPot(Row plan) {
    Sowing s = sowing(plan);
    List<Batch> batches = Batches.of(s).batches();
    LocalDate[] freeFrom = new LocalDate[s.pots()];
    LocalDate[] cut = new LocalDate[s.pots()];
    java.util.Arrays.fill(freeFrom, LocalDate.MIN);
    java.util.Arrays.fill(cut, LocalDate.MIN);
    LocalDate last = batches.get(batches.size() - 1).harvest();
    int used = 0;
    int most = 0;
    int empty = 0;
    List<Batch> waiting = new ArrayList<>(batches);
    for (LocalDate d = batches.get(0).transplant(); d.isBefore(last); d = d.plusDays(1)) {
      LocalDate day = d;
      for (Batch b : waiting.stream().filter(b -> b.transplant().equals(day)).toList()) {
        for (int plant = 0; plant < b.plants(); plant++) {
          int pot = 0;
          while (pot < s.pots() && freeFrom[pot].isAfter(day)) {
            pot++;
          }
          assertThat(pot).as(plan.id() + ": no free pot on " + day).isLessThan(s.pots());
          cut[pot] = day.plusDays(s.growingDays());
          freeFrom[pot] = cut[pot].plusDays(s.turnaroundDays());
        }
      }
      int growing = (int) Stream.of(cut).filter(c -> c.isAfter(day)).count();
      used += growing;
      empty += growing == 0 ? 1 : 0;
      most = Math.max(most, (int) Stream.of(freeFrom).filter(f -> f.isAfter(day)).count());
    }
    assertThat(used).isEqualTo(Batches.of(s).potDaysUsed());
    PotUse pots = PotUse.of(List.of(Batches.of(s)));
    assertThat(most).isEqualTo(pots.most());
    assertThat(empty).isEqualTo(pots.emptyDays());
  }
}

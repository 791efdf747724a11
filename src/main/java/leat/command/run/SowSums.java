package leat.command.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.season.Batches;
import leat.season.DroppedBatch;
import leat.season.PotUse;
import leat.season.SowSum;
import leat.system.PotsOf;
import leat.system.Sown;

/** Sums of all sowings, and of each crop. */
final class SowSums {
  static final Column AT_ONCE = Column.plain("batches_at_once", "batches at once");
  static final Column KEPT = Column.plain("batches_kept", "batches");
  static final Column WITH_PLANTS = Column.plain("batches_with_plants", "batches with plants");
  static final Column TOO_EARLY = Column.plain("batches_too_early", "too early");
  static final Column TOO_LATE = Column.plain("batches_too_late", "too late");
  static final Column PLANTS = Column.plain("plants_total", "plants");
  static final Column SEEDS = Column.plain("seeds_total", "seeds");
  static final Column SEEDS_90 = Column.plain("seeds_total_90", "seeds to be sure");
  static final Column MOST = Column.plain("pots_max_in_use", "most pots in use");
  static final Column FIRST = Column.plain("first_harvest", "first harvest");
  static final Column LAST = Column.plain("last_harvest", "last harvest");
  static final Column GAP = Column.plain("longest_harvest_gap_days", "longest gap");
  static final Column USED = Column.plain("pot_days_used", "days of pots in use");
  static final Column AVAILABLE = Column.plain("pot_days_available", "days of pots");
  static final Column EMPTY = Column.plain("days_tower_empty", "days without a plant");
  static final Column LAST_FROST = Column.plain("last_spring_frost", "last frost in spring");
  static final Column FIRST_FROST = Column.plain("first_autumn_frost", "first frost in autumn");
  private static final Column CROP = Column.plain("crop", "crop");
  private static final Column TOWER = Column.plain("tower", "tower");
  private static final Column POTS = Column.plain("pots", "pots");

  private static final Column[] OF_ALL = {
    AT_ONCE, KEPT, WITH_PLANTS, TOO_EARLY, TOO_LATE,
    PLANTS, SEEDS, SEEDS_90, MOST, FIRST,
    LAST, GAP, USED, AVAILABLE, EMPTY,
    LAST_FROST, FIRST_FROST,
  };
  private static final Column[] OF_A_CROP = {
    CROP, TOWER, POTS, AT_ONCE, KEPT,
    WITH_PLANTS, TOO_EARLY, TOO_LATE, PLANTS, SEEDS,
    SEEDS_90, MOST, FIRST, LAST, GAP,
    USED, AVAILABLE, EMPTY,
  };

  private SowSums() {}

  static Answer answer(List<Sown> crops, List<List<Sown>> towers, SowWeather weather) {
    Answer answer = new Answer(OF_ALL);
    Row row = answer.row();
    sum(row, crops);
    int most = 0;
    int empty = 0;
    for (List<Sown> tower : towers) {
      PotUse use = PotsOf.use(tower);
      most += use.most();
      empty = Math.max(empty, use.emptyDays());
    }
    row.set(MOST, most).set(EMPTY, empty);
    if (weather != null) {
      row.set(LAST_FROST, text(weather.lastSpring())).set(FIRST_FROST, text(weather.firstAutumn()));
    }
    return answer;
  }

  /** A row for each crop. */
  static Answer crops(List<Sown> crops) {
    Answer answer = new Answer(OF_A_CROP);
    for (Sown crop : crops) {
      Row row = answer.row();
      sum(row, List.of(crop));
      PotUse use = PotsOf.use(List.of(crop));
      row.set(CROP, crop.name())
          .set(TOWER, crop.tower())
          .set(POTS, crop.batches().sowing().pots())
          .set(MOST, use.most())
          .set(EMPTY, use.emptyDays());
    }
    return answer;
  }

  private static void sum(Row row, List<Sown> crops) {
    List<Batches> all = new ArrayList<>();
    for (Sown crop : crops) {
      all.add(crop.batches());
    }
    row.setAny(AT_ONCE, all.size() == 1 ? all.get(0).sowing().batchesAtOnce() : null);
    sum(row, SowSum.of(all));
  }

  private static void sum(Row row, SowSum sum) {
    row.set(KEPT, sum.kept())
        .set(WITH_PLANTS, sum.withPlants())
        .set(TOO_EARLY, sum.dropped(DroppedBatch.Reason.TOO_EARLY))
        .set(TOO_LATE, sum.dropped(DroppedBatch.Reason.TOO_LATE))
        .set(PLANTS, sum.plants())
        .set(SEEDS, sum.seeds())
        .set(SEEDS_90, sum.seeds90())
        .set(FIRST, text(sum.firstHarvest()))
        .set(LAST, text(sum.lastHarvest()))
        .set(GAP, sum.longestHarvestGapDays())
        .set(USED, sum.potDaysUsed())
        .set(AVAILABLE, sum.potDaysAvailable());
  }

  private static String text(LocalDate date) {
    return date == null ? null : date.toString();
  }
}

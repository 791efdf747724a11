package leat.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.TreeSet;

/**
 * Sums over the batches of several crops.
 *
 * <p>Source: counting. Check values: season-sow.csv.
 */
public final class SowSum {
  private final List<Batches> crops;

  private SowSum(List<Batches> crops) {
    this.crops = crops;
  }

  /** The sums of these crops. */
  public static SowSum of(List<Batches> crops) {
    return new SowSum(List.copyOf(crops));
  }

  /** Kept sowings, those without a plant too. */
  public int kept() {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.kept();
    }
    return n;
  }

  /** Sowings with plants. */
  public int withPlants() {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.batches().size();
    }
    return n;
  }

  /** Sowings dropped for this reason. */
  public int dropped(DroppedBatch.Reason reason) {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.dropped(reason);
    }
    return n;
  }

  public int plants() {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.plants();
    }
    return n;
  }

  public int seeds() {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.seeds();
    }
    return n;
  }

  public int seeds90() {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.seeds90();
    }
    return n;
  }

  public int potDaysUsed() {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.potDaysUsed();
    }
    return n;
  }

  public int potDaysAvailable() {
    int n = 0;
    for (Batches crop : crops) {
      n += crop.potDaysAvailable();
    }
    return n;
  }

  private TreeSet<LocalDate> harvests() {
    TreeSet<LocalDate> days = new TreeSet<>();
    for (Batches crop : crops) {
      for (Batch batch : crop.batches()) {
        days.add(batch.harvest());
      }
    }
    return days;
  }

  /** The first harvest of all; null when nothing grows. */
  public LocalDate firstHarvest() {
    TreeSet<LocalDate> days = harvests();
    return days.isEmpty() ? null : days.first();
  }

  /** The last harvest of all; null when nothing grows. */
  public LocalDate lastHarvest() {
    TreeSet<LocalDate> days = harvests();
    return days.isEmpty() ? null : days.last();
  }

  /** The longest time from one harvest of any crop to the next, d. */
  public int longestHarvestGapDays() {
    long most = 0;
    LocalDate before = null;
    for (LocalDate day : harvests()) {
      most = before == null ? most : Math.max(most, ChronoUnit.DAYS.between(before, day));
      before = day;
    }
    return (int) most;
  }
}

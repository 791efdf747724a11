package leat.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The batches of one crop and their sums.
 *
 * <p>Batch i takes floor((i + 1) P/m) - floor(i P/m) of the P pots, m being the batches at once.
 * The batches in the pots on a day lie within m that follow each other, and m that follow each
 * other take P exactly: the pots are never overfilled.
 *
 * <p>Source: arithmetic. Check values: season-sow.csv, season-sow-batches.csv (pot-by-pot
 * simulation).
 *
 * @param sowing what was asked
 * @param kept how many sowings are kept, those without a plant too
 * @param batches those with plants, by sowing date
 * @param dropped those that the crop's own limits leave out
 */
public record Batches(Sowing sowing, int kept, List<Batch> batches, List<DroppedBatch> dropped) {

  /** Lays the batches out. */
  public static Batches of(Sowing s) {
    List<Batch> batches = new ArrayList<>();
    List<DroppedBatch> dropped = new ArrayList<>();
    int kept = 0;
    for (LocalDate sow = s.first(); !sow.isAfter(s.until()); sow = sow.plusDays(s.everyDays())) {
      LocalDate transplant = sow.plusDays(s.nurseryDays());
      LocalDate harvest = transplant.plusDays(s.growingDays());
      if (s.earliestTransplant() != null && transplant.isBefore(s.earliestTransplant())) {
        dropped.add(new DroppedBatch(sow, transplant, harvest, DroppedBatch.Reason.TOO_EARLY));
      } else if (s.latestHarvest() != null && harvest.isAfter(s.latestHarvest())) {
        dropped.add(new DroppedBatch(sow, transplant, harvest, DroppedBatch.Reason.TOO_LATE));
      } else {
        int plants = s.size(kept);
        kept++;
        if (plants > 0) {
          batches.add(batch(s, kept, sow, transplant, harvest, plants));
        }
      }
    }
    return new Batches(s, kept, batches, dropped);
  }

  private static Batch batch(
      Sowing s, int number, LocalDate sow, LocalDate transplant, LocalDate harvest, int plants) {
    return new Batch(
        number,
        sow,
        transplant,
        harvest,
        harvest.plusDays(s.turnaroundDays()),
        plants,
        Seeds.onAverage(plants, s.success()),
        Seeds.nineOfTen(plants, s.success()));
  }

  /** How many were dropped for this reason. */
  public int dropped(DroppedBatch.Reason reason) {
    int n = 0;
    for (DroppedBatch one : dropped) {
      n += one.reason() == reason ? 1 : 0;
    }
    return n;
  }

  public int plants() {
    int n = 0;
    for (Batch one : batches) {
      n += one.plants();
    }
    return n;
  }

  public int seeds() {
    int n = 0;
    for (Batch one : batches) {
      n += one.seeds();
    }
    return n;
  }

  public int seeds90() {
    int n = 0;
    for (Batch one : batches) {
      n += one.seeds90();
    }
    return n;
  }

  /** Seeds of the smallest batch; 0 when nothing grows. */
  public int fewestSeeds() {
    int n = batches.isEmpty() ? 0 : Integer.MAX_VALUE;
    for (Batch one : batches) {
      n = Math.min(n, one.seeds());
    }
    return n;
  }

  /** Seeds of the largest batch. */
  public int mostSeeds() {
    int n = 0;
    for (Batch one : batches) {
      n = Math.max(n, one.seeds());
    }
    return n;
  }

  /** The first harvest; null when nothing grows. */
  public LocalDate firstHarvest() {
    return batches.isEmpty() ? null : batches.get(0).harvest();
  }

  /** The last harvest; null when nothing grows. */
  public LocalDate lastHarvest() {
    return batches.isEmpty() ? null : batches.get(batches.size() - 1).harvest();
  }

  /** Days of pots with a plant in them. */
  public int potDaysUsed() {
    return plants() * sowing.growingDays();
  }

  /** Days of all its pots from the first transplant to the last harvest. */
  public int potDaysAvailable() {
    if (batches.isEmpty()) {
      return 0;
    }
    LocalDate from = batches.get(0).transplant();
    return (int) (sowing.pots() * ChronoUnit.DAYS.between(from, lastHarvest()));
  }
}

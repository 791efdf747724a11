package leat.system;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import leat.climate.CropWater;
import leat.climate.CropWaters;
import leat.climate.DemandArea;
import leat.climate.Growth;
import leat.climate.GrowthStages;
import leat.climate.PlantThirst;
import leat.climate.Planting;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.season.Batch;
import leat.season.Batches;

/**
 * A crop of a plan as it grows: its batches, its thirst, what it brings.
 *
 * @param index its place among the crops of the plan
 * @param name its name
 * @param tower the tower it grows in; null when the plan does not say
 * @param batches its batches
 * @param demandM2 demand area of a full plant, m2
 * @param growth its growth in the pot
 * @param harvestKg what a plant brings, kg; null when the plan does not say
 * @param seedPrice money of a seed, or null
 * @param shopPrice what a shop asks for what a plant brings, or null
 */
public record Grown(
    int index,
    String name,
    String tower,
    Batches batches,
    double demandM2,
    Growth growth,
    Double harvestKg,
    Double seedPrice,
    Double shopPrice) {

  /** All crops of a plan; refused with the key that is missing. */
  public static List<Grown> of(Plan plan, Taken taken) {
    List<Section> entries = plan.root().sections("crops");
    List<Grown> crops = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      Section crop = entries.get(i);
      Batches batches = SowingOf.batches(crop, taken);
      crops.add(
          new Grown(
              i,
              (String) crop.needRaw("name"),
              crop.text("tower"),
              batches,
              demandM2(crop, taken),
              growth(crop, batches.sowing().growingDays(), taken),
              crop.maybe("harvest"),
              crop.maybe("seed_price"),
              crop.maybe("shop_price")));
    }
    return crops;
  }

  private static double demandM2(Section crop, Taken taken) {
    String name = (String) crop.needRaw("name");
    Double water = crop.maybe("water");
    if (water != null) {
      return DemandArea.ofWaterM2(Units.L_D.fromBase(water));
    }
    CropWater known = CropWaters.find(name);
    Double area = crop.maybe("area");
    if (area != null) {
      if (known == null) {
        throw new Refused(SeasonErrors.canopyUnknown(crop, name));
      }
      return DemandArea.ofCanopyM2(known.kcbMid(), area);
    }
    if (known == null) {
      throw crop.missing("water");
    }
    taken.note("thirst of ".concat(name).concat(" by its usual canopy"));
    return known.demandM2();
  }

  private static Growth growth(Section crop, int growing, Taken taken) {
    int late = WholeDays.get(crop, "late", taken);
    return GrowthStages.inPot(
        growing,
        WholeDays.or(crop, "initial", GrowthStages.usualInitial(growing)),
        WholeDays.or(crop, "development", GrowthStages.usualDevelopment(growing)),
        late,
        crop.get("start_share", taken),
        late == 0 ? 1 : crop.need("end_share"));
  }

  /**
   * What the plants drink on every day of a season, L a day.
   *
   * @param from first day of the season
   * @param et0Mm reference evapotranspiration of each day, mm a day
   * @param exposure factor of the place, -
   */
  public double[] litres(LocalDate from, double[] et0Mm, double exposure) {
    double[] litres = new double[et0Mm.length];
    for (int i = 0; i < batches.batches().size(); i++) {
      Batch batch = batches.batches().get(i);
      PlantThirst.add(litres, planting(batch, batch.plants(), from), et0Mm, exposure);
    }
    return litres;
  }

  /**
   * What one plant drinks on every day of a season, that of the batch which is thirstiest then, L a
   * day; 0 while none stands.
   *
   * @param from first day of the season
   * @param et0Mm reference evapotranspiration of each day, mm a day
   * @param exposure factor of the place, -
   */
  public double[] litresOfOne(LocalDate from, double[] et0Mm, double exposure) {
    double[] most = new double[et0Mm.length];
    for (int i = 0; i < batches.batches().size(); i++) {
      double[] one = new double[et0Mm.length];
      PlantThirst.add(one, planting(batches.batches().get(i), 1, from), et0Mm, exposure);
      for (int t = 0; t < most.length; t++) {
        most[t] = Math.max(most[t], one[t]);
      }
    }
    return most;
  }

  private Planting planting(Batch batch, int plants, LocalDate from) {
    return new Planting(
        plants,
        demandM2,
        growth,
        (int) ChronoUnit.DAYS.between(from, batch.transplant()),
        (int) ChronoUnit.DAYS.between(from, batch.harvest()));
  }

  /** The crop as it is sown. */
  public Sown sown() {
    return new Sown(index, name, tower, batches);
  }

  /** Whether a batch stands in its pots on some day of a season. */
  public static boolean stands(Batch batch, LocalDate from, LocalDate to) {
    return batch.harvest().isAfter(from) && !batch.transplant().isAfter(to);
  }

  /** Whether a batch is harvested within a season. */
  public static boolean isHarvested(Batch batch, LocalDate from, LocalDate to) {
    return !batch.harvest().isBefore(from) && !batch.harvest().isAfter(to);
  }
}

package leat.climate;

import leat.numeric.Impossible;

/**
 * Litres the plants drink: c g(d) ET0 f a plant, from the day of transplanting up to the day before
 * the harvest. The field's curve of Kc is not multiplied in: it counts growth twice.
 *
 * <p>Source: sheet season.md section 2 (our own form of FAO-56 chapters 6 and 7), check values
 * season-plant-water.csv and, from the weather on, season-balance-daily.csv.
 */
public final class PlantThirst {
  /** Factor either way within which a day's litres lie without calibration (common practice). */
  public static final double UNCALIBRATED_FACTOR = 1.5;

  private PlantThirst() {}

  /**
   * Adds what a planting drinks on every day of the season.
   *
   * @param litres sum so far of each day, L a day; changed here
   * @param planting the plants
   * @param et0Mm reference evapotranspiration of each day, mm a day
   * @param exposure factor of the place, -
   * @throws Impossible if the two have not the same number of days
   */
  public static void add(double[] litres, Planting planting, double[] et0Mm, double exposure) {
    if (litres.length != et0Mm.length) {
      throw new Impossible("season", "every day needs its ET0");
    }
    int from = Math.max(0, planting.transplantDay());
    int to = Math.min(litres.length, planting.harvestDay());
    double full = planting.plants() * planting.demandM2() * exposure;
    Growth growth = planting.growth();
    for (int i = from; i < to; i++) {
      litres[i] += full * growth.share(i - planting.transplantDay()) * et0Mm[i];
    }
  }
}

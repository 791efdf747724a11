package leat.climate;

import leat.numeric.Impossible;

/**
 * Plants of one kind that went into their pots on one day.
 *
 * @param plants number of plants
 * @param demandM2 demand area of a full plant, m2
 * @param growth their growth
 * @param transplantDay day of the season on which they are planted; below 0 when before it
 * @param harvestDay day on which they are harvested, and no longer drink
 */
public record Planting(
    int plants, double demandM2, Growth growth, int transplantDay, int harvestDay) {
  /**
   * @throws Impossible if there are fewer than 0 plants, the area is negative, or the harvest lies
   *     before the transplanting
   */
  public Planting {
    if (plants < 0) {
      throw new Impossible("plants", "there cannot be fewer than 0");
    }
    Impossible.ifNegative("area", demandM2);
    if (harvestDay < transplantDay) {
      throw new Impossible("growing", "the harvest lies before the transplanting");
    }
  }
}

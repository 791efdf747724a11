package leat.climate;

import leat.numeric.Impossible;

/**
 * A full-grown plant's demand area c: with it a full plant drinks c ET0 f litres a day.
 *
 * <pre>c = Kcb,mid x canopy;  from the plan's water: c = water/4, since water is meant on a day of
 * 4 mm ET0</pre>
 *
 * <p>Source: basal coefficients FAO-56 Table 17; one demand area in the place of the field's curve
 * and the day of 4 mm are our own (common practice); sheet season.md section 2, check values
 * season-plant-water.csv and season-kc.csv.
 */
public final class DemandArea {
  /** ET0 of the day on which a full plant drinks the plan's water, mm. */
  public static final double FULL_DAY_MM = 4;

  private DemandArea() {}

  /**
   * From the plan's use of a full plant.
   *
   * @param litresDay litres of a full-grown plant on a day of 4 mm, L a day
   * @return m2
   * @throws Impossible if it is negative
   */
  public static double ofWaterM2(double litresDay) {
    return Impossible.ifNegative("water", litresDay) / FULL_DAY_MM;
  }

  /**
   * From the canopy.
   *
   * @param kcbMid basal crop coefficient at full cover, -
   * @param canopyM2 canopy of the full plant, m2
   * @return m2
   * @throws Impossible if one is negative
   */
  public static double ofCanopyM2(double kcbMid, double canopyM2) {
    return Accepted.size("kcb", kcbMid) * Accepted.size("area", canopyM2);
  }
}

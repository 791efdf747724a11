package leat.climate;

/**
 * What is known of a crop's thirst. How each is known: V seen in a public copy of the text, M from
 * memory, P common practice.
 *
 * <p>Source: FAO-56 Tables 11, 12 and 17; canopy and band common practice; sheet season.md section
 * 2, check values season-kc.csv.
 *
 * @param name lower case, words joined by a hyphen
 * @param kcInitial field coefficient of the initial stage, -
 * @param kcMid field coefficient of the full crop, -
 * @param kcEnd field coefficient at the end, -
 * @param kcbMid basal coefficient of the full crop, -
 * @param kcKnown how the coefficients are known
 * @param fieldDays days of the field's stages, initial to late; null when there is no row
 * @param stagesKnown how the stages are known
 * @param canopyM2 canopy of the full plant, m2 (common practice)
 * @param lowL low end of what a full plant drinks on a hot day (ET0 of 6 mm), L a day
 * @param highL high end, L a day
 * @param note what else is to be said
 */
public record CropWater(
    String name,
    double kcInitial,
    double kcMid,
    double kcEnd,
    double kcbMid,
    String kcKnown,
    int[] fieldDays,
    String stagesKnown,
    double canopyM2,
    double lowL,
    double highL,
    String note) {
  /** Demand area of the full plant, m2. */
  public double demandM2() {
    return DemandArea.ofCanopyM2(kcbMid, canopyM2);
  }
}

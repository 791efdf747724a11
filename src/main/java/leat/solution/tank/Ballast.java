package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * Tap salts that build up: what comes with every can and the plants leave behind stays until the
 * tank is changed.
 *
 * <pre>
 * c(t) = c0 (1 + u t / F)        days until c = limit:  t = (limit / c0 - 1) F / u
 * </pre>
 *
 * c0 in the water, F the full tank, u what is drunk a day and topped up. Nothing of it is taken to
 * be used: right for sodium, cautious for chloride. Where only the water's EC is known, half of it
 * is taken for what stays: the rest is calcium, magnesium and what acid turns into food.
 *
 * <p>Source: mass balance. Limits of sodium and chloride: 3 and 4 meq/L, "no restriction on use" in
 * Ayers and Westcot, FAO Irrigation and Drainage Paper 29 rev. 1, 1985, table 1 (from memory); half
 * of the EC unused, and half of the target EC as its limit: common practice.
 */
public final class Ballast {
  /** Sodium from which leaves suffer, mg/L: 3 meq/L of 22.990 g/mol. */
  public static final double SODIUM_MG_L = 3 * 22.990;

  /** Chloride from which leaves suffer, mg/L: 4 meq/L of 35.453 g/mol. */
  public static final double CHLORIDE_MG_L = 4 * 35.453;

  /** Share of the target EC that tap salts may take, - (common practice). */
  public static final double EC_SHARE = 0.5;

  /** Share of a tap water's EC that no plant takes up, - (common practice). */
  public static final double UNUSED_SHARE = 0.5;

  private Ballast() {}

  /**
   * Days until it reaches a limit.
   *
   * @param inWater in the water, any unit a litre
   * @param limit the most that is borne, the same unit
   * @param drinksLPerDay what is drunk and topped up, L/d
   * @param fullL the full tank, L
   * @return days, d; 0 when the water itself is at the limit or over it; null when it is never
   *     reached
   * @throws Impossible if something is negative, the limit 0 or the tank is empty
   */
  public static Double days(double inWater, double limit, double drinksLPerDay, double fullL) {
    Impossible.ifNegative("water", inWater);
    Impossible.unlessPositive("limit", limit);
    Accepted.volume("drinks", drinksLPerDay);
    Accepted.someVolume("full", fullL);
    if (inWater >= limit) {
      return 0.0;
    }
    double days = inWater == 0 ? 0 : (limit / inWater - 1) * fullL / drinksLPerDay;
    return inWater == 0 || !(days < 1e6) ? null : (Double) days;
  }
}

package leat.solution.acid;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * Acid as it is poured: amounts in a volume, what topping up brings, and the waters that are taken.
 *
 * <p>Source: balance of what is poured; {@link AcidNeed} has the sums. Check values:
 * solution-acid.csv.
 */
public final class AcidPour {
  private static final double MOST_MEQ_L = 100;

  /** Atmospheres of carbon dioxide over which a water is not believed at all. */
  private static final double MOST_FIZZ = 10;

  private AcidPour() {}

  /**
   * An amount of an acid in the whole volume.
   *
   * @param ml by volume, mL; null for a solid
   * @param g by weight, g
   */
  public record Amount(Double ml, double g) {}

  /**
   * An amount in a volume.
   *
   * @param acid the acid
   * @param mmolPerL wanted, mmol/L
   * @param volumeL the water, L
   * @return mL (null for a solid) and g
   * @throws Impossible if an amount is negative
   */
  public static Amount amount(Acid acid, double mmolPerL, double volumeL) {
    Impossible.ifNegative("acid", mmolPerL);
    Accepted.volume("volume", volumeL);
    if (acid.isSolid()) {
      return new Amount(null, 0.001 * mmolPerL * volumeL * acid.kind().gPerMol);
    }
    double ml = mmolPerL * volumeL / acid.molPerL();
    return new Amount(ml, ml * acid.densityKgL());
  }

  /**
   * Alkalinity of a tank that was topped up with a water as its own evaporated: what came with the
   * water stays. Plants and nitrification change it too.
   *
   * @param tankL the tank, L
   * @param tankMeqL its alkalinity before, meq/L
   * @param addedL water topped up since, L
   * @param waterMeqL that water's alkalinity, meq/L
   * @return alkalinity, meq/L; its pH in the open is {@link Carbonate#openPh(double, double)}
   * @throws Impossible if the tank is empty or something is negative
   */
  public static double alkalinityAfterTopups(
      double tankL, double tankMeqL, double addedL, double waterMeqL) {
    Accepted.someVolume("full", tankL);
    Accepted.volume("water", addedL);
    checkWater(tankMeqL, 7);
    checkWater(waterMeqL, 7);
    return tankMeqL + waterMeqL * addedL / tankL;
  }

  static void checkWater(double alkalinityMeqL, double ph) {
    Impossible.ifNegative("alkalinity", alkalinityMeqL);
    Impossible.unlessWithin(
        "alkalinity", alkalinityMeqL, 0, MOST_MEQ_L, "over 100 meq/L it is a lye, not a water");
    Impossible.unlessWithin("ph", ph, 0, 14, "a pH lies between 0 and 14");
  }

  static double carbonate(Carbonate water, double alkalinityMeqL, double ph) {
    double total = water.totalMmolL(alkalinityMeqL, ph);
    if (water.fizz(total, ph) > MOST_FIZZ) {
      throw new Impossible(
          "ph", "a water so sour keeps no such alkalinity: it would be soda water, measure again");
    }
    return total;
  }
}

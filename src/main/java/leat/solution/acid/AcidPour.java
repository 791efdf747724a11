package leat.solution.acid;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * Acid as it is poured: amounts in a volume, and the pH right after and in the open.
 *
 * <p>Source: charge balance with {@link Carbonate} and {@link Acid}; the forward sum to {@link
 * AcidNeed}. Check values: solution-acid.csv.
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
   * pH right after a pour, closed.
   *
   * @param volumeL the water, L
   * @param alkalinityMeqL its alkalinity, meq/L
   * @param ph its pH, -
   * @param celsius its temperature, C
   * @param acid the acid
   * @param poured what is poured: mL for a liquid, g for a solid
   * @return pH, -
   * @throws Impossible as {@link AcidNeed#of}, or if so much acid leaves pH 0
   */
  public static double phAfter(
      double volumeL, double alkalinityMeqL, double ph, double celsius, Acid acid, double poured) {
    Accepted.someVolume("volume", volumeL);
    checkWater(alkalinityMeqL, ph);
    Impossible.ifNegative("acid", poured);
    Carbonate water = Carbonate.at(celsius);
    double total = carbonate(water, alkalinityMeqL, ph);
    double mmol = mmolPerL(acid, poured, volumeL);
    return water.closedPh(alkalinityMeqL, total, acid, mmol);
  }

  /**
   * pH towards which a water with acid in it (or none) drifts in open air.
   *
   * @param volumeL the water, L
   * @param alkalinityMeqL its alkalinity before the acid, meq/L
   * @param celsius its temperature, C
   * @param acid the acid
   * @param poured what was poured: mL for a liquid, g for a solid
   * @param ppm carbon dioxide, parts per million: {@link Carbonate#OPEN_AIR_PPM} outdoors
   * @return pH, -
   * @throws Impossible as {@link AcidNeed#of}, or if ppm is outside 1 to 1000000
   */
  public static double openPhAfter(
      double volumeL, double alkalinityMeqL, double celsius, Acid acid, double poured, double ppm) {
    Accepted.someVolume("volume", volumeL);
    checkWater(alkalinityMeqL, 7);
    Impossible.ifNegative("acid", poured);
    Impossible.unlessWithin("carbon-dioxide", ppm, 1, 1e6, "air holds 1 ppm to all of it");
    return Carbonate.at(celsius).openPh(alkalinityMeqL, ppm, acid, mmolPerL(acid, poured, volumeL));
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

  private static double mmolPerL(Acid acid, double poured, double volumeL) {
    return acid.isSolid()
        ? 1000 * poured / acid.kind().gPerMol / volumeL
        : poured * acid.molPerL() / volumeL;
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

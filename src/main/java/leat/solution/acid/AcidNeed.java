package leat.solution.acid;

import leat.numeric.Impossible;
import leat.numeric.Validity;
import leat.solution.Accepted;

/**
 * Acid that takes a water from one pH down to another, closed and open to the air, with what it
 * brings and what is left of the buffer.
 *
 * <pre>
 * acid meq/L = Alk - left      left = CT (a1 + 2 a2) + Kw/h - h at the target, CT from the first pH
 * mmol/L = meq/n      mL = mmol/L V / (mol/L of the bottle)
 * </pre>
 *
 * The closed sum is right for the first hour; then carbonic acid leaves and the pH climbs towards
 * the open-air figures. To hold the target in a trickling tower nearly all alkalinity must go: the
 * open amount is the most it can take over days. The first pour is 70 %, so that it cannot
 * overshoot even where a strip read the alkalinity 20 % too high. The sum is for water; nutrient
 * phosphate buffers as well: acid before feed. Roots and nitrification shift pH too.
 *
 * <p>Source: charge balance with {@link Carbonate} and {@link Acid}. Check values:
 * solution-acid.csv (a forward solver agrees).
 */
public final class AcidNeed {
  /** Targets for which the sum is meant; below, all alkalinity is gone and a drop is too much. */
  public static final Validity VALID = Validity.of("target pH", 4.5, 8.3);

  /** Share of the closed dose poured first, - (common practice). */
  public static final double FIRST_POUR = 0.7;

  /** Error of an alkalinity test strip, - (common practice). */
  public static final double STRIP_ERROR = 0.2;

  private AcidNeed() {}

  /** Whether acid is needed. */
  public enum Status {
    /** There is a dose. */
    DOSE("dose"),
    /** The water is at or under the target already. */
    NO_ACID_NEEDED("no-acid-needed");

    /** The status as it is printed. */
    public final String word;

    Status(String word) {
      this.word = word;
    }
  }

  /**
   * What it takes. With no acid needed all amounts are 0.
   *
   * @param status whether acid is needed
   * @param pk1 pK of carbonic acid at the temperature, -
   * @param pk2 pK of hydrogencarbonate, -
   * @param pkw pK of water, -
   * @param alkalinityMeqL alkalinity before, meq/L
   * @param totalCarbonateMmolL carbonate species together, mmol/L
   * @param leftMeqL alkalinity left at the target, meq/L; negative where strong acid is over
   * @param needMeqL to take away, closed, meq/L
   * @param protons protons a molecule gives at the target, -
   * @param acidMmolL acid, mmol/L
   * @param acidMolPerL strength of the bottle, mol/L; null for a solid
   * @param acid the closed dose
   * @param firstPour 70 % of it
   * @param half half of the rest: what follows the first pour
   * @param openNeedMeqL to take away to hold the target in the open, meq/L
   * @param open the acid for that: the most it can take over days
   * @param nitrogenMgL nitrogen that the closed dose brings, mg/L
   * @param phosphorusMgL phosphorus, mg/L
   * @param sulfurMgL sulfur, mg/L
   * @param chlorideMgL chloride, mg/L
   * @param openPh pH towards which it climbs in open air of 420 ppm carbon dioxide, -
   * @param stuffyPh the same at 2000 ppm, -
   * @param firstPourPh pH right after the first pour, closed, -
   * @param firstPourPhIfStripHigh the same if the alkalinity is 20 % less than told, -; null where
   *     such a water cannot be
   * @param fizzes whether the water as told would fizz: alkalinity and pH hardly belong together
   * @param targetOutside whether the target leaves {@link #VALID}
   */
  public record Answer(
      Status status,
      double pk1,
      double pk2,
      double pkw,
      double alkalinityMeqL,
      double totalCarbonateMmolL,
      double leftMeqL,
      double needMeqL,
      double protons,
      double acidMmolL,
      Double acidMolPerL,
      AcidPour.Amount acid,
      AcidPour.Amount firstPour,
      AcidPour.Amount half,
      double openNeedMeqL,
      AcidPour.Amount open,
      double nitrogenMgL,
      double phosphorusMgL,
      double sulfurMgL,
      double chlorideMgL,
      double openPh,
      double stuffyPh,
      double firstPourPh,
      Double firstPourPhIfStripHigh,
      boolean fizzes,
      boolean targetOutside) {
    /** The buffer left at the target, meq/L: none where strong acid is over. */
    public double bufferMeqL() {
      return Math.max(0, leftMeqL);
    }
  }

  /** A pH under which no tank of plants is brought: an EC was typed, or a pH of something else. */
  public static final double LEAST_TARGET_PH = 4;

  /** A pH this much under the water's own was made by acid, not by the meter, - (memory). */
  private static final double CORRECTED_BY = 0.3;

  /**
   * Whether a target is none that a tank of plants has.
   *
   * @param toPh the target, -
   */
  public static boolean isSour(double toPh) {
    return toPh < LEAST_TARGET_PH;
  }

  /**
   * Whether all buffer is gone at a target, so that a drop too much bites.
   *
   * @param toPh the target, -
   */
  public static boolean bufferGone(double toPh) {
    return toPh < VALID.low(0);
  }

  /**
   * Whether a tank's water had acid before: its pH is clearly under that of the fresh water.
   *
   * @param ph pH of the tank, -
   * @param waterPh pH of the fresh water, -
   */
  public static boolean wasCorrected(double ph, double waterPh) {
    return ph < waterPh - CORRECTED_BY;
  }

  /**
   * Alkalinity of a tank whose water was brought to a pH by acid some time ago: what was left then,
   * which stays while carbonic acid leaves and the pH climbs.
   *
   * @param waterMeqL alkalinity of the fresh water, meq/L
   * @param waterPh its pH, -
   * @param correctedPh the pH it was brought to, -
   * @param celsius its temperature, C
   * @return alkalinity left, meq/L, from 0
   * @throws Impossible as {@link #of}
   */
  public static double leftBehind(
      double waterMeqL, double waterPh, double correctedPh, double celsius) {
    AcidPour.checkWater(waterMeqL, waterPh);
    Carbonate water = Carbonate.at(celsius);
    double total = AcidPour.carbonate(water, waterMeqL, waterPh);
    return Math.min(waterMeqL, Math.max(0, water.closedMeqL(total, correctedPh)));
  }

  /**
   * The need. A target at or above the first pH gives {@link Status#NO_ACID_NEEDED} with amounts of
   * 0.
   *
   * @param volumeL the water, L
   * @param alkalinityMeqL its alkalinity, meq/L
   * @param ph its pH, -
   * @param toPh the pH wanted, -
   * @param celsius its temperature, C
   * @param acid the acid
   * @return what it takes
   * @throws Impossible if the volume is 0, the alkalinity negative or over 100 meq/L, a pH outside
   *     0 to 14, the temperature outside 0 to 90 C, or alkalinity and pH contradict each other
   */
  public static Answer of(
      double volumeL, double alkalinityMeqL, double ph, double toPh, double celsius, Acid acid) {
    Accepted.someVolume("volume", volumeL);
    AcidPour.checkWater(alkalinityMeqL, ph);
    Impossible.unlessWithin("to", toPh, 0, 14, "a pH lies between 0 and 14");
    Carbonate water = Carbonate.at(celsius);
    double total = AcidPour.carbonate(water, alkalinityMeqL, ph);
    boolean needed = toPh < ph;
    double end = needed ? toPh : ph;
    double left = needed ? water.closedMeqL(total, toPh) : alkalinityMeqL;
    double need = Math.max(0, alkalinityMeqL - left);
    double protons = acid.protons(end);
    double mmol = need / protons;
    double openNeed =
        needed ? Math.max(0, alkalinityMeqL - water.openMeqL(Carbonate.OPEN_AIR_PPM, toPh)) : 0;
    double first = FIRST_POUR * mmol;
    return new Answer(
        needed ? Status.DOSE : Status.NO_ACID_NEEDED,
        water.pk1(),
        water.pk2(),
        water.pkw(),
        alkalinityMeqL,
        total,
        left,
        need,
        protons,
        mmol,
        acid.isSolid() ? null : (Double) acid.molPerL(),
        AcidPour.amount(acid, mmol, volumeL),
        AcidPour.amount(acid, first, volumeL),
        AcidPour.amount(acid, 0.5 * (mmol - first), volumeL),
        openNeed,
        AcidPour.amount(acid, openNeed / protons, volumeL),
        mmol * acid.nitrogenMgPerMmol(),
        mmol * acid.phosphorusMgPerMmol(),
        mmol * acid.sulfurMgPerMmol(),
        mmol * acid.chlorideMgPerMmol(),
        water.openPh(alkalinityMeqL, Carbonate.OPEN_AIR_PPM, acid, mmol),
        water.openPh(alkalinityMeqL, Carbonate.STUFFY_AIR_PPM, acid, mmol),
        water.closedPh(alkalinityMeqL, total, acid, first),
        weaker(water, alkalinityMeqL, ph, acid, first),
        water.fizz(total, ph) > 1,
        !VALID.holds(toPh));
  }

  private static Double weaker(
      Carbonate water, double alkalinity, double ph, Acid acid, double mmol) {
    double less = (1 - STRIP_ERROR) * alkalinity;
    if (!water.canBe(less, ph)) {
      return null;
    }
    return water.closedPh(less, water.totalMmolL(less, ph), acid, mmol);
  }
}

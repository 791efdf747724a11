package leat.solution.stock;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Accepted;
import leat.solution.recipes.Weighed;

/**
 * A stock bottle or the mix it makes: does everything stay dissolved.
 *
 * <pre>share = anhydrous g per litre of bottle / (10 s)</pre>
 *
 * s is the solubility at the coldest night of the shed. It takes a litre of bottle for a kilogram
 * of water (really 0.85 to 0.95) and leaves out the common ion, so the working limit is 0.8 (common
 * practice). Verdicts, the first that fits:
 *
 * <ol>
 *   <li>crystals: a bottle with a share over 1
 *   <li>keep-apart: past Davies, and calcium with sulfate or phosphate in it: a rule, not a number
 *   <li>precipitates: an index over 0.5
 *   <li>doubtful: an index of 0 to 0.5
 *   <li>tight: a bottle with a share over 0.8
 *   <li>unknown: never by the shares; for a judge of the ions
 *   <li>clear
 * </ol>
 *
 * <p>Source: {@link StockSalts}, {@link Saturation}. Check values: solution-stock.csv.
 */
public final class Stock {
  /** Share of the solubility up to which a bottle is made, - (common practice). */
  public static final double WORKING_SHARE = 0.8;

  /** Index over which a salt settles out even when ion pairs are counted, -. */
  public static final double SURE_INDEX = 0.5;

  /** The coldest night where bottles stand, when nobody says, C (common practice). */
  public static final double USUAL_COLDEST = 5;

  /** pH of an undiluted bottle, - (common practice). */
  public static final double BOTTLE_PH = 5.5;

  /** pH of the tank, when nobody says, - (common practice). */
  public static final double TANK_PH = 6;

  /** Lowest pH that a tank is brought to, - (common practice). */
  public static final double LOWEST_TANK_PH = 5;

  /** What a share of exactly the limit may be off after scaling, -: rounding of doubles. */
  private static final double ROUNDING = 1e-9;

  private static final double MOST_DILUTION = 1e6;

  private Stock() {}

  /** What becomes of it. */
  public enum Verdict {
    /** Salt stays on the floor of the bottle. */
    CRYSTALS("crystals", true),
    /** Calcium must not share a bottle with sulfate or phosphate. */
    KEEP_APART("keep-apart", true),
    /** Gypsum or calcium phosphate settles out. */
    PRECIPITATES("precipitates", true),
    /** It may: ion pairs decide. */
    DOUBTFUL("doubtful", false),
    /** It dissolves, with little to spare. */
    TIGHT("tight", false),
    /** Part of what is weighed cannot be judged. */
    UNKNOWN("unknown", false),
    /** It stays clear. */
    CLEAR("clear", false);

    /** The verdict as it is printed. */
    public final String word;

    /** Whether the answer is no. */
    public final boolean no;

    Verdict(String word, boolean no) {
      this.word = word;
      this.no = no;
    }
  }

  /**
   * A salt on the scale.
   *
   * @param salt which
   * @param grams as sold, g in the bottle
   */
  public record Weighed(StockSalt salt, double grams) {
    /**
     * @throws Impossible if the weight is negative or over a tonne
     */
    public Weighed {
      Impossible.unlessWithin("weighed", grams, 0, 1e6, "a weight lies between 0 and a tonne");
    }
  }

  /**
   * One salt's part in a bottle.
   *
   * @param salt which
   * @param grams as sold, in the bottle, g
   * @param gPerL as sold, per litre of bottle, g/L
   * @param share share of what the cold bottle can hold, -; null when the solubility is unknown
   * @param knownThere whether the solubility is tabled at that temperature; else the nearest is
   *     taken
   */
  public record Share(
      StockSalt salt, double grams, double gPerL, Double share, boolean knownThere) {}

  /**
   * A bottle or a mix.
   *
   * @param verdict what becomes of it
   * @param shares every salt once, in the order first named
   * @param worst the one closest to its limit; null when no solubility is known
   * @param calcium in the mix, mmol/L
   * @param sulfate in the mix, mmol/L
   * @param phosphate in the mix, mmol/L
   * @param index ionic strength and saturation indices of the mix
   * @param commonIon an ion that two salts of the bottle share, so that they hinder each other;
   *     null when none
   * @param commonIonShare the shares of all salts with that ion together, -: over 1, expect less to
   *     dissolve; 0 when none
   */
  public record Answer(
      Verdict verdict,
      List<Share> shares,
      Share worst,
      double calcium,
      double sulfate,
      double phosphate,
      Saturation.Index index,
      String commonIon,
      double commonIonShare) {}

  /**
   * Judges an undiluted bottle.
   *
   * @param salts what is weighed in
   * @param bottleL its volume, L
   * @param celsius the coldest it gets, C
   * @param ph its pH, -
   * @return the verdict with what it rests on
   * @throws Impossible as {@link #mix}
   */
  public static Answer bottle(List<Weighed> salts, double bottleL, double celsius, double ph) {
    return mix(salts, bottleL, celsius, ph, 1, StockWater.PURE);
  }

  /**
   * Judges a bottle, or several together, thinned into the tank.
   *
   * @param salts what is weighed in; for the tank the salts of all bottles
   * @param bottleL the volume of one bottle, L
   * @param celsius the coldest it gets, C
   * @param ph pH of the mix, -
   * @param dilution litres of mix that a litre of each bottle makes, -: 1 for the bottle itself
   * @param water what the water brings
   * @return the verdict with what it rests on
   * @throws Impossible if there are no salts, the bottle has no volume, the temperature is below 0
   *     or over 60 C, the pH is outside 0 to 14, or the dilution outside 1 to a million
   */
  public static Answer mix(
      List<Weighed> salts,
      double bottleL,
      double celsius,
      double ph,
      double dilution,
      StockWater water) {
    if (salts.isEmpty()) {
      throw new Impossible("salt", "at least one salt is needed");
    }
    Accepted.someVolume("bottle", bottleL);
    Impossible.unlessWithin("coldest", celsius, 0, 60, "a bottle is kept between 0 and 60 C");
    Impossible.unlessWithin(
        "makes", dilution, 1, MOST_DILUTION, "a litre of bottle makes a litre or more");
    double[] ions = {water.calcium(), water.sulfate(), water.phosphate(), water.othersZ2()};
    for (Weighed one : salts) {
      double mmol = 1000 * one.grams / one.salt.soldGPerMol() / bottleL / dilution;
      ions[0] += mmol * one.salt.calcium();
      ions[1] += mmol * one.salt.sulfate();
      ions[2] += mmol * one.salt.phosphate();
      ions[3] += mmol * one.salt.othersZ2();
    }
    Saturation.Index index = Saturation.of(ions[0], ions[1], ions[2], ions[3], ph);
    List<Share> shares = shares(salts, bottleL, celsius);
    Share worst = worst(shares);
    String common = commonIon(shares);
    boolean meet = ions[0] > 0 && ions[1] + ions[2] > 0;
    return new Answer(
        verdict(index, dilution == 1 ? worst : null, meet),
        shares,
        worst,
        ions[0],
        ions[1],
        ions[2],
        index,
        common,
        commonIonShare(shares, common));
  }

  private static Verdict verdict(Saturation.Index index, Share bottle, boolean meet) {
    if (bottle != null && bottle.share > 1) {
      return Verdict.CRYSTALS;
    }
    if (!index.daviesHolds() && meet) {
      return Verdict.KEEP_APART;
    }
    Double si = index.worst();
    if (si != null && si > SURE_INDEX) {
      return Verdict.PRECIPITATES;
    }
    if (si != null && si >= 0) {
      return Verdict.DOUBTFUL;
    }
    return bottle != null && overWorking(bottle.share) ? Verdict.TIGHT : Verdict.CLEAR;
  }

  /**
   * Whether a share is over the one limit up to which a bottle is made.
   *
   * @param share of the solubility, -
   */
  public static boolean overWorking(double share) {
    return share > WORKING_SHARE + ROUNDING;
  }

  private static List<Share> shares(List<Weighed> salts, double bottleL, double celsius) {
    List<Share> shares = new ArrayList<>(salts.size());
    for (int i = 0; i < salts.size(); i++) {
      StockSalt salt = salts.get(i).salt;
      double grams = 0;
      boolean earlier = false;
      for (int j = 0; j < salts.size(); j++) {
        if (salts.get(j).salt == salt) {
          grams += salts.get(j).grams;
          earlier |= j < i;
        }
      }
      if (!earlier) {
        shares.add(share(salt, grams, bottleL, celsius));
      }
    }
    return shares;
  }

  private static Share share(StockSalt salt, double grams, double bottleL, double celsius) {
    double gPerL = grams / bottleL;
    Double share = null;
    if (salt.solubilityKnown()) {
      double anhydrous = gPerL * salt.anhydrousGPerMol() / salt.soldGPerMol();
      share = anhydrous / (10 * salt.solubility(celsius));
    }
    return new Share(salt, grams, gPerL, share, salt.solubilityKnownAt(celsius));
  }

  private static Share worst(List<Share> shares) {
    Share worst = null;
    for (Share one : shares) {
      if (one.share != null && (worst == null || one.share > worst.share)) {
        worst = one;
      }
    }
    return worst;
  }

  private static String commonIon(List<Share> shares) {
    for (int i = 0; i < shares.size(); i++) {
      for (int j = i + 1; j < shares.size(); j++) {
        String ion = shares.get(i).salt.commonIon(shares.get(j).salt);
        if (ion != null) {
          return ion;
        }
      }
    }
    return null;
  }

  private static double commonIonShare(List<Share> shares, String ion) {
    double sum = 0;
    if (ion != null) {
      for (Share one : shares) {
        if (one.share != null && one.salt.brings(ion)) {
          sum += one.share;
        }
      }
    }
    return sum;
  }
}

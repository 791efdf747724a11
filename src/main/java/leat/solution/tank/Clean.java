package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Accepted;

/**
 * A sanitiser diluted for closing the season: hypochlorite by its free chlorine, peroxide by weight
 * in volume.
 *
 * <pre>
 * bottle mL = 1000 V y / C
 * C g/L = 10 p (w/v), 10 p density (w/w), x 0.9525 when the label counts sodium hypochlorite
 * </pre>
 *
 * V the final volume in litres, y the strength wanted in g/L, p the label's per cent.
 *
 * <p>Source: mass balance; 70.906/74.442 is Cl2 over NaOCl. Usual strengths are common practice:
 * 200 mg/L of free chlorine for 30 minutes on clean parts, 0.3 to 0.5 % peroxide overnight. Check
 * values: solution-clean.csv.
 */
public final class Clean {
  /** Usual free chlorine, mg/L (common practice). */
  public static final double USUAL_CHLORINE_MG_L = 200;

  /** Usual contact time for it, s (common practice). */
  public static final double USUAL_CHLORINE_CONTACT_S = 1800;

  /** Usual contact time for peroxide, overnight, s (common practice). */
  public static final double USUAL_PEROXIDE_CONTACT_S = 8 * 3600;

  /** Bleach over this is not sold: it falls apart, % (common practice, 12 to 15 for pools). */
  public static final double MOST_BLEACH_PCT = 20;

  /** Peroxide over this is no household good, % (common practice). */
  public static final double MOST_PEROXIDE_PCT = 35;

  /** Free chlorine that does anything, mg/L (common practice; a swimming pool holds 1 to 3). */
  private static final double LEAST_CHLORINE_MG_L = 5;

  /** More than hospitals put on spilt blood, which is 0.5 % (from memory), mg/L. */
  private static final double MOST_CHLORINE_MG_L = 5000;

  private static final double LEAST_PEROXIDE_PCT = 0.01; // % w/v, common practice
  private static final double MOST_AIM_PEROXIDE_PCT = 10; // % w/v, common practice

  /** Usual peroxide, % w/v, overnight (common practice). */
  public static final double USUAL_PEROXIDE_PCT = 0.3;

  /** Grams of available chlorine a gram of sodium hypochlorite counts as: Cl2 over NaOCl, -. */
  public static final double CHLORINE_IN_HYPOCHLORITE = 70.906 / 74.442;

  /** Density of household bleach when the label is silent, kg/L; labels say 1.07 to 1.11. */
  public static final double BLEACH_KG_L = 1.08;

  /** What is left of bleach after half a year, - (common practice); faster when warm. */
  public static final double LEFT_AFTER_HALF_A_YEAR = 0.8;

  /** Peroxide over this strength is restricted in the EU (Regulation 2019/1148, from memory), %. */
  public static final double PEROXIDE_RESTRICTED_PCT = 12;

  /** Peroxide, % w/w, and its density at 20 C, kg/L (handbook, from memory); 0 is water. */
  private static final double[] PEROXIDE_PCT = {0, 3, 12, 35};

  private static final double[] PEROXIDE_KG_L = {0.9982, 1.0095, 1.042, 1.132};

  private static final double MG_L_IN_PCT = 1e4; // 1 g in 100 mL

  private Clean() {}

  /** What a label's per cent counts. */
  public enum Basis {
    /** Grams of the agent (available chlorine, peroxide) in 100 mL. */
    WEIGHT_IN_VOLUME,
    /** Grams of the agent in 100 g; needs the density. */
    WEIGHT_IN_WEIGHT,
    /** Grams of sodium hypochlorite in 100 mL. */
    HYPOCHLORITE_IN_VOLUME,
    /** Grams of sodium hypochlorite in 100 g; needs the density. */
    HYPOCHLORITE_IN_WEIGHT;

    /** What labels of the two agents count when they are silent. */
    public static Basis usual(boolean bleach) {
      return bleach ? WEIGHT_IN_VOLUME : WEIGHT_IN_WEIGHT;
    }

    /** Whether the density is needed. */
    public boolean byWeight() {
      return this == WEIGHT_IN_WEIGHT || this == HYPOCHLORITE_IN_WEIGHT;
    }
  }

  /** Whether the bottle can make it. */
  public enum Status {
    /** There is an answer. */
    REACHED("reached"),
    /** The bottle is no stronger than what is wanted. */
    BOTTLE_TOO_WEAK("bottle-too-weak");

    /** The status as it is printed. */
    public final String word;

    Status(String word) {
      this.word = word;
    }
  }

  /**
   * A dilution; amounts are null when the bottle is too weak.
   *
   * @param status whether there is an answer
   * @param bottleGPerL the agent in the bottle, g/L
   * @param wantedGPerL the agent wanted in the water, g/L
   * @param bottleMl from the bottle, mL
   * @param waterL water to fill first, L
   * @param bottleMlPerL from the bottle per litre of the final volume, mL/L
   * @param timesDiluted final volume over the bottle's share, -
   * @param bottleMlIfOld from a bottle that lost a fifth, mL; null for peroxide or when that is too
   *     weak
   */
  public record Answer(
      Status status,
      double bottleGPerL,
      double wantedGPerL,
      Double bottleMl,
      Double waterL,
      Double bottleMlPerL,
      Double timesDiluted,
      Double bottleMlIfOld) {
    /** Whether the bottle can make it. */
    public boolean reached() {
      return status == Status.REACHED;
    }
  }

  /**
   * Bleach to a free chlorine.
   *
   * @param finalVolumeL bleach and water together, L
   * @param strengthPct the label's per cent
   * @param basis what it counts
   * @param densityKgL the bottle's density, kg/L; not looked at for strengths in volume
   * @param wantedMgL free chlorine wanted, mg/L
   * @return the dilution
   * @throws Impossible if the volume or strength is not above 0, the strength is over 20 %, the
   *     chlorine wanted outside 5 to 5000 mg/L, or the density outside 0.9 to 2 where it is needed
   */
  public static Answer hypochlorite(
      double finalVolumeL, double strengthPct, Basis basis, double densityKgL, double wantedMgL) {
    Impossible.unlessWithin(
        "aim",
        wantedMgL,
        LEAST_CHLORINE_MG_L,
        MOST_CHLORINE_MG_L,
        "free chlorine for cleaning lies between 5 and 5000 mg/L; 200 mg/L is usual");
    double bottle = gramsPerLitre(strengthPct, basis, densityKgL);
    Impossible.unlessWithin(
        "strength",
        strengthPct,
        0,
        MOST_BLEACH_PCT,
        "no bleach is over 20 %: household bleach has 2 to 6 %, pool chlorine 12 to 15 %");
    return dilute(finalVolumeL, bottle, 0.001 * wantedMgL, LEFT_AFTER_HALF_A_YEAR);
  }

  /**
   * Peroxide to a strength.
   *
   * @param finalVolumeL peroxide and water together, L
   * @param strengthPct the label's per cent
   * @param basis {@link Basis#WEIGHT_IN_VOLUME} or {@link Basis#WEIGHT_IN_WEIGHT}
   * @param densityKgL the bottle's density, kg/L; {@link #peroxideDensity} when the label is
   *     silent; not looked at for strengths in volume
   * @param wantedPct strength wanted, % w/v
   * @return the dilution
   * @throws Impossible as for hypochlorite, with 35 % and 0.01 to 10 %, and for a basis that counts
   *     hypochlorite
   */
  public static Answer peroxide(
      double finalVolumeL, double strengthPct, Basis basis, double densityKgL, double wantedPct) {
    if (basis == Basis.HYPOCHLORITE_IN_VOLUME || basis == Basis.HYPOCHLORITE_IN_WEIGHT) {
      throw new Impossible("strength", "a peroxide label does not count hypochlorite");
    }
    Impossible.unlessWithin(
        "aim",
        wantedPct,
        LEAST_PEROXIDE_PCT,
        MOST_AIM_PEROXIDE_PCT,
        "peroxide for cleaning lies between 0.01 and 10 %; 0.3 %, which is 3 g/L, is usual");
    double bottle = gramsPerLitre(strengthPct, basis, densityKgL);
    Impossible.unlessWithin(
        "strength",
        strengthPct,
        0,
        MOST_PEROXIDE_PCT,
        "peroxide over 35 % is no household good: not computed");
    return dilute(finalVolumeL, bottle, 10 * wantedPct, 0);
  }

  /**
   * The agent in a bottle.
   *
   * @param strengthPct the label's per cent
   * @param basis what it counts
   * @param densityKgL density, kg/L, where the basis needs it
   * @return available chlorine or peroxide, g/L
   * @throws Impossible if the strength is outside 0 to 100 %, 0 excluded, or the density is needed
   *     and outside 0.9 to 2 kg/L
   */
  public static double gramsPerLitre(double strengthPct, Basis basis, double densityKgL) {
    Impossible.unlessPositive("strength", strengthPct);
    Impossible.unlessWithin("strength", strengthPct, 0, 100, "a strength cannot be over 100 %");
    double inVolume = 10 * strengthPct;
    return switch (basis) {
      case WEIGHT_IN_VOLUME -> inVolume;
      case WEIGHT_IN_WEIGHT -> inVolume * density(densityKgL);
      case HYPOCHLORITE_IN_VOLUME -> inVolume * CHLORINE_IN_HYPOCHLORITE;
      case HYPOCHLORITE_IN_WEIGHT -> inVolume * density(densityKgL) * CHLORINE_IN_HYPOCHLORITE;
    };
  }

  /**
   * Whether peroxide of a strength is restricted for the public in the EU.
   *
   * @param strengthPct the label's per cent
   */
  public static boolean isRestricted(double strengthPct) {
    return strengthPct > PEROXIDE_RESTRICTED_PCT;
  }

  /**
   * A strength in per cent, which is grams in 100 mL, as a concentration.
   *
   * @param pct strength, % w/v
   * @return mg/L
   */
  public static double mgLOfPct(double pct) {
    return MG_L_IN_PCT * pct;
  }

  /**
   * A concentration in per cent, which is grams in 100 mL.
   *
   * @param mgL concentration, mg/L
   * @return strength, % w/v
   */
  public static double pctOfMgL(double mgL) {
    return mgL / MG_L_IN_PCT;
  }

  private static double density(double densityKgL) {
    return Impossible.unlessWithin(
        "density", densityKgL, 0.9, 2, "a bottle's density lies between 0.9 and 2 kg/L");
  }

  /**
   * Density of a peroxide solution at 20 C, straight between handbook values.
   *
   * @param strengthPct % w/w, 0 to 35
   * @return density, kg/L
   * @throws Impossible if the strength is outside 0 to 35 %
   */
  public static double peroxideDensity(double strengthPct) {
    Impossible.unlessWithin(
        "strength", strengthPct, 0, 35, "peroxide over 35 % is no household good: not computed");
    int i = 1;
    while (PEROXIDE_PCT[i] < strengthPct) {
      i++;
    }
    double part = (strengthPct - PEROXIDE_PCT[i - 1]) / (PEROXIDE_PCT[i] - PEROXIDE_PCT[i - 1]);
    return PEROXIDE_KG_L[i - 1] + part * (PEROXIDE_KG_L[i] - PEROXIDE_KG_L[i - 1]);
  }

  private static Answer dilute(double volume, double bottle, double wanted, double oldShare) {
    Accepted.someVolume("volume", volume);
    if (bottle <= wanted) {
      return new Answer(Status.BOTTLE_TOO_WEAK, bottle, wanted, null, null, null, null, null);
    }
    double ml = 1000 * volume * wanted / bottle;
    return new Answer(
        Status.REACHED,
        bottle,
        wanted,
        ml,
        volume - 0.001 * ml,
        ml / volume,
        bottle / wanted,
        bottle * oldShare > wanted ? (Double) (ml / oldShare) : null);
  }
}

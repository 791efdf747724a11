package leat.solution.tank;

import leat.numeric.Impossible;
import leat.solution.Accepted;
import leat.solution.Concentrate;

/**
 * Concentrate poured on top of a volume to lift its EC, its own volume counted.
 *
 * <pre>
 * M = V (b - a) / (q - 0.001 b)      q = g / r
 * final volume V + 0.001 M, final EC exactly b
 * EC of the whole label rate (a + g) / (1 + 0.001 r)
 * </pre>
 *
 * V litres at EC a, wanted b, r mL/L the label's rate of all parts together, g the EC it adds, M in
 * mL. Several parts are poured in proportion to their own rates; each is taken to bring its share
 * of the salt, so that a total in the label's proportions gives g.
 *
 * <p>EC is at 25 C and mixes by volume, good to a few per cent below 3 mS/cm; labels differ by 10
 * to 20 % (common practice): pour three quarters, stir, measure.
 *
 * <p>Source: mass balance. Check values: solution-dose.csv (a bracketed root agrees).
 */
public final class Dose {
  /** Share of the dose poured first, - (common practice). */
  public static final double FIRST_POUR = 0.75;

  /** A teaspoon, mL. */
  public static final double TEASPOON_ML = 5;

  /** A dose this near to the label's is the label's, - (common practice). */
  private static final double LIKE_THE_LABEL = 0.05;

  private Dose() {}

  /** Whether the EC can be reached by pouring. */
  public enum Status {
    /** There is an answer. */
    REACHED("reached"),
    /** The water is above the EC wanted: dilute, see {@link Topup}. */
    ALREADY_STRONGER("already-stronger"),
    /** The concentrate itself is no stronger than the EC wanted. */
    CONCENTRATE_TOO_WEAK("concentrate-too-weak");

    /** The status as it is printed. */
    public final String word;

    Status(String word) {
      this.word = word;
    }
  }

  /**
   * A dose. The amounts and final figures are null when the EC cannot be reached.
   *
   * @param status whether there is an answer
   * @param concentrateMl all parts together, mL
   * @param partMl each part, mL
   * @param finalVolumeL water and concentrate, L
   * @param finalEcMsCm EC then, mS/cm
   * @param mlPerLitreOfWater all parts, mL per litre of water there
   * @param totalRateMlPerL the label's rate of all parts together, mL/L
   * @param labelShare the dose over the label's, -: 0.6 says 60 % of the label
   * @param fullLabelEcMsCm EC that the whole label rate would make, mS/cm
   * @param firstPourMl three quarters of the dose, all parts, mL
   * @param firstPourPartMl three quarters of each part, mL
   * @param partTeaspoons each part in teaspoons of 5 mL
   */
  public record Answer(
      Status status,
      Double concentrateMl,
      double[] partMl,
      Double finalVolumeL,
      Double finalEcMsCm,
      Double mlPerLitreOfWater,
      double totalRateMlPerL,
      Double labelShare,
      double fullLabelEcMsCm,
      Double firstPourMl,
      double[] firstPourPartMl,
      double[] partTeaspoons) {
    /** Whether the EC can be reached. */
    public boolean reached() {
      return status == Status.REACHED;
    }

    /** Whether the whole label rate would be clearly stronger than this. */
    public boolean underLabel() {
      return labelShare < 1 - LIKE_THE_LABEL;
    }

    /** Whether this is clearly more than the whole label rate. */
    public boolean overLabel() {
      return labelShare > 1 + LIKE_THE_LABEL;
    }

    /** Whether EC adds up by volume there to a few per cent. */
    public boolean inRange() {
      return Topup.VALID.holds(finalEcMsCm, finalEcMsCm);
    }
  }

  /**
   * The dose from one EC to another.
   *
   * @param volumeL water there, L
   * @param fromMsCm its EC, mS/cm
   * @param toMsCm the EC wanted, mS/cm
   * @param parts the feed
   * @return the dose
   * @throws Impossible if the volume is 0, or a volume or EC is negative or absurd
   */
  public static Answer byEc(double volumeL, double fromMsCm, double toMsCm, FeedParts parts) {
    Accepted.someVolume("volume", volumeL);
    Accepted.ec("from", fromMsCm);
    Accepted.ec("to", toMsCm);
    double q = 0.001 * parts.together().strengthMsCm();
    if (toMsCm < fromMsCm) {
      return refused(Status.ALREADY_STRONGER, fromMsCm, parts);
    }
    if (toMsCm == fromMsCm) {
      return poured(volumeL, fromMsCm, 0, parts);
    }
    double m = volumeL * (toMsCm - fromMsCm) / (q - 0.001 * toMsCm);
    if (!(m > 0) || m > 1000 * Accepted.LARGEST_VOLUME_L) {
      return refused(Status.CONCENTRATE_TOO_WEAK, fromMsCm, parts);
    }
    return poured(volumeL, fromMsCm, m, parts);
  }

  /**
   * The dose that a label asks for, and the EC it makes.
   *
   * @param volumeL water there, L
   * @param fromMsCm its EC, mS/cm
   * @param share share of the label's rate, -: 1 for the whole, 0.5 for half
   * @param parts the feed
   * @return the dose
   * @throws Impossible if the volume is 0, the EC is negative, or the share lies outside 0 to 10
   */
  public static Answer byLabel(double volumeL, double fromMsCm, double share, FeedParts parts) {
    Accepted.someVolume("volume", volumeL);
    Accepted.ec("from", fromMsCm);
    Impossible.unlessWithin("label-share", share, 0, 10, "up to ten times the label, no more");
    return poured(volumeL, fromMsCm, share * parts.together().rateMlPerL() * volumeL, parts);
  }

  private static Answer refused(Status status, double from, FeedParts parts) {
    return new Answer(
        status,
        null,
        null,
        null,
        null,
        null,
        parts.together().rateMlPerL(),
        null,
        fullLabelEc(from, parts.together()),
        null,
        null,
        null);
  }

  private static Answer poured(double volume, double from, double total, FeedParts parts) {
    Concentrate all = parts.together();
    double[] each = parts.split(total);
    double[] spoons = new double[each.length];
    for (int i = 0; i < each.length; i++) {
      spoons[i] = each[i] / TEASPOON_ML;
    }
    return new Answer(
        Status.REACHED,
        total,
        each,
        volume + 0.001 * total,
        ecAfter(volume, from, total, all),
        total / volume,
        all.rateMlPerL(),
        total / volume / all.rateMlPerL(),
        fullLabelEc(from, all),
        FIRST_POUR * total,
        parts.split(FIRST_POUR * total),
        spoons);
  }

  /**
   * EC after a pour.
   *
   * @param volumeL water there, L
   * @param fromMsCm its EC, mS/cm
   * @param concentrateMl poured, all parts together, mL
   * @param feed the concentrate
   * @return EC, mS/cm
   * @throws Impossible if the volume is 0, or something is negative
   */
  public static double ecAfter(
      double volumeL, double fromMsCm, double concentrateMl, Concentrate feed) {
    Accepted.someVolume("volume", volumeL);
    Accepted.ec("from", fromMsCm);
    Impossible.ifNegative("concentrate", concentrateMl);
    double litres = Accepted.volume("concentrate", 0.001 * concentrateMl);
    return (fromMsCm * volumeL + feed.strengthMsCm() * litres) / (volumeL + litres);
  }

  private static double fullLabelEc(double from, Concentrate feed) {
    return (from + feed.gainMsCm()) / (1 + 0.001 * feed.rateMlPerL());
  }
}

package leat.solution.tank;

import leat.solution.Accepted;

/**
 * What to drain and what to pour so that a tank ends full at the target EC: a closed balance of
 * volume and salt.
 *
 * <pre>
 * K + W + m = F      e K + w W + Q m = t F      D = V - K; D, W, m at least 0; D least
 * m = (F (t - w) - K (e - w)) / (Q - w)         W = F - K - m
 * m at least 0:  K (e - w) at most F (t - w)    W at least 0:  K (Q - e) at most F (Q - t)
 * </pre>
 *
 * V volume and e its EC, F full, t target, w the water's EC, Q the EC litres of a litre of
 * concentrate, K what is kept, D drained, W water, m concentrate in litres. The largest K in [0, V]
 * that meets both inequalities is taken. Order of work: drain, then water, then concentrate; the
 * final volume is full exactly and never more on the way.
 *
 * <p>EC is at 25 C and taken to mix in proportion to volume: good to a few per cent below 3 mS/cm,
 * high above; the range is {@link #VALID}.
 *
 * <p>Source: mass balance. Check values: solution-topup.csv (linear programming agrees).
 */
public final class Topup {
  /** Where mixing by volume is good to a few per cent (common practice). */
  public static final leat.numeric.Validity VALID =
      leat.numeric.Validity.of("EC mS/cm", 0, 3).and("target mS/cm", 0, 3);

  /** EC of rain when nothing better is known, mS/cm (common practice). */
  public static final double RAIN_EC_MS_CM = 0.02;

  /** A drain under this volume is "take out a cup first", L. */
  public static final double CUP_L = 0.2;

  /** What is less nobody drains: a sip that no cup has a mark for, L (common practice). */
  public static final double SEEN_L = 0.005;

  /** Water alone that comes within this share of the target is a fair answer (common practice). */
  public static final double CLOSE_ENOUGH = 0.05;

  private static final double ROUNDING = 1e-13;

  /** Share of a full tank under which an amount is the noise of the sum, and nothing. */
  private static final double NOTHING = 1e-12;

  private static final double SAME_EC = 1e-14;

  /** More rain than a gauge ever showed in a day, m: the record is 1.8 (La Reunion, 1966). */
  private static final double MOST_RAIN_M = 2;

  private Topup() {}

  /** Whether the target can be met with the tank full. */
  public enum Status {
    /** There is an answer. */
    REACHED("reached"),
    /** The water is stronger than the target and too little weak solution is there to thin it. */
    WATER_TOO_STRONG("water-too-strong"),
    /** The concentrate is no stronger than the target and the tank is not above it. */
    CONCENTRATE_TOO_WEAK("concentrate-too-weak");

    /** The status as it is printed. */
    public final String word;

    Status(String word) {
      this.word = word;
    }
  }

  /**
   * The answer. Where the target cannot be met the amounts and the final figures are null and the
   * nearest EC is filled; where it can, the other way round.
   *
   * @param status whether there is an answer
   * @param afterRainL the volume after rain and overflow, L
   * @param afterRainEcMsCm its EC, mS/cm; 0 for an empty tank
   * @param rainOverflowL what ran over the full mark while it rained, at the mixed EC, L
   * @param drainL to take out first, L
   * @param waterL to pour next, L
   * @param concentrateMl to pour last, all parts together, mL
   * @param finalVolumeL the volume then, L: full
   * @param finalEcMsCm the EC then, by the balance, mS/cm
   * @param nearestEcMsCm the nearest EC a full tank can have, mS/cm
   * @param plainWaterEcMsCm the EC if only water were filled in up to full, mS/cm
   * @param plainWaterClose whether that is within 5 % of the target
   * @param overFull whether the tank holds more than full before anything is done
   */
  public record Answer(
      Status status,
      double afterRainL,
      double afterRainEcMsCm,
      double rainOverflowL,
      Double drainL,
      Double waterL,
      Double concentrateMl,
      Double finalVolumeL,
      Double finalEcMsCm,
      Double nearestEcMsCm,
      double plainWaterEcMsCm,
      boolean plainWaterClose,
      boolean overFull) {
    /** Whether the target is met. */
    public boolean reached() {
      return status == Status.REACHED;
    }

    /** What is left in the tank after draining, L; null when the target is not met. */
    public Double keptL() {
      return drainL == null ? null : (Double) (afterRainL - drainL);
    }

    /** Whether something is to be drained that is worth pouring over the beds: a cup or more. */
    public boolean drainsMore() {
      return drainL != null && drainL >= CUP_L;
    }

    /** Whether what is to be drained is only a cup: less than 0.2 L, and enough to be seen. */
    public boolean drainsACup() {
      return drainL != null && drainL >= SEEN_L && drainL < CUP_L;
    }

    /** Whether there is nothing to drain that a person could measure. */
    public boolean drainsNothing() {
      return drainL != null && drainL < SEEN_L;
    }
  }

  /**
   * Solves the balance.
   *
   * @param ask the question
   * @return the answer, with the least drained
   */
  public static Answer solve(TopupAsk ask) {
    double full = ask.fullL();
    Rained rained = Rained.of(ask.volumeL(), ask.ecMsCm(), full, ask.rainL(), ask.rainEcMsCm());
    double v = rained.volumeL();
    double e = rained.ecMsCm();
    double w = ask.waterEcMsCm();
    double q = ask.feed().strengthMsCm();
    double k = kept(v, e, full, ask.targetMsCm(), w, q);
    if (k < 0) {
      return refusal(ask, v, e, rained.overflowL());
    }
    double m = some(added(k, e, full, ask.targetMsCm(), w) / (q - w), full);
    double water = some(full - k - m, full);
    double ec = (e * k + w * water + q * m) / full;
    return answer(
        ask,
        Status.REACHED,
        v,
        e,
        rained.overflowL(),
        some(v - k, full),
        water,
        1000 * m,
        full,
        ec,
        null);
  }

  /** An amount in a tank of that size, and 0 when it is the noise of the sum. */
  static double some(double amount, double full) {
    return amount < NOTHING * full ? 0 : amount;
  }

  /**
   * What is kept of v litres at EC e, so that water of EC w and a feed of strength q fill it up to
   * the target: as much as can be; -1 when there is no answer.
   */
  static double kept(double v, double e, double full, double target, double w, double q) {
    double[] kept = {0, v};
    boolean dry = Double.isInfinite(q);
    boolean possible =
        narrow(kept, above(e, w), full * above(target, w))
            & narrow(kept, dry ? 1 : above(q, e), dry ? full : full * above(q, target));
    if (!possible || kept[0] > kept[1] + ROUNDING * full) {
      return -1;
    }
    return Math.min(kept[1], full);
  }

  /** The EC litres over the water's own that k litres kept and a filled tank still want. */
  static double added(double k, double e, double full, double target, double w) {
    return full * above(target, w) - k * above(e, w);
  }

  /** a - b, and 0 when they differ by rounding only. */
  private static double above(double a, double b) {
    double difference = a - b;
    return Math.abs(difference) <= SAME_EC * Math.max(a, b) ? 0 : difference;
  }

  /** Narrows low and high so that factor x K is at most limit; false when no K can. */
  private static boolean narrow(double[] kept, double factor, double limit) {
    if (factor > 0) {
      kept[1] = Math.min(kept[1], limit / factor);
    } else if (factor < 0) {
      kept[0] = Math.max(kept[0], limit / factor);
    } else {
      return limit >= 0;
    }
    return true;
  }

  /** The nearest: the tank emptied and filled with water or feed alone, or filled as it is. */
  private static Answer refusal(TopupAsk ask, double v, double e, double overflow) {
    double full = ask.fullL();
    double most = Math.min(v, full);
    double w = ask.waterEcMsCm();
    double q = ask.feed().strengthMsCm();
    boolean strong = ask.targetMsCm() < w;
    double filled = (e * most + (strong ? w : q) * (full - most)) / full;
    return answer(
        ask,
        strong ? Status.WATER_TOO_STRONG : Status.CONCENTRATE_TOO_WEAK,
        v,
        e,
        overflow,
        null,
        null,
        null,
        null,
        null,
        strong ? Math.min(w, filled) : Math.max(q, filled));
  }

  private static Answer answer(
      TopupAsk ask,
      Status status,
      double v,
      double e,
      double overflow,
      Double drain,
      Double water,
      Double concentrate,
      Double volume,
      Double ec,
      Double nearest) {
    double plain = plainWaterEc(v, e, ask.fullL(), ask.waterEcMsCm());
    return new Answer(
        status,
        v,
        e,
        overflow,
        drain,
        water,
        concentrate,
        volume,
        ec,
        nearest,
        plain,
        Math.abs(plain - ask.targetMsCm()) <= CLOSE_ENOUGH * ask.targetMsCm(),
        ask.volumeL() > ask.fullL() * (1 + NOTHING));
  }

  /**
   * Rain that falls into a tank.
   *
   * @param areaM2 area that catches rain into the tank, m2
   * @param depthM rain as a gauge shows it, m
   * @param share share of the rain on that area that arrives in the tank, 0 to 1
   * @return what has fallen in, L
   * @throws leat.numeric.Impossible if one is negative, the depth is over 2 m or the share over 1
   */
  public static double rainfallL(double areaM2, double depthM, double share) {
    leat.numeric.Impossible.ifNegative("rain-area", areaM2);
    leat.numeric.Impossible.unlessWithin("rain-share", share, 0, 1, "a share is 0 to 100 %");
    leat.numeric.Impossible.unlessWithin(
        "rainfall", depthM, 0, MOST_RAIN_M, "no rain gauge shows more than 2 m");
    return Accepted.volume("rain", 1000 * areaM2 * depthM * share);
  }

  /**
   * EC of a tank filled up with water alone.
   *
   * @param volumeL what it holds, L
   * @param ecMsCm its EC, mS/cm
   * @param fullL the full mark, L; a tank that is full takes no water
   * @param waterEcMsCm the water's EC, mS/cm
   * @return the EC, mS/cm
   * @throws leat.numeric.Impossible if a volume or EC is negative, or full is 0
   */
  public static double plainWaterEc(
      double volumeL, double ecMsCm, double fullL, double waterEcMsCm) {
    Accepted.volume("volume", volumeL);
    Accepted.ec("ec", ecMsCm);
    Accepted.someVolume("full", fullL);
    Accepted.ec("water-ec", waterEcMsCm);
    if (volumeL >= fullL) {
      return ecMsCm;
    }
    return (ecMsCm * volumeL + waterEcMsCm * (fullL - volumeL)) / fullL;
  }
}

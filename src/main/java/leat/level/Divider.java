package leat.level;

import leat.numeric.Impossible;

/**
 * A voltage divider of a fixed resistor and the sender, read by an ADC.
 *
 * <pre>sender on the low side:  v = R/(R + Rf)    on the high side:  v = Rf/(R + Rf)
 * code = floor(2^N v Vs/Vref + 1/2), held to 0 .. 2^N - 1
 * R = Rf v/(1 - v) (low), Rf (1/v - 1) (high),  v = code Vref/(2^N Vs);  then less the lead</pre>
 *
 * R includes the lead. The first transition of the ADC lies at half a count.
 *
 * <p>Source: Ohm's law; first transition as several microcontroller data sheets define it. Check
 * values: sheets level-divider.csv and level-divider-design.csv.
 *
 * @param side where the sender is
 * @param supply supply of the divider, V
 * @param supplyTolerance its tolerance, a share
 * @param fixed the fixed resistor, ohm
 * @param fixedTolerance its tolerance, a share
 * @param bits bits of the ADC
 * @param reference reference of the ADC, V
 * @param referenceTolerance its tolerance, a share
 * @param ratiometric whether the reference is the supply, so that both tolerances cancel
 * @param adcError offset, gain and nonlinearity together, counts
 */
public record Divider(
    Side side,
    double supply,
    double supplyTolerance,
    double fixed,
    double fixedTolerance,
    int bits,
    double reference,
    double referenceTolerance,
    boolean ratiometric,
    double adcError) {
  /** Where the sender is. */
  public enum Side {
    /** To ground: more ohm, more counts. */
    LOW,
    /** To the supply: more ohm, fewer counts. */
    HIGH
  }

  /** Fixed resistor tolerance when none is given, a share. Common practice. */
  public static final double DEFAULT_FIXED_TOLERANCE = 0.01;

  /** ADC error when none is given, counts. Common practice for a 12 bit converter. */
  public static final double DEFAULT_ADC_ERROR = 3;

  /** Most bits of an ADC; codes are whole numbers of Java. */
  public static final int MOST_BITS = 24;

  /**
   * @throws Impossible if a voltage or the resistor is not above 0, bits are not 1 to 24, a
   *     tolerance is not from 0 to below 1, or the error is negative
   */
  public Divider {
    Impossible.unlessWithin("supply", supply, 1e-3, 1000, "it must lie from 1 mV to 1 kV");
    Impossible.unlessWithin("reference", reference, 1e-3, 1000, "it must lie from 1 mV to 1 kV");
    Impossible.unlessWithin("resistor", fixed, 1e-3, 1e9, "it must lie from 1 mohm to 1 Gohm");
    share("supply_tolerance", supplyTolerance);
    share("resistor_tolerance", fixedTolerance);
    share("reference_tolerance", referenceTolerance);
    Impossible.unlessWithin(
        "adc_error", adcError, 0, 1e6, "it must lie from 0 to a million counts");
    Impossible.unlessWithin("bits", bits, 1, MOST_BITS, "an ADC has from 1 to 24 bits");
    if (ratiometric && supply != reference) {
      throw new Impossible("reference", "a ratiometric ADC has the supply as its reference");
    }
  }

  static void share(String word, double value) {
    Impossible.unlessWithin(word, value, 0, 0.99, "it must lie from 0 to below 100 %");
  }

  /**
   * The same divider with another fixed resistor.
   *
   * @param ohm fixed resistor, ohm
   */
  public Divider withFixed(double ohm) {
    return new Divider(
        side,
        supply,
        supplyTolerance,
        ohm,
        fixedTolerance,
        bits,
        reference,
        referenceTolerance,
        ratiometric,
        adcError);
  }

  /** Number of codes, 2^bits. */
  public double codes() {
    return 1L << bits;
  }

  /** The top code, 2^bits - 1. */
  public int topCode() {
    return (1 << bits) - 1;
  }

  /**
   * Whether a code has no upper bound of ohms: the top code on the low side, 0 on the high side; on
   * the low side also a code at which the node stands at the supply.
   *
   * @param code the code
   * @throws Impossible if the ADC has no such code
   */
  public boolean isOverRange(int code) {
    checkCode(code);
    if (side == Side.HIGH) {
      return code == 0;
    }
    return code == topCode() || code / codes() * reference / supply >= 1;
  }

  /**
   * Whether a code has no lower bound of ohms but the lead: the top code of a sender on the high
   * side, when the reference lies under the supply and clips it.
   *
   * @param code the code
   * @throws Impossible if the ADC has no such code
   */
  public boolean isUnderRange(int code) {
    checkCode(code);
    return side == Side.HIGH && code == topCode() && reference < supply;
  }

  private void checkCode(int code) {
    if (code < 0) {
      throw new Impossible("counts", "an ADC's counts cannot be negative");
    }
    if (code > topCode()) {
      throw new Impossible("counts", "the ADC has not so many counts");
    }
  }

  /** Share of the supply at the node; ohm with lead, may be infinite. */
  double share(double ohm, double fixedOhm) {
    if (Double.isInfinite(ohm)) {
      return side == Side.LOW ? 1 : 0;
    }
    return side == Side.LOW ? ohm / (ohm + fixedOhm) : fixedOhm / (ohm + fixedOhm);
  }

  static double total(double ohm, double lead) {
    Accepted.ohm("lead", lead);
    double total = ohm + lead;
    if (!(total >= 0)) {
      throw new Impossible("ohm", "a resistance cannot be negative");
    }
    return total;
  }

  /**
   * The code, held to 0 and the top.
   *
   * @param ohm the sender, ohm; Infinity for a broken wire
   * @param lead its lead, ohm
   * @throws Impossible if they are negative
   */
  public int code(double ohm, double lead) {
    double at = codes() * share(total(ohm, lead), fixed) * supply / reference;
    return (int) Math.min(Math.max(Math.floor(at + 0.5), 0), topCode());
  }

  /**
   * Current through the sender, A.
   *
   * @param ohm the sender, ohm; Infinity for a broken wire
   * @param lead its lead, ohm
   * @throws Impossible if they are negative
   */
  public double current(double ohm, double lead) {
    return supply / (total(ohm, lead) + fixed);
  }

  /**
   * Heat in the sender, its lead not counted, W.
   *
   * @param ohm the sender, ohm; Infinity for a broken wire
   * @param lead its lead, ohm
   * @throws Impossible if they are negative
   */
  public double senderPower(double ohm, double lead) {
    double current = current(ohm, lead);
    return current == 0 ? 0 : current * current * ohm;
  }

  /**
   * Resistance of the sender that a code stands for, ohm; slightly negative after the lead is taken
   * off is normal.
   *
   * @param code the code
   * @param lead the sender's lead, ohm
   * @throws Impossible if the ADC has no such code, or it is over or under range
   */
  public double ohm(int code, double lead) {
    Accepted.ohm("lead", lead);
    if (isOverRange(code)) {
      throw new Impossible("counts", "the end code has no resistance: open or over range");
    }
    if (isUnderRange(code)) {
      throw new Impossible("counts", "the top code has no resistance: the reference clips it");
    }
    double share = code / codes() * reference / supply;
    double total =
        side == Side.LOW ? fixed * share / (1 - share) : fixed * (1 / Math.min(share, 1) - 1);
    return total - lead;
  }

  /** Ohm with lead at a share of the supply; null when none is that great. */
  Double inverse(double share, double fixedOhm) {
    if (side == Side.LOW) {
      return share >= 1 ? null : Double.valueOf(fixedOhm * share / (1 - share));
    }
    return share <= 0 ? null : Double.valueOf(fixedOhm * (1 / Math.min(share, 1) - 1));
  }

  /**
   * Between which resistances the sender may lie.
   *
   * @param low lower bound, ohm
   * @param high upper bound, ohm; null when there is none
   */
  public record Band(double low, Double high) {}

  /**
   * Lower bound of what a code may stand for, as {@link #band}, ohm; null when the node stands over
   * the supply even then, which only a broken wire comes near.
   *
   * @param code the code
   * @param lead the sender's lead, ohm
   * @throws Impossible if the ADC has no such code
   */
  public Double lowerBound(int code, double lead) {
    Accepted.ohm("lead", lead);
    if (isUnderRange(code)) {
      return -lead;
    }
    double share =
        side == Side.LOW
            ? Math.max(0, code - 0.5 - adcError) / codes() * leastScale()
            : (code + 0.5 + adcError) / codes() * greatestScale();
    Double low = inverse(share, fixed * (1 - fixedTolerance));
    return low == null ? null : Double.valueOf(low - lead);
  }

  /**
   * What a code may stand for when resistor, supply, reference and ADC are off the worst way.
   *
   * @param code the code
   * @param lead the sender's lead, ohm
   * @throws Impossible if the ADC has no such code, or no resistance gives it
   */
  public Band band(int code, double lead) {
    Double low = lowerBound(code, lead);
    if (low == null) {
      throw new Impossible("counts", "no resistance gives so many counts with this divider");
    }
    double share =
        side == Side.LOW
            ? (code + 0.5 + adcError) / codes() * greatestScale()
            : Math.max(0, code - 0.5 - adcError) / codes() * leastScale();
    Double high = isOverRange(code) ? null : inverse(share, fixed * (1 + fixedTolerance));
    return new Band(low, high == null ? null : Double.valueOf(high - lead));
  }

  double leastScale() {
    return ratiometric
        ? 1
        : reference * (1 - referenceTolerance) / (supply * (1 + supplyTolerance));
  }

  double greatestScale() {
    return ratiometric
        ? 1
        : reference * (1 + referenceTolerance) / (supply * (1 - supplyTolerance));
  }

  /**
   * One step as the ADC sees it.
   *
   * @param ohm the step's resistance, ohm
   * @param code its code when all is nominal
   * @param codeLow lowest code when ladder, resistor, supply, reference and ADC are off the worst
   *     way
   * @param codeHigh highest code then
   * @param ohmLow what {@code codeLow}, not rounded, would be taken for, ohm; on the high side what
   *     codeHigh would
   * @param ohmHigh what the other end would be taken for, ohm; null when it has no upper bound
   * @param misread greatest error of ohms, ohm; null when it has no bound
   * @param blind whether its lowest code lies in the ADC's blind zone near 0
   * @param current current through the sender, A
   * @param power heat in the sender, W
   */
  public record Step(
      double ohm,
      int code,
      int codeLow,
      int codeHigh,
      double ohmLow,
      Double ohmHigh,
      Double misread,
      boolean blind,
      double current,
      double power) {}

  /**
   * One step with its worst-case spread.
   *
   * @param ohm the step's resistance, ohm
   * @param lead the sender's lead, ohm
   * @param ladderTolerance tolerance of the ladder's resistors, a share
   * @param blindBelow codes under this are not to be trusted (some converters read 0 until a tenth
   *     of a volt), counts; 0 for none
   * @throws Impossible if a resistance or tolerance is negative
   */
  public Step step(double ohm, double lead, double ladderTolerance, int blindBelow) {
    return new WorstCase(this, lead, blindBelow).step(ohm, ladderTolerance);
  }
}

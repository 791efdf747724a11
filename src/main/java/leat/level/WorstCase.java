package leat.level;

import leat.numeric.Impossible;

/**
 * A step at the ADC when ladder, resistor, supply, reference and converter are all off the worst
 * way; behind {@link Divider#step}.
 *
 * <p>Source: interval arithmetic on the divider's formula. Check values: sheet
 * level-divider-design.csv.
 */
final class WorstCase {
  private final Divider divider;
  private final double lead;
  private final int blindBelow;

  WorstCase(Divider divider, double lead, int blindBelow) {
    this.divider = divider;
    this.lead = lead;
    this.blindBelow = blindBelow;
  }

  /**
   * Counts, not rounded, of a sender when everything is off one way; held to 0 and the top code.
   *
   * @param ohm the sender with its lead, ohm
   * @param up whether the counts are driven up or down
   */
  private double worstCount(double ohm, boolean up) {
    boolean smallFixed = divider.side() == Divider.Side.LOW == up;
    double share =
        divider.share(
            ohm,
            divider.fixed()
                * (smallFixed ? 1 - divider.fixedTolerance() : 1 + divider.fixedTolerance()));
    double count = divider.codes() * share / (up ? divider.leastScale() : divider.greatestScale());
    count += up ? 0.5 + divider.adcError() : -0.5 - divider.adcError();
    return Math.min(Math.max(count, 0), divider.topCode());
  }

  Divider.Step step(double ohm, double ladderTolerance) {
    Accepted.ohm("ohm", ohm);
    Divider.share("tolerance", ladderTolerance);
    Impossible.ifNegative("blind", blindBelow);
    double least = Divider.total(ohm * (1 - ladderTolerance), lead);
    double most = Divider.total(ohm * (1 + ladderTolerance), lead);
    boolean onLow = divider.side() == Divider.Side.LOW;
    double few = worstCount(onLow ? least : most, false);
    double many = worstCount(onLow ? most : least, true);
    double scale = divider.reference() / divider.supply() / divider.codes();
    Double low = divider.inverse((onLow ? few : many) * scale, divider.fixed());
    Double high = divider.inverse((onLow ? many : few) * scale, divider.fixed());
    double ohmLow = low == null ? ohm : low - lead;
    Double misread =
        high == null ? null : Double.valueOf(Math.max(high - lead - ohm, ohm - ohmLow));
    return new Divider.Step(
        ohm,
        divider.code(ohm, lead),
        (int) Math.ceil(few),
        (int) Math.floor(many),
        ohmLow,
        high == null ? null : Double.valueOf(high - lead),
        misread,
        Math.ceil(few) < blindBelow,
        divider.current(ohm, lead),
        divider.senderPower(ohm, lead));
  }
}

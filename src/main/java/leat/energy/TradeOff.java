package leat.energy;

/**
 * Wear against energy: one candidate timing with its energy, money, relay and pump life. Within the
 * bounds a shorter rest costs both energy and starts; a longer run costs energy and spares starts.
 *
 * <p>Source: {@link Duty}, {@link RelayLife}, {@link PumpLife}; sheet energy.md sections 1, 3, 4.
 *
 * @param duty energy and money of the candidate
 * @param relay the relay's life with it
 * @param pump the pump's life with it
 * @param runCovers whether its run waters the lowest pot
 * @param restWithin whether its rest keeps the roots wet
 */
public record TradeOff(
    Duty duty, RelayLife relay, PumpLife pump, boolean runCovers, boolean restWithin) {
  private static final double MOST_STRETCH = 4;

  /**
   * Candidates around the timing of least energy: it, two with runs twice and four times as long,
   * two with rests of a half and a quarter (rounded down, at least a second).
   */
  public static Timing[] candidates(Suggestion suggestion) {
    Timing best = suggestion.timing();
    if (best.withoutPause()) {
      return new Timing[] {best};
    }
    double run = best.runS();
    double rest = best.restS();
    return new Timing[] {
      best,
      new Timing(2 * run, rest),
      new Timing(MOST_STRETCH * run, rest),
      new Timing(run, Math.max(1, Math.floor(rest / 2))),
      new Timing(run, Math.max(1, Math.floor(rest / MOST_STRETCH)))
    };
  }

  /**
   * One candidate.
   *
   * @param duty its energy and money over a season
   * @param motor the pump as a load of the contact
   * @param contact the relay's contact
   * @param wear the pump's wear figures
   * @param leastRun the least run
   * @param longestRest the longest rest
   * @return the candidate with its lives and verdicts
   */
  public static TradeOff of(
      Duty duty,
      Motor motor,
      Contact contact,
      PumpWear wear,
      LeastRun leastRun,
      LongestRest longestRest) {
    Timing timing = duty.timing();
    return new TradeOff(
        duty,
        RelayLife.of(motor, contact, duty.startsTotal(), duty.days()),
        PumpLife.of(wear, duty.runTotalS(), duty.startsTotal()),
        leastRun.coveredBy(timing),
        longestRest.allows(timing));
  }
}

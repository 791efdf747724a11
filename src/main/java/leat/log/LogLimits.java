package leat.log;

import leat.level.CapSensor;

/**
 * All thresholds of reading a log. Common practice or tuned on example logs by the sheet's author,
 * no source; each becomes a plan key.
 *
 * <p>Source: sheet log.md, the defaults it gives.
 *
 * @param disorderS rows later than this against the newest are dropped, s
 * @param restS a step at rest is the highest of the time that follows, s
 * @param clockJumpS a row further beyond the newest one is doubted, s
 * @param gapIntervals a longer silence is a gap, intervals
 * @param faultS two faulty rows within this are a fault, s
 * @param refillSteps a rise of so many steps is a refill
 * @param refillS within this time, s
 * @param changeHigh a change of solution falls from above this share of the sender's steps
 * @param changeLow to below this share
 * @param changeFallS within this time, s
 * @param changeRefillS and is filled again within this, s
 * @param rainJoinS parts of a rain less apart than this are one, s
 * @param rainLeastSteps a rain of fewer mean steps is no event, only a sum of its day
 * @param rainEcFall without a rain column, a rise with at least this fall of EC is rain, mS/cm:
 *     twice the noise of a common probe
 * @param leakFactor a fall quicker than so many times the expected one is suspect
 * @param leakSteps mean steps beyond expected that make a leak of suspect falls
 * @param leakJoinS falls further apart are not in succession, s
 * @param dryShare dryness of the cap above which it is dry
 * @param dryIntervals intervals added to the plan's dry limit
 * @param stuckSteps a float that keeps its step while so many mean steps are expected is stuck
 * @param stuckJumpSteps so many, when it comes free with a jump
 * @param stuckJump steps of that jump
 * @param wiltS a pump failure longer than this makes its days unsure, s
 * @param useDays days of the mean use
 * @param useLeastDays fewer say nothing
 * @param weekdayDays a weekday needs so many to be called different
 * @param dayFromS begin of the bright part of the day, s since midnight
 * @param dayToS end of it, s
 * @param nightWeight thirst in the dark, a share of that in the bright part
 * @param ecRows rows whose median is the EC at an end of a span
 * @param silentIntervals a newest row older than this is a silent log, intervals
 */
public record LogLimits(
    double disorderS,
    double restS,
    double clockJumpS,
    double gapIntervals,
    double faultS,
    int refillSteps,
    double refillS,
    double changeHigh,
    double changeLow,
    double changeFallS,
    double changeRefillS,
    double rainJoinS,
    double rainLeastSteps,
    double rainEcFall,
    double leakFactor,
    double leakSteps,
    double leakJoinS,
    double dryShare,
    double dryIntervals,
    double stuckSteps,
    double stuckJumpSteps,
    int stuckJump,
    double wiltS,
    int useDays,
    int useLeastDays,
    int weekdayDays,
    double dayFromS,
    double dayToS,
    double nightWeight,
    int ecRows,
    double silentIntervals) {
  private static final double HOUR = 3600;
  private static final double MINUTE = 60;

  /** What the sheet gives. */
  public static final LogLimits DEFAULT =
      new LogLimits(
          2 * HOUR,
          HOUR,
          24 * HOUR,
          2.5,
          45 * MINUTE,
          3,
          40 * MINUTE,
          0.30,
          0.17,
          75 * MINUTE,
          8 * HOUR,
          2 * HOUR,
          0.5,
          0.02,
          1.8,
          0.8,
          HOUR,
          CapSensor.DRY_OVER,
          2,
          2.5,
          1.4,
          2,
          2 * HOUR,
          7,
          3,
          3,
          7 * HOUR,
          19 * HOUR,
          0.12,
          6,
          3);
}

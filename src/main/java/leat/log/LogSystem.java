package leat.log;

import java.time.ZoneId;
import leat.level.CapSensor;
import leat.level.Divider;
import leat.level.Sender;

/**
 * What the log is read against: the tank's sender and what the plan says of the rest. NaN stands
 * for what the plan does not say.
 *
 * <p>Source: keys of the plan that sheet log.md names.
 *
 * @param sender the sender in its tank
 * @param divider its divider when readings are counts; null when they are ohms
 * @param zone of the site
 * @param low volume at the refill mark, m3
 * @param intake volume at the pump's intake, m3
 * @param rim volume at which rain runs over, m3; NaN for the capacity
 * @param rainArea area that catches rain times the share of it that arrives, m2; 0 under a roof
 * @param cap the cap's sensor; null when the plan does not give its counts
 * @param dryLimitS longest time the cap may be dry, s
 * @param longestRunS longest run of the pump, s
 * @param meanRunS mean run of the pump, s; 0 when the plan has no timing
 * @param runShare part of the day that the pump runs, 0 to 1; 0 when the plan has no timing
 * @param holdUp what the running tower keeps above the tank, m3
 * @param ecLow low end of the EC's band, mS/cm
 * @param ecHigh high end of it, mS/cm
 * @param keeperS the hour of the day at which cans are poured, s since midnight
 */
public record LogSystem(
    Sender sender,
    Divider divider,
    ZoneId zone,
    double low,
    double intake,
    double rim,
    double rainArea,
    CapSensor cap,
    double dryLimitS,
    double longestRunS,
    double meanRunS,
    double runShare,
    double holdUp,
    double ecLow,
    double ecHigh,
    double keeperS) {
  /** Hour at which the keeper pours when nothing is given, s since midnight. Common practice. */
  public static final double DEFAULT_KEEPER_S = 18 * 3600;

  /** Whether no rain can fall in. */
  public boolean isRoofed() {
    return rainArea == 0;
  }
}

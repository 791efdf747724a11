package leat.season;

import java.util.Arrays;
import java.util.List;

/**
 * What a time away does to the tank, and what would carry it over.
 *
 * <p>Source: reruns. A larger tank and fewer plants are solved with the owner filling up on the
 * evening before leaving, so that they do not hang on the day the tank was last topped up.
 *
 * @param span the days away
 * @param driesOn the first dry day because of it, counted from 0; -1 for none
 * @param dryDays dry days because of it
 * @param shortL thirst that found no water on them, L
 * @param fillBeforeCarries whether filling up on the evening before leaving is enough
 * @param fullCarriesL the full mark of a tank that carries it, filled before leaving, L; null when
 *     not needed or none does
 * @param crop the thirstiest crop; null when none was named
 * @param plantsCarry how many plants of it could stay, filled before leaving; null when not needed,
 *     or when it runs dry even without them
 * @param neighbourDays evenings of the span on which a neighbour must fill up, by {@link
 *     Neighbour}; null when even that does not help
 */
public record AwayOutcome(
    AwaySpan span,
    int driesOn,
    int dryDays,
    double shortL,
    boolean fillBeforeCarries,
    Double fullCarriesL,
    CropPart crop,
    Integer plantsCarry,
    int[] neighbourDays) {
  /** The largest tank that is tried is so many times the one there is. */
  private static final double LARGEST = 10;

  /** Whether the tank carries it as things are. */
  public boolean carried() {
    return driesOn < 0;
  }

  /**
   * Each time away of a season. Each is looked at alone, as if the owner were at home else.
   *
   * @param plan the tank
   * @param days the days, with those away
   * @param thirst factor on all thirst, -
   * @param crops the crops' parts in the thirst; may be empty
   * @return the outcomes, in order
   */
  public static AwayOutcome[] of(
      TankPlan plan, SeasonDays days, double thirst, List<CropPart> crops) {
    List<AwaySpan> spans = days.awaySpans();
    AwayOutcome[] outcomes = new AwayOutcome[spans.size()];
    for (int i = 0; i < outcomes.length; i++) {
      AwaySpan span = spans.get(i);
      SeasonDays alone = days.home().away(span.first(), span.last());
      outcomes[i] = of(plan, alone, thirst, CropPart.thirstiest(crops), span);
    }
    return outcomes;
  }

  private static AwayOutcome of(
      TankPlan plan, SeasonDays days, double thirst, CropPart crop, AwaySpan span) {
    Totals now = Season.totals(plan, days, thirst);
    int dries = now.firstAwayDry();
    if (dries < 0) {
      return new AwayOutcome(span, -1, 0, 0, true, null, crop, null, new int[0]);
    }
    SeasonDays filled = span.first() > 0 ? days.filledOn(span.first() - 1) : days;
    boolean enough = Goal.AWAY_CARRIED.met(Season.totals(plan, filled, thirst));
    Double full = null;
    Integer plants = null;
    if (!enough) {
      double from = plan.marks().fullL();
      double[] larger = Steps.rising(from, Help.MARK_STEP_L, LARGEST * from);
      full = Cure.first(plan, filled, thirst, Lever.TANK, larger, Goal.AWAY_CARRIED);
      if (crop != null) {
        plants = Cure.plants(plan, filled, thirst, crop.partL(), crop.plants(), Goal.AWAY_CARRIED);
      }
    }
    double missed = 0;
    for (DayRow row : Season.run(plan, days, thirst).days()) {
      missed += row.awayDry() ? row.shortL() : 0;
    }
    return new AwayOutcome(
        span,
        dries,
        now.counts().awayDryDays(),
        missed,
        enough,
        full,
        crop,
        plants,
        inside(Neighbour.days(plan, filled, thirst), span));
  }

  private static int[] inside(int[] visits, AwaySpan span) {
    if (visits == null) {
      return null;
    }
    int[] days = new int[visits.length];
    int n = 0;
    for (int day : visits) {
      if (day >= span.first() && day <= span.last()) {
        days[n++] = day;
      }
    }
    return Arrays.copyOf(days, n);
  }
}

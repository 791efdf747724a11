package leat.season;

import java.util.ArrayList;
import java.util.List;

/**
 * What would help, found by solving: for each lever the smallest move that brings the season to the
 * goal, the smallest move of all first.
 *
 * <p>Source: reruns ({@link Cure}). A move is measured as a share of what is there now (our
 * choice).
 */
public final class Help {
  /** Step of a mark that is tried, L. */
  public static final double MARK_STEP_L = 0.5;

  /** Step of an EC that is tried, mS/cm. */
  public static final double EC_STEP_MS_CM = 0.05;

  /** No target under this share of the one there is. */
  private static final double LEAST_TARGET = 0.5;

  private Help() {}

  /**
   * One way.
   *
   * @param lever what is moved; null for plants of the thirstiest crop
   * @param from its value now, in the lever's unit, or plants
   * @param to the value that helps
   * @param after the season's sums then
   */
  public record Option(Lever lever, double from, double to, Totals after) {
    /** How far it is moved, as a share of what is there now. */
    public double move() {
      return from > 0 ? Math.abs(to - from) / from : Double.POSITIVE_INFINITY;
    }
  }

  /**
   * The ways that meet the goal: a larger full mark, a higher low mark (when topped up at low), a
   * lower target, fewer plants of the thirstiest crop. The smallest move comes first: it helps
   * most.
   *
   * @param plan the tank
   * @param days the days
   * @param thirst factor on all thirst, -
   * @param crops the crops' parts in the thirst; may be empty
   * @param goal what is wanted
   * @return the ways; empty when none helps, or the goal is met already
   */
  public static List<Option> options(
      TankPlan plan, SeasonDays days, double thirst, List<CropPart> crops, Goal goal) {
    List<Option> ways = new ArrayList<>();
    if (goal.met(Season.totals(plan, days, thirst))) {
      return ways;
    }
    Marks marks = plan.marks();
    double target = plan.feeding().targetMsCm();
    double[] fuller = Steps.rising(marks.fullL(), MARK_STEP_L, marks.rimL());
    tryOne(ways, plan, days, thirst, Lever.FULL, marks.fullL(), fuller, goal);
    if (plan.upkeep().refill().kind() == Refill.Kind.AT_LOW) {
      double[] higher = Steps.rising(marks.lowL(), MARK_STEP_L, marks.fullL() - MARK_STEP_L);
      tryOne(ways, plan, days, thirst, Lever.LOW, marks.lowL(), higher, goal);
    }
    double[] weaker = Steps.falling(target, EC_STEP_MS_CM, LEAST_TARGET * target);
    tryOne(ways, plan, days, thirst, Lever.TARGET, target, weaker, goal);
    CropPart crop = CropPart.thirstiest(crops);
    if (crop != null) {
      Integer kept = Cure.plants(plan, days, thirst, crop.partL(), crop.plants(), goal);
      if (kept != null) {
        SeasonDays fewer = days.withShareOf(crop.partL(), (double) kept / crop.plants());
        add(ways, new Option(null, crop.plants(), kept, Season.totals(plan, fewer, thirst)));
      }
    }
    return ways;
  }

  private static void tryOne(
      List<Option> ways,
      TankPlan plan,
      SeasonDays days,
      double thirst,
      Lever lever,
      double from,
      double[] values,
      Goal goal) {
    Double to = Cure.first(plan, days, thirst, lever, values, goal);
    if (to != null) {
      Totals after = Season.totals(lever.set(plan, to), days, thirst);
      add(ways, new Option(lever, from, to, after));
    }
  }

  private static void add(List<Option> ways, Option one) {
    int place = 0;
    while (place < ways.size() && ways.get(place).move() <= one.move()) {
      place++;
    }
    ways.add(place, one);
  }
}

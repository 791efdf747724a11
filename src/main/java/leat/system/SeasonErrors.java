package leat.system;

import leat.plan.Problem;
import leat.plan.Section;

/** Messages about the season of a plan, its crops and its place. */
public final class SeasonErrors {
  private SeasonErrors() {}

  /** A number of days that is not whole. */
  public static Problem wholeDays(Section section, String key) {
    return section.problem(
        key,
        "days-not-whole",
        "it counts whole days, such as \"7 d\"; got \"" + section.typed(key) + "\"");
  }

  /** A tank that was changed or filled only after the season began. */
  public static Problem startAfterSeason(Section start, String key) {
    return start.problem(
        key,
        "start-after-season",
        "the tank's start lies before season.from; leave start out for a first fill");
  }

  /** A canopy of a crop whose coefficient nobody knows. */
  public static Problem canopyUnknown(Section crop, String name) {
    return crop.problem(
        "area",
        "crop-canopy-unknown",
        "no crop coefficient is known for \""
            + name
            + "\"; give its thirst instead: water: 0.12 L/d");
  }

  /** A climate table that is no year. */
  public static Problem twelveMonths(Section site, int got) {
    return site.problem("months", "twelve-months", "a year has twelve months; got " + got);
  }

  /** More plants than pots on a day. */
  public static Problem overfull(Section crop, String where, String day, int taken, int pots) {
    return crop.problem(
        "pots",
        "pots-overfull",
        where
            + " has "
            + pots
            + " pots, and on "
            + day
            + " its crops want "
            + taken
            + ": fewer pots for this crop, or another time");
  }
}

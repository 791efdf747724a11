package leat.parts;

import leat.numeric.Impossible;

/**
 * The printers that make the parts.
 *
 * <p>Source: common practice, no source; owners measure their own.
 *
 * @param count of equal printers, 1 or more
 * @param jobs a day and printer that somebody sees to, above 0
 * @param power mean draw while printing, W, not the supply's rating
 * @param changeover from one job to the next, s
 */
public record Printer(int count, double jobs, double power, double changeover) {
  /** Jobs a day and printer unless the plan says otherwise (practice: somebody swaps plates). */
  public static final double JOBS = 2;

  /** Mean draw unless the plan says otherwise, W (practice; one measured printer 190). */
  public static final double POWER = 120;

  /** Time between jobs unless the plan says otherwise, s (practice). */
  public static final double CHANGEOVER = 1800;

  /** Time to print a module when not known, s (practice). */
  public static final double PRINT_TIME = 8 * 3600;

  /** Refuses what prints nothing. */
  public Printer {
    Impossible.unlessWithin("printers", count, 1, 1000, "1 to 1000 printers make the parts");
    Impossible.unlessPositive("print jobs", jobs);
    Impossible.ifNegative("printer power", power);
    Impossible.ifNegative("changeover", changeover);
  }
}

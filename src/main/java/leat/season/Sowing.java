package leat.season;

import java.time.LocalDate;
import leat.numeric.Impossible;

/**
 * One crop's sowings: when, how far apart, in how many pots.
 *
 * <p>Source: arithmetic of whole days. Check values: season-sow.csv.
 *
 * @param pots its own pots
 * @param first the first sowing
 * @param until the last day on which is sown, included
 * @param nurseryDays sowing to transplant
 * @param growingDays transplant to harvest
 * @param turnaroundDays harvest until the pot is free again; 0 for the same day
 * @param everyDays from one sowing to the next
 * @param success the share of seeds that become plants: germination times (1 - loss), -
 * @param sizes how pots are shared out
 * @param earliestTransplant no batch is transplanted before it; null for none
 * @param latestHarvest no batch is harvested after it; null for none
 */
public record Sowing(
    int pots,
    LocalDate first,
    LocalDate until,
    int nurseryDays,
    int growingDays,
    int turnaroundDays,
    int everyDays,
    double success,
    Sizes sizes,
    LocalDate earliestTransplant,
    LocalDate latestHarvest) {
  private static final int MOST_DAYS = 3660;
  private static final int MOST_POTS = 100_000;

  /**
   * @throws Impossible if a number is under its least, the success is not over 0 to 1, or until
   *     lies before first or more than ten years after it
   */
  public Sowing {
    count("pots", pots, 1, MOST_POTS);
    count("nursery", nurseryDays, 0, MOST_DAYS);
    count("growing", growingDays, 1, MOST_DAYS);
    count("turnaround", turnaroundDays, 0, MOST_DAYS);
    count("every", everyDays, 1, 2 * MOST_DAYS);
    if (!(success > 0 && success <= 1)) {
      throw new Impossible("loss", "no seed becomes a plant: the loss must be under 100 %");
    }
    if (until.isBefore(first)) {
      throw new Impossible("until", "the last sowing lies before the first");
    }
    if (until.isAfter(first.plusDays(MOST_DAYS))) {
      throw new Impossible("until", "it lies more than ten years after the first sowing");
    }
  }

  private static void count(String what, int value, int least, int most) {
    if (value < least || value > most) {
      throw new Impossible(what, "it must lie between " + least + " and " + most);
    }
  }

  /**
   * One sowing that fills all pots.
   *
   * @param pots its own pots
   * @param day the sowing
   * @param nurseryDays sowing to transplant
   * @param growingDays transplant to harvest
   * @param turnaroundDays harvest until the pot is free again
   * @param success the share of seeds that become plants, -
   * @param earliestTransplant no transplant before it; null for none
   * @param latestHarvest no harvest after it; null for none
   * @throws Impossible as the constructor
   */
  public static Sowing once(
      int pots,
      LocalDate day,
      int nurseryDays,
      int growingDays,
      int turnaroundDays,
      double success,
      LocalDate earliestTransplant,
      LocalDate latestHarvest) {
    return new Sowing(
        pots,
        day,
        day,
        nurseryDays,
        growingDays,
        turnaroundDays,
        Math.max(1, growingDays + turnaroundDays),
        success,
        Sizes.SPREAD,
        earliestTransplant,
        latestHarvest);
  }

  /**
   * The share of seeds that become plants.
   *
   * @param germination share that comes up, -
   * @param loss share of those that is lost after, -
   * @return -
   */
  public static double success(double germination, double loss) {
    return germination * (1 - loss);
  }

  /** Batches that share the pots at one time. */
  public int batchesAtOnce() {
    int busy = growingDays + turnaroundDays;
    return (busy + everyDays - 1) / everyDays;
  }

  /** The size of the kept batch {@code i}, counted from 0. */
  public int size(int i) {
    long m = batchesAtOnce();
    if (sizes == Sizes.EQUAL) {
      return (int) (pots / m);
    }
    return (int) ((i + 1L) * pots / m - (long) i * pots / m);
  }

  /** Pots that stay empty for ever; 0 when spread. */
  public int idlePots() {
    return sizes == Sizes.EQUAL ? pots % batchesAtOnce() : 0;
  }

  /** Plants a week at most with these pots, whatever the days between. */
  public double plantsAWeekAtMost() {
    return 7.0 * pots / (growingDays + turnaroundDays);
  }

  /** Plants a week that these batches bring while they run. */
  public double plantsAWeek() {
    double inPots = sizes == Sizes.EQUAL ? pots - idlePots() : pots;
    return 7 * inPots / batchesAtOnce() / everyDays;
  }

  /**
   * Days between sowings from which every batch has a plant, when there are fewer pots than
   * batches.
   */
  public int everyForNoEmptyBatch() {
    return (growingDays + turnaroundDays + pots - 1) / pots;
  }

  /** Whether the pots stand empty between one batch and the next. */
  public boolean leavesPotsEmpty() {
    return emptyDaysBetween() > 0;
  }

  /** Days for which they do; 0 for none. */
  public int emptyDaysBetween() {
    return Math.max(0, everyDays - growingDays - turnaroundDays);
  }

  /** The first sowing whose transplant is not too early. */
  public LocalDate firstThatWorks() {
    LocalDate free = earliestTransplant == null ? first : earliestTransplant.minusDays(nurseryDays);
    return free.isAfter(first) ? free : first;
  }

  /** The last sowing whose harvest is not too late; null when there is no latest harvest. */
  public LocalDate lastThatWorks() {
    return latestHarvest == null ? null : latestHarvest.minusDays(nurseryDays + growingDays);
  }
}

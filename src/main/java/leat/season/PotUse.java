package leat.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The pots of one tower day by day, over all crops in it, each with pots of its own.
 *
 * <p>Source: counting, from the first transplant to the last day a pot is taken.
 */
public final class PotUse {
  /** More days in a row than this without a plant in mid-season is no plan (common practice). */
  public static final int LONGEST_EMPTY_DAYS = 14;

  private final LocalDate first;
  private final int[] taken;
  private final int[] planted;
  private final int days;
  private final List<Batches> crops;

  private PotUse(LocalDate first, int days, int span, List<Batches> crops) {
    this.first = first;
    this.days = days;
    this.crops = crops;
    taken = new int[span];
    planted = new int[span];
  }

  /** The pots that these crops take. */
  public static PotUse of(List<Batches> crops) {
    LocalDate first = null;
    LocalDate harvest = null;
    LocalDate free = null;
    for (Batches crop : crops) {
      for (Batch b : crop.batches()) {
        first = first == null || b.transplant().isBefore(first) ? b.transplant() : first;
        harvest = harvest == null || b.harvest().isAfter(harvest) ? b.harvest() : harvest;
        free = free == null || b.free().isAfter(free) ? b.free() : free;
      }
    }
    if (first == null) {
      return new PotUse(null, 0, 0, new ArrayList<>(crops));
    }
    int days = (int) ChronoUnit.DAYS.between(first, harvest);
    int span = (int) ChronoUnit.DAYS.between(first, free);
    PotUse use = new PotUse(first, days, span, new ArrayList<>(crops));
    for (Batches crop : crops) {
      for (Batch b : crop.batches()) {
        use.put(use.taken, b.transplant(), b.free(), b.plants());
        use.put(use.planted, b.transplant(), b.harvest(), b.plants());
      }
    }
    return use;
  }

  private void put(int[] pots, LocalDate from, LocalDate until, int plants) {
    int end = index(until);
    for (int t = index(from); t < end; t++) {
      pots[t] += plants;
    }
  }

  private int index(LocalDate date) {
    return (int) ChronoUnit.DAYS.between(first, date);
  }

  /** Whether nothing is ever planted. */
  public boolean empty() {
    return first == null;
  }

  /** The most pots taken on a day. */
  public int most() {
    int most = 0;
    for (int n : taken) {
      most = Math.max(most, n);
    }
    return most;
  }

  /**
   * Too many plants on a day.
   *
   * @param day the first such day
   * @param taken pots taken on it
   * @param pots pots there are
   */
  public record Overfull(LocalDate day, int taken, int pots) {}

  /** The first day on which more pots are taken than the tower has; null when there is none. */
  public Overfull over(int pots) {
    for (int t = 0; t < taken.length; t++) {
      if (taken[t] > pots) {
        return new Overfull(first.plusDays(t), taken[t], pots);
      }
    }
    return null;
  }

  /** Days between the first transplant and the last harvest without a plant. */
  public int emptyDays() {
    int n = 0;
    for (int t = 0; t < days; t++) {
      n += planted[t] == 0 ? 1 : 0;
    }
    return n;
  }

  /**
   * Days in a row without a plant.
   *
   * @param first the first of them; null for none
   * @param days how many
   * @param ownLimit whether a batch that a crop's own limits dropped would have stood in it
   */
  public record EmptyTime(LocalDate first, int days, boolean ownLimit) {
    /** Whether the answer to the plan is no: too long, and not by the user's own limit. */
    public boolean tooLong() {
      return days > LONGEST_EMPTY_DAYS && !ownLimit;
    }
  }

  /**
   * The longest time without a plant between the first transplant and the last harvest; one that is
   * nobody's own limit comes before a longer one that is.
   */
  public EmptyTime longestEmpty() {
    EmptyTime most = new EmptyTime(null, 0, false);
    int t = 0;
    while (t < days) {
      int from = t;
      while (t < days && planted[t] == 0) {
        t++;
      }
      if (t > from) {
        EmptyTime one = emptyTime(first.plusDays(from), t - from);
        boolean worse = one.tooLong() == most.tooLong() ? one.days > most.days : one.tooLong();
        most = worse ? one : most;
      }
      t++;
    }
    return most;
  }

  private EmptyTime emptyTime(LocalDate from, int n) {
    boolean own = false;
    LocalDate end = from.plusDays(n);
    for (Batches crop : crops) {
      for (DroppedBatch d : crop.dropped()) {
        own |= d.transplant().isBefore(end) && d.harvest().isAfter(from);
      }
    }
    return new EmptyTime(from, n, own);
  }
}

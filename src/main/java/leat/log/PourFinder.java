package leat.log;

import java.util.ArrayDeque;

/**
 * Rises of the raw step by hand, and emptyings before them. A dip of the running pump is no
 * emptying and its return no rise: a rise is counted from the highest step of the last rows, some
 * longer than a dip lasts.
 *
 * <p>Source: sheet log.md; the times are our own, tried on made logs, no source.
 */
final class PourFinder {
  /** A dip lasts the run and this; the water comes back in about 3 min. Common practice, ms. */
  private static final long RETURN = 6 * 60_000;

  private static final long LEAST_BASE = 12 * 60_000;
  private static final long MOST_BASE = 3_600_000;
  private static final int BASE_ROWS = 3;

  /** A rise that stops for so long is over, ms. Common practice, no source. */
  private static final long STILL = 20 * 60_000;

  /** Cans poured within this belong together, ms. Common practice, no source. */
  private static final long NEXT_CAN = 60 * 60_000;

  /** Running rows on an empty tank that tell a loss from a change. Common practice, no source. */
  private static final int PUMPED = 2;

  private final LogLimits limits;
  private final long waiting;
  private final long baseTime;
  private final long refillTime;
  private final int top;
  private final int trueFall;
  private final StepMax base = new StepMax();
  private long baseFrom;

  /** Number of the first row after the last gap. */
  private long wall;

  /** Pours that the judge has not seen to their end. */
  final ArrayDeque<Pour> found = new ArrayDeque<>();

  private Pour pour;
  private UseBook book;
  private double stuck;
  private boolean low;

  /** The step of the last rows, and since when. */
  private int run = StepReader.BLANK;

  private long runFrom;

  /** Row at which a float came free after it missed a use: its fall is no emptying. */
  private long freed = Long.MIN_VALUE;

  private long emptiedFrom = Long.MIN_VALUE;
  private long emptiedAt;
  private int pumpedEmpty;

  PourFinder(LogLimits limits, LogSystem system, StepVolumes volumes) {
    this.limits = limits;
    double run = system.longestRunS() > 0 ? system.longestRunS() * 1000 : 0;
    this.baseTime = (long) Math.min(MOST_BASE, Math.max(LEAST_BASE, run + RETURN));
    this.refillTime = (long) (limits.refillS() * 1000);
    this.waiting = (long) (limits.changeRefillS() * 1000);
    this.top = volumes.top();
    this.trueFall = volumes.dipSteps() + 2;
  }

  /** The book that knows what use to expect. */
  void knows(UseBook use, double stuckVolume) {
    book = use;
    stuck = stuckVolume;
  }

  /** How long rows must be kept for it, ms. */
  long memory() {
    return refillTime + 2 * MOST_BASE;
  }

  /** Begin of the emptying that waits for its filling, ms; {@link Long#MIN_VALUE} without. */
  long emptiedFrom() {
    return emptiedFrom;
  }

  /**
   * Looks at the newest row.
   *
   * @return number of the first row of a rise just found, else -1
   */
  long look(RowRing ring, long i) {
    LogRow row = ring.get(i);
    endStill(row.time);
    row.base = base.max();
    if (row.step < 0) {
      return -1;
    }
    if (base.max() - row.step >= trueFall) {
      base.clear();
      baseFrom = i;
    }
    forget(ring, i);
    int before = base.max();
    base.add(i, row.step);
    row.base = base.max();
    empty(ring, i, row);
    return row.step > before ? rise(ring, i, row) : -1;
  }

  /** The base reaches back over a dip, and over three rows. */
  private void forget(RowRing ring, long i) {
    LogRow row = ring.get(i);
    baseFrom = Math.max(baseFrom, ring.first());
    while (i - baseFrom >= BASE_ROWS && ring.get(baseFrom).time < row.time - baseTime
        || baseFrom < i && ring.get(baseFrom).time < row.time - MOST_BASE && i - baseFrom >= 2) {
      baseFrom++;
    }
    base.dropBefore(baseFrom);
  }

  private long rise(RowRing ring, long i, LogRow row) {
    if (pour != null) {
      if (row.step > pour.toStep) {
        pour.toStep = row.step;
        pour.end = row.time;
      }
      return -1;
    }
    long from = -1;
    int least = Integer.MAX_VALUE;
    for (long j = i - 1; j >= Math.max(wall, ring.first()); j--) {
      LogRow r = ring.get(j);
      if (r.time < row.time - refillTime && j < i - 1) {
        break;
      }
      if (r.step >= 0 && r.base >= 0 && r.base < least) {
        least = r.base;
        from = j;
      }
    }
    if (from < 0 || row.step - least < limits.refillSteps()) {
      return -1;
    }
    begin(ring.get(from).time, row.time, least, row.step);
    return from + 1;
  }

  private void begin(long start, long end, int fromStep, int toStep) {
    Pour last = found.peekLast();
    if (last != null && start - last.end < NEXT_CAN) {
      last.end = end;
      last.toStep = toStep;
      pour = last;
      return;
    }
    pour = new Pour();
    pour.start = start;
    pour.end = end;
    pour.fromStep = fromStep;
    pour.toStep = toStep;
    if (emptiedFrom != Long.MIN_VALUE && !isLoss(start)) {
      pour.emptiedFrom = emptiedFrom;
      emptiedFrom = Long.MIN_VALUE;
    }
    found.add(pour);
  }

  private void endStill(long now) {
    if (pour != null && now - pour.end > STILL) {
      pour = null;
    }
  }

  /** A fall from high to low with the pump at rest. */
  private void empty(RowRing ring, long i, LogRow row) {
    if (row.step != run) {
      freed = row.step < run && book.expected(runFrom, row.time) > stuck ? row.time : freed;
      run = row.step;
      runFrom = row.time;
    }
    pumpedEmpty += row.pumpOn() ? 1 : 0;
    double share = (double) row.step / top;
    if (share >= limits.changeLow()) {
      low = share <= limits.changeHigh() && low;
      return;
    }
    if (!low) {
      low = true;
      long start = fallStart(ring, i, row);
      if (start >= 0 && freed != row.time) {
        emptiedFrom = ring.get(start).time;
        emptiedAt = row.time;
        pumpedEmpty = 0;
      }
    }
  }

  /** The last row before a fall from high, with the pump at rest all along; -1 for none. */
  private long fallStart(RowRing ring, long i, LogRow row) {
    int most = StepReader.BLANK;
    double longest = limits.changeFallS() * 1000;
    long first = i;
    while (first > Math.max(wall, ring.first()) && row.time - ring.get(first - 1).time <= longest) {
      most = Math.max(most, ring.get(--first).step);
    }
    boolean falling =
        first > Math.max(wall, ring.first()) && ring.get(first - 1).step >= most + trueFall - 1;
    if (falling || most <= limits.changeHigh() * top || most - row.step < trueFall - 1) {
      return -1;
    }
    for (long j = i; j >= first; j--) {
      if (ring.get(j).step > most - (trueFall - 1)) {
        return j;
      }
      if (ring.get(j).pumpOn()) {
        return -1;
      }
    }
    return -1;
  }

  /**
   * Whether an emptying was a loss: nobody filled the tank within the time of a change, or the pump
   * was started on the empty tank, which no keeper does who changes the solution.
   */
  boolean isLoss(long now) {
    return emptiedFrom != Long.MIN_VALUE && (pumpedOnEmpty() || now - emptiedAt > waiting);
  }

  /** Whether the pump ran on the empty tank. */
  boolean pumpedOnEmpty() {
    return pumpedEmpty >= PUMPED;
  }

  /** First low row of an emptying, ms. */
  long emptiedAt() {
    return emptiedAt;
  }

  /** The emptying waits no longer. */
  void lost() {
    emptiedFrom = Long.MIN_VALUE;
  }

  /** No base reaches over a gap; a rise of a refill's size across it is one. */
  void gap(LogRow before, LogRow after, int step, long next) {
    int was = Math.max(before.base, before.step);
    if (was >= 0 && step - was >= limits.refillSteps()) {
      begin(before.time, after.time, was, step);
      pour.acrossGap = true;
      finish();
    }
    base.clear();
    baseFrom = next;
    wall = next;
    run = StepReader.BLANK;
  }

  void finish() {
    pour = null;
  }
}

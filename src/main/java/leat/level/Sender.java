package leat.level;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * A sender in use: ohms to a status and a band. All answers are worked out once; a reading is then
 * a search among some dozens of numbers, without allocation.
 *
 * <p>x = measured - lead. Order, first that fits: no reading; open (x at or above open_above); one
 * window holds x (ok, or ok-or-short when x is below short_below); several do (ambiguous, union of
 * their bands); short; under-range; over-range; between two steps (union of the two bands). Windows
 * include their ends.
 *
 * <p>Source: sheets level-decode.csv and level-plan-decode.csv.
 */
public final class Sender {
  private static final int MOTIONS = 3;

  private final Staircase staircase;
  private final Limits limits;
  private final double fullVolume;
  private final double[] sortedOhm;
  private final double[] windowLow;
  private final double[] windowHigh;

  /** Begin of each segment of ohms with one answer; the first begins at minus infinity. */
  private final double[] start;

  private final Status[] status;
  private final int[] stepLow;
  private final int[] stepHigh;
  private final double[][] levelLow;
  private final double[][] levelHigh;
  private final double[][] volumeLow;
  private final double[][] volumeHigh;

  /**
   * @param staircase its steps
   * @param limits windows, lead, open and short
   * @param fullVolume volume at the full mark, m3, of which shares are given
   * @throws Impossible if open would begin inside or below the highest step's window, short would
   *     reach over a second step, or the full volume is not above 0
   */
  public Sender(Staircase staircase, Limits limits, double fullVolume) {
    this(staircase, limits, fullVolume, null);
  }

  private Sender(Staircase staircase, Limits limits, double fullVolume, Divider divider) {
    this.staircase = staircase;
    this.limits = limits;
    this.fullVolume = Accepted.volume("full", fullVolume);
    int n = staircase.size();
    this.sortedOhm = new double[n];
    this.windowLow = new double[n];
    this.windowHigh = new double[n];
    for (int k = 0; k < n; k++) {
      double ohm = staircase.ohm(position(k));
      sortedOhm[k] = ohm;
      windowLow[k] = ohm - limits.halfWindow(ohm) - Limits.ROUNDING;
      windowHigh[k] = ohm + limits.halfWindow(ohm) + Limits.ROUNDING;
      if (divider != null) {
        widen(k, divider.step(ohm, limits.lead(), limits.tolerance(), 0));
      }
    }
    if (limits.openAbove() <= windowHigh[n - 1]) {
      throw new Impossible("open_above", "it must lie above the window of the highest step");
    }
    if (limits.shortBelow() > sortedOhm[1]) {
      throw new Impossible("short_below", "it reaches over the second lowest resistance");
    }
    this.start = starts();
    this.status = new Status[start.length];
    this.stepLow = new int[start.length];
    this.stepHigh = new int[start.length];
    this.levelLow = new double[MOTIONS][start.length];
    this.levelHigh = new double[MOTIONS][start.length];
    this.volumeLow = new double[MOTIONS][start.length];
    this.volumeHigh = new double[MOTIONS][start.length];
    for (int s = 0; s < start.length; s++) {
      classify(s);
    }
  }

  /** What the step can be taken for at the worst belongs to its window, up to what is open. */
  private void widen(int k, Divider.Step worst) {
    windowLow[k] = Math.min(windowLow[k], worst.ohmLow() - Limits.ROUNDING);
    double high = worst.ohmHigh() == null ? limits.openAbove() : worst.ohmHigh() + Limits.ROUNDING;
    windowHigh[k] = Math.max(windowHigh[k], Math.min(high, Math.nextDown(limits.openAbove())));
  }

  /**
   * The same sender as this divider and its ADC read it: each step's window holds all that it can
   * be taken for when ladder, fixed resistor, supply, reference and ADC are off the worst way, so
   * that a count inside a step's worst case is that step.
   *
   * @param divider the divider and ADC whose counts are to be read
   * @throws Impossible if the sender's own windows already reach what counts as open
   */
  public Sender readBy(Divider divider) {
    return new Sender(staircase, limits, fullVolume, divider);
  }

  /** Step, from the bottom, of the k-th lowest resistance; and the other way round. */
  private int position(int k) {
    return staircase.falls() ? staircase.size() - 1 - k : k;
  }

  private double[] starts() {
    int n = sortedOhm.length;
    double[] all = new double[3 * n + 3];
    int m = 0;
    all[m++] = Double.NEGATIVE_INFINITY;
    all[m++] = limits.shortBelow();
    all[m++] = limits.openAbove();
    for (int k = 0; k < n; k++) {
      all[m++] = windowLow[k];
      all[m++] = sortedOhm[k];
      all[m++] = Math.nextUp(windowHigh[k]);
    }
    Arrays.sort(all);
    int distinct = 1;
    for (int i = 1; i < m; i++) {
      if (all[i] != all[distinct - 1]) {
        all[distinct++] = all[i];
      }
    }
    return Arrays.copyOf(all, distinct);
  }

  private void classify(int s) {
    double x = s == 0 ? start[1] - 1 : start[s];
    int first = -1;
    int last = -1;
    for (int k = 0; k < sortedOhm.length; k++) {
      if (x >= windowLow[k] && x <= windowHigh[k]) {
        first = first < 0 ? k : first;
        last = k;
      }
    }
    status[s] = word(x, first, last);
    if (status[s] == Status.BETWEEN_STEPS) {
      last = 1;
      while (sortedOhm[last] < x) {
        last++;
      }
      first = last - 1;
    }
    if (status[s].hasBand()) {
      keep(s, Math.min(position(first), position(last)), Math.max(position(first), position(last)));
    }
  }

  private Status word(double x, int first, int last) {
    if (x >= limits.openAbove()) {
      return Status.OPEN;
    }
    if (first >= 0) {
      if (last > first) {
        return Status.AMBIGUOUS;
      }
      return x < limits.shortBelow() ? Status.OK_OR_SHORT : Status.OK;
    }
    if (x < limits.shortBelow()) {
      return Status.SHORT;
    }
    if (x < sortedOhm[0]) {
      return Status.UNDER_RANGE;
    }
    return x > sortedOhm[sortedOhm.length - 1] ? Status.OVER_RANGE : Status.BETWEEN_STEPS;
  }

  private void keep(int s, int low, int high) {
    stepLow[s] = low;
    stepHigh[s] = high;
    for (Motion motion : new Motion[] {Motion.UNKNOWN, Motion.RISING, Motion.FALLING}) {
      int m = motion.ordinal();
      volumeLow[m][s] = staircase.volumeLow(low, motion);
      volumeHigh[m][s] = staircase.volumeHigh(high, motion);
      if (staircase.hasLevels()) {
        levelLow[m][s] = staircase.levelLow(low, motion);
        levelHigh[m][s] = staircase.levelHigh(high, motion);
      }
    }
  }

  /** Number of neighbouring pairs of steps whose windows overlap. */
  public int overlaps() {
    int n = 0;
    for (int k = 0; k + 1 < sortedOhm.length; k++) {
      n += windowHigh[k] < windowLow[k + 1] ? 0 : 1;
    }
    return n;
  }

  /** Its steps. */
  public Staircase staircase() {
    return staircase;
  }

  /** Its windows, lead, open and short. */
  public Limits limits() {
    return limits;
  }

  /** Volume at the full mark, m3. */
  public double fullVolume() {
    return fullVolume;
  }

  /**
   * What a reading says.
   *
   * @param measured what the meter shows, lead included, ohm; NaN for an empty field, Infinity for
   *     overload; slightly negative is normal after zeroing
   * @param motion which way the level has moved since the reading began
   * @param out filled with the answer
   * @return {@code out}
   */
  public Reading decode(double measured, Motion motion, Reading out) {
    out.sender = this;
    if (measured != measured) {
      out.ohm = 0;
      out.status = Status.NO_READING;
      return out;
    }
    double x = measured - limits.lead();
    out.ohm = x;
    fill(segment(x), motion.ordinal(), out);
    return out;
  }

  /**
   * What an ADC code says, through its divider.
   *
   * @param code the code, 0 to 2^bits - 1
   * @param divider the divider and ADC
   * @param motion which way the level has moved since the reading began
   * @param out filled with the answer
   * @return {@code out}; at the end code that has no upper bound the status is open when even its
   *     lower bound is, else over-range, and the ohms are those of that bound; at a top code that
   *     the reference clips on the high side it is under-range, the ohms those of its upper bound
   * @throws Impossible if the ADC has no such code
   */
  public Reading decodeCode(int code, Divider divider, Motion motion, Reading out) {
    if (divider.isUnderRange(code)) {
      decode(divider.band(code, 0).high(), motion, out);
      out.status = Status.UNDER_RANGE;
      return out;
    }
    if (!divider.isOverRange(code)) {
      return decode(divider.ohm(code, 0), motion, out);
    }
    Double bound = divider.lowerBound(code, 0);
    decode(bound == null ? Double.POSITIVE_INFINITY : bound, motion, out);
    out.status = out.ohm >= limits.openAbove() ? Status.OPEN : Status.OVER_RANGE;
    return out;
  }

  private void fill(int s, int m, Reading out) {
    out.status = status[s];
    if (!status[s].hasBand()) {
      return;
    }
    out.stepLow = stepLow[s];
    out.stepHigh = stepHigh[s];
    out.levelLow = levelLow[m][s];
    out.levelHigh = levelHigh[m][s];
    out.volumeLow = volumeLow[m][s];
    out.volumeHigh = volumeHigh[m][s];
    out.volume = (out.volumeLow + out.volumeHigh) / 2;
    out.fullShare = out.volume / fullVolume;
  }

  private int segment(double x) {
    int low = 0;
    int high = start.length;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (start[middle] <= x) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Number of segments of ohms with one answer each. */
  int segments() {
    return start.length;
  }

  /** Begin of a segment after the lead is taken off, ohm; minus infinity for the first. */
  double segmentStart(int s) {
    return start[s];
  }

  /** Fills a reading with a segment's answer. */
  Reading segment(int s, Motion motion, Reading out) {
    out.sender = this;
    out.ohm = s == 0 ? start[1] - 1 : start[s];
    fill(s, motion.ordinal(), out);
    return out;
  }
}

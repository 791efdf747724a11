package leat.level;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * Water used, from a log of a stepped sender. Only the moments of change carry information: at a
 * falling change from step k+1 to k the volume is that of the falling edge, and the moment lies
 * between the last sample of the old step and the first of the new.
 *
 * <pre>
 * mean use = sum of (V_first - V_last) / sum of spans, over the segments with two changes or more
 * interval:  low  = max(0, sum used - 2 u segments) / sum of the longest spans
 *            high = (sum used + 2 u segments) / sum of the shortest spans
 * steady:    low  = max (V_i - V_j - 2 u)/(t_j,hi - t_i,lo),  high = min (V_i - V_j + 2 u)/(t_j,lo - t_i,hi)
 *            over the pairs i &lt; j of each segment</pre>
 *
 * A rise begins a new segment (a refill); a rise by one step that returns within {@code chatter} is
 * chatter and only widens the bracket. Leave out readings that are not ok, the bracket then grows
 * by itself. Compare readings of one pump state only.
 *
 * <p>Source: arithmetic of intervals; a linear programme agrees on the steady interval. Check
 * values: sheet level-use.csv.
 */
public final class StepUse {
  /** What the log allows to say. */
  public enum Outcome {
    /** A mean use and its interval. */
    RATE,
    /** No change at all: only an upper bound. */
    UPPER_BOUND,
    /** One change, or too short: nothing. */
    NO_RATE
  }

  private static final class Run {
    private final int step;
    private double first;
    private double last;
    private double enterLow;
    private double enterHigh;

    Run(int step, double time) {
      this.step = step;
      this.first = time;
      this.last = time;
    }
  }

  /** A use below this is none, m3/s. */
  private static final double LEAST_USE = 1e-18;

  /** Shortest time over which a rate is given, s. */
  private static final double LEAST_TIME = 1e-3;

  private final List<Run> runs = new ArrayList<>();

  /** An empty log. */
  public StepUse() {}

  /**
   * Takes one sample in; memory grows with the changes, not with the samples.
   *
   * @param time time, s, from any origin; not going back
   * @param step the step read, from the bottom, ok readings only
   * @throws Impossible if the time goes back
   */
  public void add(double time, int step) {
    Impossible.unlessWithin("time", time, -1e12, 1e12, "it lies beyond any log");
    if (runs.isEmpty()) {
      runs.add(new Run(step, time));
      return;
    }
    Run last = runs.get(runs.size() - 1);
    if (!(time >= last.last)) {
      throw new Impossible("time", "the log goes back in time");
    }
    if (last.step == step) {
      last.last = time;
    } else {
      runs.add(new Run(step, time));
    }
  }

  /**
   * A falling change of step.
   *
   * @param step the step entered, from the bottom
   * @param volume volume at that moment, m3
   * @param earliest earliest moment, s
   * @param latest latest moment, s
   * @param segment number of its segment, from 0; a refill begins a new one
   */
  public record Change(int step, double volume, double earliest, double latest, int segment) {}

  /**
   * What a log says of the use.
   *
   * @param outcome what can be said
   * @param changes falling changes in all segments
   * @param segments segments with two changes or more
   * @param used volume used in them, m3; 0 without a rate
   * @param span time between their first and last change, s; 0 without a rate
   * @param use mean use, m3/s; null without a rate
   * @param low lower bound of it, m3/s; 0 for an upper bound only; null without either
   * @param high upper bound, m3/s; null when there is none
   * @param steadyLow lower bound of a steady rate that fits every change, m3/s; null when none fits
   *     (day and night, or a wrong edge)
   * @param steadyHigh its upper bound, m3/s; null likewise
   * @param naive first band's middle less the last one's, over the whole time, m3/s, for
   *     comparison: wrong by up to a fifth, more across a refill; null when no time passed
   */
  public record Result(
      Outcome outcome,
      List<Change> changes,
      int segments,
      double used,
      double span,
      Double use,
      Double low,
      Double high,
      Double steadyLow,
      Double steadyHigh,
      Double naive) {}

  /**
   * What the samples taken in so far say.
   *
   * @param stairs the sender's steps
   * @param edgeUncertainty how far a volume of an edge may be off, m3
   * @param chatter longest time in which a rise by one step that returns is chatter, s; 0 for none
   * @throws Impossible if there is no sample, a step the sender does not have, or a negative value
   */
  public Result result(Staircase stairs, double edgeUncertainty, double chatter) {
    Accepted.volumeOrZero("edge_uncertainty", edgeUncertainty);
    Impossible.ifNegative("chatter", chatter);
    if (runs.isEmpty()) {
      throw new Impossible("reading", "there is no ok reading in the log");
    }
    for (Run r : runs) {
      Impossible.unlessWithin(
          "reading", r.step, 0, stairs.size() - 1, "the sender has no such step");
    }
    List<Run> clean = withoutChatter(chatter);
    List<Change> changes = changes(clean, stairs);
    if (changes.isEmpty()) {
      return upperBound(clean, stairs);
    }
    return rate(changes, stairs, edgeUncertainty);
  }

  private List<Run> withoutChatter(double chatter) {
    List<Run> clean = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Run r = runs.get(i);
      Run before = clean.isEmpty() ? null : clean.get(clean.size() - 1);
      Run next = i + 1 < runs.size() ? runs.get(i + 1) : null;
      if (before != null
          && next != null
          && r.step == before.step + 1
          && next.step <= before.step
          && next.first - r.first <= chatter) {
        before.enterHigh = next.first;
        before.last = next.step == before.step ? next.last : r.last;
        if (next.step == before.step) {
          i++;
        }
        continue;
      }
      Run copy = new Run(r.step, r.first);
      copy.last = r.last;
      copy.enterLow = before == null ? r.first : before.last;
      copy.enterHigh = r.first;
      clean.add(copy);
    }
    return clean;
  }

  private static List<Change> changes(List<Run> clean, Staircase stairs) {
    List<Change> changes = new ArrayList<>();
    int segment = 0;
    for (int i = 1; i < clean.size(); i++) {
      Run r = clean.get(i);
      int from = clean.get(i - 1).step;
      if (r.step > from) {
        segment++;
      }
      for (int k = from - 1; k >= r.step; k--) {
        changes.add(
            new Change(k, stairs.volumeHigh(k, Motion.FALLING), r.enterLow, r.enterHigh, segment));
      }
    }
    return changes;
  }

  private static double middle(Staircase s, int step) {
    return (s.volumeLow(step, Motion.UNKNOWN) + s.volumeHigh(step, Motion.UNKNOWN)) / 2;
  }

  private Double naive(Staircase stairs) {
    Run first = runs.get(0);
    Run last = runs.get(runs.size() - 1);
    double time = last.last - first.first;
    return time >= LEAST_TIME
        ? Double.valueOf((middle(stairs, first.step) - middle(stairs, last.step)) / time)
        : null;
  }

  private Result upperBound(List<Run> clean, Staircase stairs) {
    Double high = null;
    for (Run r : clean) {
      double time = r.last - r.first;
      double band =
          stairs.volumeHigh(r.step, Motion.UNKNOWN) - stairs.volumeLow(r.step, Motion.UNKNOWN);
      if (time >= LEAST_TIME && (high == null || band / time < high)) {
        high = band / time;
      }
    }
    Outcome outcome = high == null ? Outcome.NO_RATE : Outcome.UPPER_BOUND;
    Double low = high == null ? null : Double.valueOf(0);
    return new Result(
        outcome, new ArrayList<>(), 0, 0, 0, null, low, high, null, null, naive(stairs));
  }

  private Result rate(List<Change> changes, Staircase stairs, double u) {
    int segments = 0;
    double used = 0;
    double span = 0;
    double longest = 0;
    double shortest = 0;
    double steadyLow = 0;
    double steadyHigh = Double.MAX_VALUE;
    for (int i = 0; i < changes.size(); ) {
      int end = i + 1;
      while (end < changes.size() && changes.get(end).segment() == changes.get(i).segment()) {
        end++;
      }
      if (end - i >= 2) {
        Change a = changes.get(i);
        Change b = changes.get(end - 1);
        segments++;
        used += a.volume() - b.volume();
        span += (b.earliest() + b.latest()) / 2 - (a.earliest() + a.latest()) / 2;
        longest += b.latest() - a.earliest();
        shortest += Math.max(0, b.earliest() - a.latest());
        steadyLow = Math.max(steadyLow, steadyLow(changes, i, end, u));
        steadyHigh = Math.min(steadyHigh, steadyHigh(changes, i, end, u));
      }
      i = end;
    }
    if (segments == 0 || !(span >= LEAST_TIME)) {
      return new Result(
          Outcome.NO_RATE, changes, 0, 0, 0, null, null, null, null, null, naive(stairs));
    }
    boolean fits = steadyLow <= steadyHigh && steadyHigh < Double.MAX_VALUE;
    return new Result(
        Outcome.RATE,
        changes,
        segments,
        used,
        span,
        used / span,
        Math.max(0, used - 2 * u * segments) / longest,
        shortest >= LEAST_TIME ? Double.valueOf((used + 2 * u * segments) / shortest) : null,
        fits ? Double.valueOf(steadyLow) : null,
        fits ? Double.valueOf(steadyHigh) : null,
        naive(stairs));
  }

  private static double steadyLow(List<Change> changes, int from, int to, double u) {
    double low = 0;
    for (int i = from; i < to; i++) {
      for (int j = i + 1; j < to; j++) {
        Change a = changes.get(i);
        Change b = changes.get(j);
        double time = b.latest() - a.earliest();
        if (time >= LEAST_TIME) {
          low = Math.max(low, (a.volume() - b.volume() - 2 * u) / time);
        }
      }
    }
    return low;
  }

  private static double steadyHigh(List<Change> changes, int from, int to, double u) {
    double high = Double.MAX_VALUE;
    for (int i = from; i < to; i++) {
      for (int j = i + 1; j < to; j++) {
        Change a = changes.get(i);
        Change b = changes.get(j);
        if (b.earliest() - a.latest() >= LEAST_TIME) {
          high = Math.min(high, (a.volume() - b.volume() + 2 * u) / (b.earliest() - a.latest()));
        }
      }
    }
    return high;
  }

  /**
   * When the next falling change is to be expected.
   *
   * @param earliest earliest moment, s in the log's time
   * @param latest latest moment, s; null when the use may be 0
   */
  public record Next(double earliest, Double latest) {}

  /**
   * When the step below the last change's will be entered.
   *
   * @param result a result with a rate
   * @param stairs the sender's steps
   * @param edgeUncertainty how far a volume of an edge may be off, m3
   * @return the expected time; null without a rate or when the lowest step is reached
   */
  public static Next next(Result result, Staircase stairs, double edgeUncertainty) {
    if (result.high() == null || result.low() == null || result.changes().isEmpty()) {
      return null;
    }
    Change last = result.changes().get(result.changes().size() - 1);
    if (last.step() == 0) {
      return null;
    }
    double left = last.volume() - stairs.volumeHigh(last.step() - 1, Motion.FALLING);
    double soon =
        result.high() > LEAST_USE ? Math.max(0, left - 2 * edgeUncertainty) / result.high() : 0;
    Double late =
        result.low() > LEAST_USE
            ? Double.valueOf(last.latest() + (left + 2 * edgeUncertainty) / result.low())
            : null;
    return new Next(last.earliest() + soon, late);
  }
}

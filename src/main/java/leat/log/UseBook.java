package leat.log;

import java.util.ArrayList;
import java.util.List;

/**
 * What was used between the moments at which the volume is known: the edges. Between two edges
 * without a pouring the use is their difference; over a pouring it is filled with the rate of both
 * sides, held to what the steps read allow.
 *
 * <p>Source: sheet log.md; the least part of a day is our own, no source.
 */
final class UseBook {
  /** A rate needs this share of a day. Common practice, no source. */
  private static final double LEAST_DAY = 0.125;

  /** Rates beyond these times the median are not carried over. Common practice, no source. */
  private static final double LEAST_RATE = 0.4;

  private static final double MOST_RATE = 2.5;

  /** A first rate of a young log needs this share of a day. */
  private static final double YOUNG_DAY = 0.5;

  private final StepVolumes volumes;
  private final Rhythm rhythm;
  private final DayBook days;

  private long time = Long.MIN_VALUE;
  private double volume = Double.NaN;
  private double rain;
  private boolean blurred = true;
  private List<Pour> pours = new ArrayList<>();
  private double rate = Double.NaN;
  private double sumUse;
  private double sumWeight;
  private Stretch pending;

  private long liveTime;
  private double liveVolume = Double.NaN;
  private double liveLow;
  private double liveHigh;
  private double liveRain;
  private boolean rainedAtTop;
  private boolean exact;
  private boolean lossy;

  private record Stretch(
      long from, double volume, long to, double end, List<Pour> pours, boolean blurred) {}

  UseBook(StepVolumes volumes, Rhythm rhythm, DayBook days) {
    this.volumes = volumes;
    this.rhythm = rhythm;
    this.days = days;
  }

  /** Use expected between two moments, m3; NaN while the log is too young to say. */
  double expected(long from, long to) {
    return thirst() * rhythm.between(from, to);
  }

  /** The same with the rate of the last days where that is higher: heat is no leak. */
  double expectedAtMost(long from, long to) {
    return Math.max(thirst(), rateNow()) * rhythm.between(from, to);
  }

  /** Median rate, m3 a second of full thirst. */
  private double thirst() {
    double day = days.medianDay();
    if (day == day) {
      return day / rhythm.day();
    }
    return sumWeight > YOUNG_DAY * rhythm.day() ? sumUse / sumWeight : Double.NaN;
  }

  /** Rate of now: the last one and the median in equal parts. */
  private double rateNow() {
    return mean(rate, thirst());
  }

  private static double mean(double a, double b) {
    return a == a ? b == b ? (a + b) / 2 : a : b;
  }

  boolean isStarted() {
    return time != Long.MIN_VALUE;
  }

  /** The first step read. */
  void start(long at, int step) {
    time = at;
    live(at, step, volumes.least(step), volumes.rising(step + 1));
  }

  private void live(long at, int step, double low, double high) {
    liveTime = at;
    liveLow = low;
    liveHigh = step == volumes.top() && !endsAtRim() ? Math.max(low, volumes.full()) : high;
    liveVolume = (liveLow + liveHigh) / 2;
    liveRain = 0;
  }

  void rain(double volume, int step) {
    rain += volume;
    liveRain += volume;
    rainedAtTop = step == volumes.top() && (rainedAtTop || volume > 0);
  }

  long anchorTime() {
    return time;
  }

  /** Volume at the last edge, m3; NaN when something unknown happened since. */
  double anchorVolume() {
    return blurred || !pours.isEmpty() ? Double.NaN : volume;
  }

  double rainSince() {
    return rain;
  }

  /** Whether the last edge was one: the step fell by one. */
  boolean isExact() {
    return exact;
  }

  /**
   * A falling edge: the volume is known.
   *
   * @param one whether one step fell, so that the volume is known to the edge
   * @param ordinary whether thirst explains the fall
   */
  void edge(long at, double v, boolean one, boolean ordinary) {
    if (anchorVolume() == volume) {
      double use = used(at, v);
      double weight = rhythm.between(time, at);
      double here = weight > LEAST_DAY * rhythm.day() ? held(use / weight) : Double.NaN;
      settlePending(mean(rate, here));
      days.spread(time, at, use, volume);
      if (ordinary) {
        rate = here == here ? here : rate;
        sumUse += use;
        sumWeight += weight;
      }
    } else {
      settlePending(rate);
      pending = new Stretch(time, volume, at, v, pours, blurred);
      pours = new ArrayList<>();
    }
    days.settleTo(pending == null ? at : pending.from);
    anchor(at, v);
    exact = one;
    lossy = !ordinary;
  }

  private double used(long at, double v) {
    double use = Math.max(0, volume + rain - v);
    double most = MOST_RATE * expected(time, at);
    return rain > 0 && use > most ? most : use;
  }

  private void anchor(long at, double v) {
    time = at;
    volume = v;
    rain = 0;
    blurred = false;
    liveTime = at;
    liveVolume = v;
    liveLow = v;
    liveHigh = v;
    liveRain = 0;
  }

  /** After a fall of several steps in a row only the band of the step is known. */
  void widen(double low, double high) {
    liveLow = low;
    liveHigh = high;
  }

  private double held(double r) {
    double usual = thirst();
    return usual == usual ? Math.min(Math.max(r, LEAST_RATE * usual), MOST_RATE * usual) : r;
  }

  /** Something rose or was not seen: the volume is only known by its step. */
  void blur(long at, int step) {
    lossy = false;
    blurred = true;
    live(at, step, volumes.least(step), volumes.rising(step + 1));
  }

  /** The keeper empties the tank: only the step tells. */
  void empties(long at, int step) {
    live(at, step, volumes.least(step), volumes.rising(step + 1));
  }

  /** A pouring: its litres, and the volume after it. */
  void pour(Pour pour, int step) {
    double before = volumeAt(pour.start, pour.fromStep);
    double beforeLow = bandLow(pour.start, pour.fromStep);
    double beforeHigh = bandHigh(pour.start, pour.fromStep);
    if (pour.emptiedFrom != Long.MIN_VALUE) {
      beforeLow = volumes.least(pour.fromStep);
      beforeHigh = volumes.rising(pour.fromStep + 1);
      before = (beforeLow + beforeHigh) / 2;
    }
    rainedAtTop = false;
    lossy = false;
    live(pour.end, step, step == 0 ? 0 : volumes.rising(step), volumes.rising(step + 1));
    pours.add(pour);
    pour.after = liveVolume;
    if (pour.event != null) {
      pour.event.volume = liveVolume - before;
      pour.event.volumeLow = Math.max(0, liveLow - beforeHigh);
      pour.event.volumeHigh = liveHigh - beforeLow;
    }
  }

  /** The volume now, held to what the step allows, m3. */
  double volumeAt(long at, int step) {
    double less = rateNow() * rhythm.between(liveTime, at);
    double v = liveVolume + liveRain - (less == less ? less : 0);
    return Math.min(Math.max(v, volumes.falling(step, true)), stepHigh(step));
  }

  private double stepHigh(int step) {
    if (step == volumes.top()) {
      return endsAtRim() ? volumes.rim() : Math.max(liveHigh, volumes.full());
    }
    return volumes.rising(step + 1);
  }

  /** Whether the top step may hold more than the keeper's full mark. */
  private boolean endsAtRim() {
    return rainedAtTop || volumes.topIsOverfull();
  }

  /** Low end of the band the volume lies in now, m3. */
  double bandLow(long at, int step) {
    double most = MOST_RATE * expected(liveTime, at);
    double low = liveLow - slack() - most;
    double least = volumes.least(step);
    if (step == 0) {
      return 0;
    }
    return most == most && liveRain == 0 && !lossy
        ? Math.max(least, Math.min(low, stepHigh(step)))
        : least;
  }

  /** High end of it, m3. */
  double bandHigh(long at, int step) {
    double least = LEAST_RATE * expected(liveTime, at);
    double high = liveHigh + slack() + liveRain - (least == least ? least : 0);
    return Math.max(Math.min(stepHigh(step), high), volumeAt(at, step));
  }

  /** An edge is known to a millimetre or two: a tenth of a step. */
  private double slack() {
    return volumes.meanStep() / 10;
  }

  private void settlePending(double r) {
    if (pending != null) {
      fill(pending, r == r ? r : thirst());
      pending = null;
    }
  }

  /** Fills a stretch with pourings in it: before the first, between, after the last. */
  private void fill(Stretch s, double r) {
    long from = s.from;
    double v = s.volume;
    for (int i = 0; i < s.pours.size(); i++) {
      Pour pour = s.pours.get(i);
      long until = pour.emptiedFrom == Long.MIN_VALUE ? pour.start : pour.emptiedFrom;
      double use = guess(r, from, until);
      if (i == 0 && !s.blurred && pour.emptiedFrom == Long.MIN_VALUE && v == v) {
        use = Math.min(use, Math.max(0, v - volumes.falling(pour.fromStep, true)));
      }
      lay(from, until, use, v);
      from = pour.end;
      v = Double.NaN;
    }
    double use = guess(r, from, s.to);
    if (!s.pours.isEmpty() && !s.blurred && s.end == s.end) {
      Pour last = s.pours.get(s.pours.size() - 1);
      double low = volumes.rising(last.toStep) - s.end;
      double high = volumes.rising(last.toStep + 1) - s.end;
      use = Math.max(0, Math.min(Math.max(use, low), high));
      refine(last, s.end + use);
    }
    lay(from, s.to, use, s.end == s.end ? s.end + use : liveVolume);
  }

  private static void refine(Pour pour, double after) {
    LogEvent e = pour.event;
    if (e != null && e.volume == e.volume) {
      double change = after - pour.after;
      e.volume = Math.min(Math.max(e.volume + change, e.volumeLow), e.volumeHigh);
    }
  }

  private double guess(double r, long from, long to) {
    double use = r * rhythm.between(from, to);
    return use == use ? use : 0;
  }

  private void lay(long from, long to, double use, double v) {
    if (to > from) {
      days.spread(from, to, use, v);
    }
  }

  /** The end of the log: what was used since the last edge is guessed. */
  void finish(long last, int step) {
    settlePending(rate);
    if (!isStarted()) {
      return;
    }
    double r = rateNow();
    if (anchorVolume() == volume) {
      double use = Math.min(guess(r, time, last), Math.max(0, volume + rain - volumes.least(step)));
      lay(time, last, use, volume);
    } else {
      fill(new Stretch(time, volume, last, Double.NaN, pours, blurred), r);
    }
  }
}

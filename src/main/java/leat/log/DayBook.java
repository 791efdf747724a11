package leat.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The days of a log: what was used, poured, rained, and how the EC went. */
final class DayBook {
  private static final double MOST_EC = 10;

  /** What may be missing of a day at the log's own ends, ms. Common practice, no source. */
  private static final long MOST_UNSEEN = 3_600_000;

  private final LogLimits limits;
  private final LocalClock clock;
  private final Rhythm rhythm;
  private final Interval interval;
  private final List<LogDay> days = new ArrayList<>();
  private LogDay today;
  private EcSpan span;
  private LogEvent lastPour;
  private int settled;

  /** Newest row. */
  private long seen;

  /** A day that begins before this is not sure either. */
  private long doubtedTo = Long.MIN_VALUE;

  private double median = Double.NaN;

  DayBook(LogLimits limits, LocalClock clock, Rhythm rhythm, Interval interval) {
    this.limits = limits;
    this.clock = clock;
    this.rhythm = rhythm;
    this.interval = interval;
  }

  List<LogDay> days() {
    return days;
  }

  /** Rain of a row, be it amid a pouring. */
  void rain(LogRow row, double rain) {
    if (today == null || row.time >= today.end) {
      open(row.time);
    }
    seen = row.time;
    today.rain += rain;
  }

  /** A row of the day, outside a pouring. */
  void row(LogRow row, double rain) {
    rain(row, rain);
    if (row.ec > 0 && row.ec <= MOST_EC) {
      if (span == null) {
        span = new EcSpan(limits.ecRows());
        span.follows(lastPour);
        lastPour = null;
        today.spans.add(span);
      }
      span.add(row.time, row.ec);
      if (!(today.ecStart == today.ecStart) && span.hasStart()) {
        today.ecStart = span.start();
      }
    }
    if (span != null) {
      span.rain += span.hasStart() ? rain : 0;
    }
  }

  private long slack() {
    return (long) (limits.gapIntervals() * interval.millis());
  }

  /** The same where no row goes before, or comes after. */
  private long atEnd() {
    return Math.min(slack(), MOST_UNSEEN);
  }

  private void open(long time) {
    long date = clock.day(time);
    long start = clock.startOf(date);
    close(slack());
    today = new LogDay(date, start, clock.startOf(date + 1));
    today.beginsWhole = time - start <= (days.isEmpty() ? atEnd() : slack());
    today.sure = start > doubtedTo;
    days.add(today);
  }

  private void close(long unseen) {
    if (today != null) {
      today.endsWhole = seen >= today.end - unseen;
      endSpan();
    }
  }

  private void endSpan() {
    if (span != null && span.hasStart()) {
      today.ecEnd = span.end();
    }
    span = null;
  }

  /** EC of the last rows, mS/cm; NaN when too few. */
  double ecNow() {
    return span != null && span.hasStart() ? span.end() : today == null ? Double.NaN : today.ecEnd;
  }

  /** A pouring begins: the span of EC ends. */
  void pourBegins() {
    endSpan();
  }

  void poured(LogEvent event, double volume) {
    if (span == null) {
      lastPour = event;
    } else {
      span.follows(event);
    }
    if (volume > 0) {
      today.refill += volume;
    }
  }

  /** Water seen afterwards to have come in: its day has its litres, no EC is split over it. */
  void cameIn(long at, double rain, double poured) {
    for (int i = days.size() - 1; i >= 0; i--) {
      LogDay day = days.get(i);
      if (at >= day.start && at < day.end) {
        day.rain += rain;
        day.refill += poured;
        cut(day);
        return;
      }
    }
  }

  private void cut(LogDay day) {
    if (!day.spans.isEmpty()) {
      EcSpan last = day.spans.get(day.spans.size() - 1);
      last.broken = true;
      if (last == span) {
        endSpan();
      }
    }
  }

  /** Days that a doubtful time touches are not sure. */
  void doubt(long from, long to) {
    doubtedTo = Math.max(doubtedTo, to);
    for (int i = days.size() - 1; i >= 0 && days.get(i).end > from; i--) {
      LogDay day = days.get(i);
      day.sure = day.sure && day.start > to;
    }
  }

  /**
   * Lays a use over the days by the rhythm of thirst.
   *
   * @param volume volume at its begin, m3; NaN when unknown
   */
  void spread(long from, long to, double use, double volume) {
    double all = rhythm.between(from, to);
    for (int i = days.size() - 1; i >= 0 && days.get(i).end > from; i--) {
      LogDay day = days.get(i);
      double share = share(from, to, Math.max(from, day.start), Math.min(to, day.end), all);
      day.used += use * share;
      for (int k = 0; k < day.spans.size(); k++) {
        day.spans.get(k).stretches.add(new EcSpan.Stretch(from, to, use, volume));
      }
    }
  }

  /** Both medians of a span are known: what was drunk between them, the volume at the first. */
  private void settle(LogDay day) {
    for (int k = 0; k < day.spans.size(); k++) {
      EcSpan span = day.spans.get(k);
      for (int i = 0; span.hasStart() && i < span.stretches.size(); i++) {
        lay(span, span.stretches.get(i));
      }
    }
    day.settle();
  }

  private void lay(EcSpan span, EcSpan.Stretch s) {
    double all = rhythm.between(s.from(), s.to());
    long a = span.startTime();
    long b = span.endTime();
    span.used += s.use() * share(s.from(), s.to(), Math.max(s.from(), a), Math.min(s.to(), b), all);
    if (a >= s.from() && a < s.to()) {
      span.volume = s.volume() - s.use() * share(s.from(), s.to(), s.from(), a, all);
    }
  }

  private double share(long from, long to, long a, long b, double all) {
    if (b <= a) {
      return 0;
    }
    return all > 0 ? rhythm.between(a, b) / all : (double) (b - a) / (to - from);
  }

  /** Everything before a moment is laid out: settles the days that end before it. */
  void settleTo(long time) {
    boolean more = false;
    while (settled < days.size() && days.get(settled).end <= time) {
      if (days.get(settled) == today) {
        break;
      }
      settle(days.get(settled++));
      more = true;
    }
    if (more) {
      median = medianUse();
    }
  }

  /** Settles all, at the end of the log. */
  void finish() {
    close(atEnd());
    while (settled < days.size()) {
      settle(days.get(settled++));
    }
    median = medianUse();
  }

  /** Uses of the last sure days, newest first, m3. */
  double[] lastUses() {
    double[] uses = new double[limits.useDays()];
    int n = 0;
    for (int i = days.size() - 1; i >= 0 && n < uses.length; i--) {
      LogDay day = days.get(i);
      if (day.resolved && day.isSure()) {
        uses[n++] = day.used;
      }
    }
    return Arrays.copyOf(uses, n);
  }

  private double medianUse() {
    double[] uses = lastUses();
    if (uses.length == 0) {
      return Double.NaN;
    }
    Arrays.sort(uses);
    int n = uses.length;
    return n % 2 == 1 ? uses[n / 2] : (uses[n / 2 - 1] + uses[n / 2]) / 2;
  }

  /** Median use of the last sure days, m3 a day; NaN before the first. */
  double medianDay() {
    return median;
  }
}

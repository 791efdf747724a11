package leat.log;

/** Sees the rows in order with their step at rest; asks each judge and keeps the book of use. */
final class Judge {
  final EventBook events;
  final DayBook days;
  final UseBook book;
  final Lessons lessons;
  final BandWatch watch;
  private final StepVolumes volumes;
  private final PourFinder pours;
  private final FaultJudge open;
  private final FaultJudge shorted;
  final CapJudge cap;
  private final RainJudge rains;
  private final RiseJudge rises;
  private final LeakJudge leaks;
  private final StuckJudge stuck;
  private final RowSink sink;
  private final LogCounts counts;
  private long last = Long.MIN_VALUE;
  private int rest = StepReader.BLANK;
  private long restTime;
  private double rainInPour;
  private Pour begun;
  private final LogLimits limits;
  private final Interval interval;

  /** Newest row whose reading says something of the sender, be it a fault. */
  private long read = Long.MIN_VALUE;

  Judge(
      LogSystem system,
      LogLimits limits,
      StepVolumes volumes,
      PourFinder pours,
      Interval interval,
      LogCounts counts,
      RowSink sink) {
    LocalClock clock = new LocalClock(system.zone());
    Rhythm rhythm = new Rhythm(clock, limits);
    this.limits = limits;
    this.interval = interval;
    this.volumes = volumes;
    this.pours = pours;
    this.counts = counts;
    this.sink = sink;
    days = new DayBook(limits, clock, rhythm, interval);
    events = new EventBook(days);
    book = new UseBook(volumes, rhythm, days);
    open = new FaultJudge(EventKind.SENSOR_OPEN, StepReader.OPEN, events, interval, limits);
    shorted = new FaultJudge(EventKind.SENSOR_SHORT, StepReader.SHORT, events, interval, limits);
    cap = new CapJudge(limits, system, volumes, events, interval);
    rains = new RainJudge(limits, system, volumes, events);
    rises = new RiseJudge(limits, system, volumes, events, interval);
    leaks = new LeakJudge(limits, volumes, events, book);
    stuck = new StuckJudge(limits, volumes, events, book);
    pours.knows(book, limits.stuckJumpSteps() * volumes.meanStep());
    lessons = new Lessons(volumes);
    watch = new BandWatch(system, limits);
  }

  void row(LogRow row) {
    if (last == Long.MIN_VALUE) {
      counts.first = row.time;
      last = row.time;
    }
    blank(row);
    double rained = rains.row(row, last);
    Pour pour = pouring(row, rained);
    if (pour == null || row.time >= pour.end) {
      days.row(row, rained);
    } else {
      days.rain(row, rained);
    }
    book.rain(rained, rest);
    open.row(row);
    shorted.row(row);
    waitForFilling(row.time);
    cap.row(row);
    stuck.row(row, rained);
    if (pour == null && row.time > emptyingFrom()) {
      book.empties(row.time, Math.max(0, row.rest));
      step(row);
    } else if (pour == null) {
      edges(row);
    } else if (row.time >= pour.end) {
      tell(pour, row);
    }
    rises.row(row, watch.ec());
    lessons.row(row, cap.isFailing());
    watch.row(row, book, rest);
    last = row.time;
    counts.last = row.time;
    pass(row);
  }

  /** Rows without a reading: beyond the hour of rest nobody knows what was drunk. */
  private void blank(LogRow row) {
    boolean says = row.step >= 0 || row.isOpen() || row.isShort();
    if (isUnread(row.time)) {
      days.doubt(says ? read : Math.max(read, last), row.time);
    }
    read = says ? row.time : read;
  }

  /** Whether so long has passed since the newest reading that the level is a guess. */
  private boolean isUnread(long now) {
    double longest = Math.max(limits.restS() * 1000, limits.silentIntervals() * interval.millis());
    return read != Long.MIN_VALUE && now - read > longest;
  }

  /** Since when the rows bring no reading; {@code Long.MIN_VALUE} when they do. */
  long unreadSince() {
    return isUnread(last) ? read : Long.MIN_VALUE;
  }

  private void pass(LogRow row) {
    if (sink == null) {
      return;
    }
    if (rest < 0) {
      sink.row(row, Double.NaN, Double.NaN, Double.NaN);
    } else {
      sink.row(
          row,
          book.volumeAt(row.time, rest),
          book.bandLow(row.time, rest),
          book.bandHigh(row.time, rest));
    }
  }

  /** Since when the keeper empties the tank, to fill it anew: no use, no edge. */
  private long emptyingFrom() {
    Pour next = pours.found.peekFirst();
    boolean found = next != null && next.emptiedFrom != Long.MIN_VALUE;
    long from = found ? next.emptiedFrom : pours.emptiedFrom();
    return from == Long.MIN_VALUE ? Long.MAX_VALUE : from;
  }

  /** The pouring that a row belongs to; null when it belongs to none. */
  private Pour pouring(LogRow row, double rained) {
    Pour pour = pours.found.peekFirst();
    if (pour == null || row.time <= pour.start) {
      return null;
    }
    if (pour != begun) {
      begun = pour;
      rainInPour = 0;
      days.pourBegins();
    }
    rainInPour += rained;
    return pour;
  }

  private void tell(Pour pour, LogRow row) {
    pours.found.pollFirst();
    rises.drop();
    pour.toStep = Math.max(pour.toStep, row.rest);
    double rise = volumes.rising(pour.toStep) - volumes.rising(pour.fromStep);
    if (rainInPour > rise / 2) {
      step(row);
      return;
    }
    boolean change = pour.emptiedFrom != Long.MIN_VALUE;
    if (change) {
      leaks.change(pour.emptiedFrom);
      cap.change(pour.emptiedFrom, pour.end);
    } else {
      leaks.close();
    }
    if (!change && stuck.releasedSince(pour.start)) {
      book.blur(row.time, pour.toStep);
      step(row);
      return;
    }
    pour.event =
        change
            ? events.add(EventKind.SOLUTION_CHANGE, pour.emptiedFrom, pour.end)
            : events.add(EventKind.REFILL, pour.start, pour.end);
    pour.event.cause = pour.acrossGap ? LogEvent.WITHIN_GAP : "";
    pour.event.ecBefore = days.ecNow();
    book.pour(pour, pour.toStep);
    days.poured(pour.event, pour.event.volume);
    step(row);
  }

  private void step(LogRow row) {
    if (row.rest >= 0) {
      rest = row.rest;
      restTime = row.time;
    }
  }

  /** An emptying that nobody fills again was a loss. */
  private void waitForFilling(long now) {
    long from = emptyingFrom();
    if (now < from) {
      return;
    }
    if (from == pours.emptiedFrom() && pours.isLoss(now)) {
      LogEvent e = events.add(EventKind.LEAK, from, Math.max(from, pours.emptiedAt()));
      e.told = now;
      e.cause = pours.pumpedOnEmpty() ? LogEvent.HOSE_OFF : LogEvent.DRAINED;
      events.doubt(e);
      book.blur(now, Math.max(0, rest));
      cap.change(Long.MAX_VALUE, Long.MIN_VALUE);
      pours.lost();
      return;
    }
    leaks.change(from);
    cap.change(from, now);
  }

  private void edges(LogRow row) {
    if (row.rest < 0) {
      return;
    }
    if (rest < 0) {
      if (book.isStarted()) {
        book.blur(row.time, row.rest);
      } else {
        book.start(row.time, row.rest);
      }
    } else if (row.rest < rest) {
      fall(row);
    } else if (row.rest > rest && !rains.isRecent(row.time)) {
      rises.rise(restTime, row.time, rest, row.rest, watch.ec());
      book.blur(row.time, row.rest);
      leaks.close();
    }
    step(row);
  }

  private void fall(LogRow row) {
    int steps = rest - row.rest;
    boolean one = steps == 1;
    long at = one ? restTime + (row.time - restTime) / 2 : row.time;
    double edge = volumes.falling(row.rest + 1, !cap.isDead());
    double v = one ? edge : (edge + volumes.falling(row.rest, true)) / 2;
    boolean quick = !stuck.releasedSince(restTime) && quick(at, edge, steps);
    if (!quick) {
      leaks.close();
    }
    book.edge(at, v, one, !quick);
    if (!one) {
      book.widen(volumes.least(row.rest), edge);
    }
  }

  /** Whether a fall is quicker than thirst explains. */
  private boolean quick(long at, double edge, int steps) {
    double before = book.anchorVolume();
    if (before == before && (book.isExact() || leaks.isCounting())) {
      return leaks.fall(book.anchorTime(), at, before + book.rainSince() - edge, steps);
    }
    // Of a fall by several steps all but the first are known in full.
    return steps > 1 && leaks.fall(restTime, at, volumes.falling(rest, true) - edge, steps - 1);
  }

  void gap(long from, long to) {
    LogEvent e = events.add(EventKind.GAP, from, to);
    events.doubt(e);
    open.gap();
    shorted.gap();
    cap.gap();
    lessons.gap();
    stuck.gap();
    rises.drop();
    leaks.close();
    if (pours.found.isEmpty()) {
      rest = StepReader.BLANK;
    }
    last = to;
  }

  int rest() {
    return rest;
  }

  void finish() {
    if (last == Long.MIN_VALUE) {
      return;
    }
    leaks.finish(last);
    book.finish(last, Math.max(0, rest));
    days.finish();
    Causes.name(events.all());
  }
}

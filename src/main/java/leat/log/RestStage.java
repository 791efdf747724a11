package leat.log;

/**
 * Rows in order, held back for the hour that says their step at rest; finds pourings and emptyings
 * in the raw rows meanwhile, because no hour of rest may reach over one.
 */
final class RestStage {
  private final RowRing ring = new RowRing();
  private final StepMax ahead = new StepMax();
  private final StepMax behind = new StepMax();

  /** First row of the hour behind the newest one. */
  private long hourFrom;

  private final StepReader reader;
  private final PourFinder pours;
  private final Judge judge;
  private final LogCounts counts;
  private final Interval interval;
  private final long rest;
  private final double gapIntervals;

  /** Number of the next row to let go on. */
  private long head;

  RestStage(
      LogLimits limits,
      StepReader reader,
      PourFinder pours,
      Judge judge,
      LogCounts counts,
      Interval interval) {
    this.reader = reader;
    this.pours = pours;
    this.judge = judge;
    this.counts = counts;
    this.interval = interval;
    this.rest = (long) (limits.restS() * 1000);
    this.gapIntervals = limits.gapIntervals();
  }

  /** The first rows say the interval before the first of them is judged. */
  void prime(RowRing rows) {
    for (long i = rows.first() + 1; i < rows.end(); i++) {
      long step = rows.get(i).time - rows.get(i - 1).time;
      if (step > 0) {
        interval.add(step);
      }
    }
  }

  /** Of two rows at one instant the one nearer to the rows around; the first when they tie. */
  LogRow nearer(LogRow one, LogRow other, LogRow after) {
    int a = distance(one, after);
    int b = distance(other, after);
    return b < a ? other : one;
  }

  private int distance(LogRow row, LogRow after) {
    int step = reader.step(row.reading);
    if (step < 0) {
      return Integer.MAX_VALUE;
    }
    int sum = 0;
    if (ring.size() > 0 && ring.last().step >= 0) {
      sum += Math.abs(step - ring.last().step);
    }
    int next = after == null ? StepReader.BLANK : reader.step(after.reading);
    return next < 0 ? sum : sum + Math.abs(step - next);
  }

  void take(LogRow row) {
    if (ring.size() > 0) {
      long silence = row.time - ring.last().time;
      if (interval.isKnown() && silence > gapIntervals * interval.millis()) {
        gap(row);
      }
      interval.add(silence);
    }
    while (head < ring.end() && ring.get(head).time < row.time - rest) {
      letGo();
    }
    LogRow mine = ring.add(row);
    mine.step = reader.step(row.reading);
    if (mine.step == StepReader.BAD) {
      counts.badReadings++;
    }
    count(mine);
    ahead.add(ring.end() - 1, mine.step);
    lookBehind(mine);
    long wall = pours.look(ring, ring.end() - 1);
    if (wall > head) {
      letGoBefore(wall);
    }
    long old = row.time - pours.memory();
    while (ring.first() < head && ring.get(ring.first()).time < old) {
      ring.dropFirst();
    }
  }

  private void count(LogRow row) {
    counts.readings += row.step == StepReader.BLANK ? 0 : 1;
    if (row.step < 0 && reader.isKiloOhm(row.reading)) {
      counts.kiloOhm++;
      counts.lastKiloOhm = row.reading;
    }
  }

  /** What rises later is no rest yet: the hour before caps the hour that follows. */
  private void lookBehind(LogRow mine) {
    hourFrom = Math.max(hourFrom, ring.first());
    while (ring.get(hourFrom).time < mine.time - rest) {
      hourFrom++;
    }
    behind.dropBefore(hourFrom);
    behind.add(ring.end() - 1, mine.step);
    mine.behind = behind.max();
  }

  private void letGo() {
    LogRow row = ring.get(head);
    row.rest = Math.min(ahead.max(), row.behind);
    ahead.dropBefore(++head);
    judge.row(row);
  }

  /** Rows before a rise rest without it. */
  private void letGoBefore(long wall) {
    int max = StepReader.BLANK;
    for (long i = wall - 1; i >= head; i--) {
      max = Math.max(max, ring.get(i).step);
      ring.get(i).rest = Math.max(max, ring.get(i).base);
    }
    for (; head < wall; head++) {
      judge.row(ring.get(head));
    }
    ahead.dropBefore(head);
  }

  private void gap(LogRow row) {
    pours.finish();
    letAllGo();
    pours.gap(ring.last(), row, reader.step(row.reading), ring.end());
    judge.gap(ring.last().time, row.time);
    behind.clear();
    hourFrom = ring.end();
  }

  private void letAllGo() {
    while (head < ring.end()) {
      // Without the hour that follows, a dip at the end is known by the rows before it.
      LogRow row = ring.get(head);
      row.rest = Math.max(ahead.max(), row.base);
      ahead.dropBefore(++head);
      judge.row(row);
    }
  }

  void finish() {
    pours.finish();
    letAllGo();
  }
}

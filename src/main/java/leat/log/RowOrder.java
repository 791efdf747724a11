package leat.log;

/**
 * Puts rows in the order of their time, within a window of disorder; drops doubles, rows that come
 * too late, and rows far ahead that the next rows do not bear out (a clock that was not set).
 */
final class RowOrder {
  /** Rows in succession that bear a leap of the clock out. Common practice, no source. */
  private static final int WITNESSES = 3;

  private final RowRing ring = new RowRing();
  private final RowRing doubted = new RowRing();
  private final long disorder;
  private final long jump;
  private final RestStage next;
  private final LogCounts counts;
  private long newest = Long.MIN_VALUE;
  private long emitted = Long.MIN_VALUE;

  RowOrder(LogLimits limits, RestStage next, LogCounts counts) {
    this.disorder = (long) (limits.disorderS() * 1000);
    this.jump = (long) (limits.clockJumpS() * 1000);
    this.next = next;
    this.counts = counts;
  }

  void take(LogRow row) {
    if (newest != Long.MIN_VALUE && row.time > newest + jump) {
      doubt(row);
      return;
    }
    if (doubted.size() > 0) {
      counts.clockNotSet += doubted.size();
      emptyDoubted();
    }
    sort(row);
  }

  /** A leap forward: a long gap when the next rows go on from there. */
  private void doubt(LogRow row) {
    if (doubted.size() > 0 && Math.abs(row.time - doubted.last().time) > jump) {
      counts.clockNotSet += doubted.size();
      emptyDoubted();
    }
    doubted.add(row);
    if (doubted.size() >= WITNESSES) {
      while (doubted.size() > 0) {
        LogRow first = doubted.get(doubted.first());
        sort(first);
        doubted.dropFirst();
      }
    }
  }

  private void emptyDoubted() {
    while (doubted.size() > 0) {
      doubted.dropFirst();
    }
  }

  private void sort(LogRow row) {
    if (row.time >= newest) {
      newest = row.time;
    } else {
      counts.late++;
      if (row.time <= emitted) {
        counts.tooLate++;
        return;
      }
    }
    ring.insert(row);
    while (ring.size() > 0 && ring.get(ring.first()).time < newest - disorder) {
      emit();
    }
  }

  /** The end of the log: lets everything go on. */
  void finish() {
    counts.clockNotSet += doubted.size();
    emptyDoubted();
    while (ring.size() > 0) {
      emit();
    }
  }

  private void emit() {
    LogRow first = ring.get(ring.first());
    long time = first.time;
    if (emitted == Long.MIN_VALUE) {
      next.prime(ring);
    }
    ring.dropFirst();
    LogRow kept = first;
    while (ring.size() > 0 && ring.get(ring.first()).time == time) {
      LogRow other = ring.get(ring.first());
      ring.dropFirst();
      counts.duplicates++;
      if (!other.same(kept)) {
        kept = next.nearer(kept, other, ring.size() > 0 ? ring.get(ring.first()) : null);
      }
    }
    emitted = time;
    next.take(kept);
  }
}

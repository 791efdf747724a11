package leat.log;

import java.util.Arrays;

/** Since when the volume is below its mark, and the EC out of its band. */
final class BandWatch {
  private static final long LOOK = 10 * 60_000;

  private final LogSystem system;
  private final double[] last;
  private final double[] sorted;
  private int n;
  private long looked = Long.MIN_VALUE;
  private long belowSince = Long.MIN_VALUE;
  private long outSince = Long.MIN_VALUE;
  private double ec = Double.NaN;

  BandWatch(LogSystem system, LogLimits limits) {
    this.system = system;
    this.last = new double[limits.ecRows()];
    this.sorted = new double[limits.ecRows()];
  }

  void row(LogRow row, UseBook book, int rest) {
    if (row.ec > 0 && row.ec <= 10) {
      last[n++ % last.length] = row.ec;
      n = n == Integer.MAX_VALUE ? last.length : n;
    }
    if (looked != Long.MIN_VALUE && row.time - looked < LOOK) {
      return;
    }
    looked = row.time;
    boolean below = rest >= 0 && book.volumeAt(row.time, rest) < system.low();
    belowSince = below ? first(belowSince, row.time) : Long.MIN_VALUE;
    if (n >= last.length) {
      ec = median();
      boolean out = ec < system.ecLow() || ec > system.ecHigh();
      outSince = out ? first(outSince, row.time) : Long.MIN_VALUE;
    }
  }

  private static long first(long known, long now) {
    return known == Long.MIN_VALUE ? now : known;
  }

  private double median() {
    System.arraycopy(last, 0, sorted, 0, last.length);
    Arrays.sort(sorted);
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }

  long belowSince() {
    return belowSince;
  }

  long outSince() {
    return outSince;
  }

  /** Median EC of the last rows, mS/cm. */
  double ec() {
    return ec;
  }
}

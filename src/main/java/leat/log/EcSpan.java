package leat.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** EC of a stretch of a day without pouring: medians of its first and last rows. */
final class EcSpan {
  private final double[] head;
  private final double[] tail;
  private long headTime;
  private int n;
  private final long[] tailTimes;

  /** What the plants drew between the medians, m3, as far as it is worked out. */
  double used;

  /** Rain between them, m3. */
  double rain;

  /** Volume at the first median, m3; NaN while unknown. */
  double volume = Double.NaN;

  /** Whether water came in amid it, so that its change of EC says nothing. */
  boolean broken;

  /** The pouring before it; null when there was none. */
  private LogEvent after;

  /** What was drunk while it lasted, to be laid out when both medians are known. */
  final List<Stretch> stretches = new ArrayList<>(4);

  /**
   * Use between two moments.
   *
   * @param volume volume at its begin, m3; NaN when unknown
   */
  record Stretch(long from, long to, double use, double volume) {}

  EcSpan(int rows) {
    head = new double[rows];
    tail = new double[rows];
    tailTimes = new long[rows];
  }

  void add(long time, double ec) {
    if (n < head.length) {
      head[n] = ec;
      headTime += (time - headTime) / (n + 1);
    }
    tail[n % tail.length] = ec;
    tailTimes[n % tail.length] = time;
    n++;
    if (n == head.length) {
      tellPouring();
    }
  }

  /** The pouring before it, be it told when the span has begun. */
  void follows(LogEvent poured) {
    after = poured;
    if (hasStart()) {
      tellPouring();
    }
  }

  private void tellPouring() {
    if (after != null) {
      after.ecAfter = start();
    }
  }

  /** Whether both medians are of rows of their own. */
  boolean isWhole() {
    return !broken && n >= 2 * head.length;
  }

  boolean hasStart() {
    return n >= head.length;
  }

  double start() {
    return median(head);
  }

  double end() {
    return median(tail);
  }

  long startTime() {
    return headTime;
  }

  long endTime() {
    long sum = 0;
    for (int i = 0; i < tailTimes.length; i++) {
      sum += (tailTimes[i] - headTime) / tailTimes.length;
    }
    return headTime + sum;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }
}

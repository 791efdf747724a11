package leat.level;

import java.util.Arrays;

/**
 * The two passes of the dynamic programme behind {@link LadderDesign}; everything in thousandths of
 * an ohm, targets rising.
 *
 * <p>State (step, node), value the least greatest error so far; nodes further off than the
 * feed-forward string's greatest error cannot be part of the best one. The second pass keeps the
 * nodes within the least greatest error and takes the least sum of squares.
 *
 * <p>Source: R. Bellman's principle of optimality.
 */
final class LadderSearch {
  /** Slack when two errors count as the same, mohm; our own. */
  private static final double SAME = 1e-6;

  private final long[] values;
  private final double[] target;
  private final boolean link;
  final long[] feed;
  final double feedError;

  LadderSearch(long[] values, double[] ohms) {
    this.values = values;
    this.target = new double[ohms.length];
    for (int i = 0; i < ohms.length; i++) {
      target[i] = ohms[i] * 1000;
    }
    this.link = target[0] == 0;
    this.feed = new long[ohms.length];
    double error = 0;
    for (int i = 0; i < feed.length; i++) {
      long before = i == 0 ? 0 : feed[i - 1];
      feed[i] = i == 0 && link ? 0 : before + ESeries.nearest(values, target[i] - before);
      error = Math.max(error, Math.abs(feed[i] - target[i]));
    }
    this.feedError = error;
  }

  double separate() {
    double error = 0;
    long sum = 0;
    for (int i = 0; i < target.length; i++) {
      double difference = target[i] - (i == 0 ? 0 : target[i - 1]);
      sum += i == 0 && link ? 0 : ESeries.nearest(values, difference);
      error = Math.max(error, Math.abs(sum - target[i]));
    }
    return error;
  }

  long[] best() {
    double least = Math.min(feedError, pass(feedError + SAME, false, null));
    long[] nodes = new long[target.length];
    pass(least + SAME, true, nodes);
    return nodes;
  }

  /**
   * Least greatest error, or least sum of squares, over the strings whose nodes all lie within
   * {@code window} of their targets.
   */
  private double pass(double window, boolean squares, long[] nodes) {
    int n = target.length;
    long[] low = new long[n];
    double[][] value = new double[n][];
    int[][] from = new int[n][];
    for (int i = 0; i < n; i++) {
      low[i] = (long) Math.ceil(Math.max(0, target[i] - window));
      int size = (int) (Math.floor(target[i] + window) - low[i]) + 1;
      value[i] = new double[Math.max(size, 0)];
      from[i] = new int[value[i].length];
      Arrays.fill(value[i], Double.POSITIVE_INFINITY);
      if (i == 0) {
        start(low[0], value[0], squares);
      } else {
        spread(low, value, from[i], i, squares);
      }
    }
    int at = 0;
    for (int k = 1; k < value[n - 1].length; k++) {
      at = value[n - 1][k] < value[n - 1][at] ? k : at;
    }
    double best = value[n - 1][at];
    for (int i = n - 1; nodes != null && i >= 0; i--) {
      nodes[i] = low[i] + at;
      at = from[i][at];
    }
    return best;
  }

  private double cost(int step, long node, double before, boolean squares) {
    double error = node - target[step];
    return squares ? before + error * error : Math.max(before, Math.abs(error));
  }

  private void start(long low, double[] value, boolean squares) {
    if (link) {
      value[0] = 0;
      return;
    }
    for (long r : values) {
      if (r >= low && r < low + value.length) {
        value[(int) (r - low)] = cost(0, r, 0, squares);
      }
    }
  }

  private void spread(long[] low, double[][] value, int[] from, int i, boolean squares) {
    double[] before = value[i - 1];
    double[] now = value[i];
    int first = 0;
    for (int k = before.length - 1; k >= 0; k--) {
      if (before[k] == Double.POSITIVE_INFINITY) {
        continue;
      }
      long node = low[i - 1] + k;
      while (first < values.length && node + values[first] < low[i]) {
        first++;
      }
      for (int v = first; v < values.length; v++) {
        long at = node + values[v] - low[i];
        if (at >= now.length) {
          break;
        }
        double cost = cost(i, node + values[v], before[k], squares);
        if (cost < now[(int) at]) {
          now[(int) at] = cost;
          from[(int) at] = k;
        }
      }
    }
  }
}

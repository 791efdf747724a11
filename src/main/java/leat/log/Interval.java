package leat.log;

/**
 * Median difference of the last rows, kept by a count of each second.
 *
 * <p>Source: none; loggers write every few seconds, a keeper by hand once a day; our own bounds.
 */
final class Interval {
  private static final int LAST = 255;
  private static final int LONGEST_S = 86_400;

  private final int[] ring = new int[LAST];
  private final int[] count = new int[LONGEST_S + 1];
  private int taken;
  private int median;
  private int below;

  /** Takes a difference in. */
  void add(long millis) {
    int s = (int) Math.min(LONGEST_S, Math.round(millis / 1000.0));
    if (taken >= LAST) {
      int old = ring[taken % LAST];
      count[old]--;
      below -= old < median ? 1 : 0;
    }
    ring[taken % LAST] = s;
    count[s]++;
    below += s < median ? 1 : 0;
    taken = taken == Integer.MAX_VALUE - LAST ? taken % LAST + LAST : taken + 1;
    settle();
  }

  private void settle() {
    int half = (Math.min(taken, LAST) - 1) / 2;
    while (below > half) {
      below -= count[--median];
    }
    while (below + count[median] <= half) {
      below += count[median++];
    }
  }

  boolean isKnown() {
    return taken > 0;
  }

  /** Median difference, ms; 0 before the second row. */
  long millis() {
    return taken == 0 ? 0 : Math.max(1, median) * 1000L;
  }
}

package leat.log;

/** Highest step of a sliding stretch of rows, each row taken in and out once. */
final class StepMax {
  private long[] index = new long[64];
  private int[] step = new int[64];
  private int first;
  private int size;

  /** Highest step; {@link StepReader#BLANK} when there is none. */
  int max() {
    return size == 0 ? StepReader.BLANK : step[first];
  }

  void clear() {
    size = 0;
  }

  /** Takes a row in; numbers rise. */
  void add(long row, int value) {
    if (value < 0) {
      return;
    }
    int mask = index.length - 1;
    while (size > 0 && step[(first + size - 1) & mask] <= value) {
      size--;
    }
    if (size == index.length) {
      grow();
      mask = index.length - 1;
    }
    int at = (first + size++) & mask;
    index[at] = row;
    step[at] = value;
  }

  /** Lets go of rows before this one. */
  void dropBefore(long row) {
    while (size > 0 && index[first] < row) {
      first = (first + 1) & (index.length - 1);
      size--;
    }
  }

  private void grow() {
    int n = index.length;
    long[] rows = new long[2 * n];
    int[] steps = new int[2 * n];
    for (int i = 0; i < n; i++) {
      rows[i] = index[(first + i) & (n - 1)];
      steps[i] = step[(first + i) & (n - 1)];
    }
    index = rows;
    step = steps;
    first = 0;
  }
}

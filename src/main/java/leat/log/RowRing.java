package leat.log;

/** A ring of rows under rising numbers; rows are filled anew, so that a long log makes no waste. */
final class RowRing {
  private LogRow[] rows = fresh(64);
  private long first;
  private long end;

  private static LogRow[] fresh(int n) {
    LogRow[] all = new LogRow[n];
    for (int i = 0; i < n; i++) {
      all[i] = new LogRow();
    }
    return all;
  }

  long first() {
    return first;
  }

  long end() {
    return end;
  }

  int size() {
    return (int) (end - first);
  }

  LogRow get(long index) {
    return rows[(int) (index & (rows.length - 1))];
  }

  LogRow last() {
    return get(end - 1);
  }

  void dropFirst() {
    first++;
  }

  /** Puts a copy behind the last row. */
  LogRow add(LogRow row) {
    if (size() == rows.length) {
      grow();
    }
    LogRow slot = get(end++);
    slot.copy(row);
    return slot;
  }

  /** Puts a copy where its time belongs, behind rows of the same time; back from the end. */
  void insert(LogRow row) {
    add(row);
    long i = end - 1;
    LogRow mine = get(i);
    while (i > first && get(i - 1).time > mine.time) {
      set(i, get(i - 1));
      i--;
    }
    set(i, mine);
  }

  private void set(long index, LogRow row) {
    rows[(int) (index & (rows.length - 1))] = row;
  }

  private void grow() {
    LogRow[] old = rows;
    LogRow[] more = fresh(2 * old.length);
    for (long i = first; i < end; i++) {
      more[(int) (i & (more.length - 1))] = old[(int) (i & (old.length - 1))];
    }
    rows = more;
  }
}

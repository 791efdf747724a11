package leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/**
 * Records of a CSV after RFC 4180 as bytes, one at a time in constant memory. Cells are found
 * without copying; a quote opens a cell only where the cell begins. A quote that is not closed
 * within {@link #LONGEST_QUOTED} bytes is taken as a mistake of its own line, so that one bad row
 * cannot swallow the rows after it.
 */
public final class RowLines {
  /** Longest record with line ends in quotes. */
  static final int LONGEST_QUOTED = 1 << 16;

  private final LineBuffer in;
  private byte delimiter = ',';

  private int from;
  private int to;
  private boolean quoted;
  private boolean broken;
  private int carriage;
  private int unclosed;

  /** While a record is walked through: inside quotes, and where a cell begins. */
  private boolean open;

  private boolean cellStart;

  private int[] starts = new int[64];
  private int[] ends = new int[64];
  private int cells;

  RowLines(InputStream in, String source) throws IOException {
    this.in = new LineBuffer(in, source);
  }

  /** What is flushed before the input is waited for, so that a slow input is answered at once. */
  public void beforeWaiting(java.io.Flushable answers) {
    in.beforeWaiting(answers);
  }

  /** Sign between the cells, from here on. */
  void delimiter(char sign) {
    delimiter = (byte) sign;
  }

  /** First line of the input as text without consuming it; null when there is none. */
  String peek() throws IOException {
    return in.peek();
  }

  /** Moves to the next record that is not empty; false at the end. */
  public boolean advance() throws IOException {
    while (true) {
      if (in.next >= in.filled && !in.fill()) {
        return false;
      }
      if (in.next >= in.filled) {
        continue;
      }
      line();
      if (to > from) {
        return true;
      }
    }
  }

  private void line() throws IOException {
    quoted = false;
    broken = false;
    carriage = Integer.MAX_VALUE;
    int end = lineEnd(0);
    while (end < 0) {
      int seen = in.filled - in.next;
      end = in.fill() ? lineEnd(seen) : in.filled;
    }
    from = in.next;
    if (quoted) {
      end = quotedEnd(end);
    }
    to = end > from && in.bytes[end - 1] == '\r' ? end - 1 : end;
    in.next = Math.min(end + 1, in.filled);
  }

  /** Offset of the line's end, so far as bytes are there, else -1; sees quotes on the way. */
  private int lineEnd(int seen) {
    byte[] b = in.bytes;
    int start = in.next;
    int n = in.filled;
    for (int i = start + seen; i < n; i++) {
      byte c = b[i];
      if (c == '\n') {
        return i;
      }
      if (c == '"') {
        quoted = true;
      } else if (c == '\r' && carriage == Integer.MAX_VALUE) {
        carriage = i - start;
      }
    }
    return -1;
  }

  /** End of a record whose cells may hold line ends; the line's own end when a quote stays open. */
  private int quotedEnd(int lineEnd) throws IOException {
    int length = lineEnd - from;
    open = false;
    cellStart = true;
    int at = 0;
    while (true) {
      for (; from + at < in.filled; at++) {
        byte c = in.bytes[from + at];
        if (c == '\n' && !open) {
          return from + at;
        }
        if (at >= longestQuoted()) {
          return unclosed(length);
        }
        walk(c, at > 0 ? in.bytes[from + at - 1] : 0);
      }
      if (!in.fill()) {
        return open ? unclosed(length) : in.filled;
      }
      from = in.next;
    }
  }

  private void walk(byte c, byte before) {
    if (c == '"' && (open || cellStart)) {
      open = !open;
      cellStart = false;
    } else if (!open) {
      open = c == '"' && before == '"';
      cellStart = c == delimiter;
    }
  }

  private int unclosed(int length) {
    unclosed++;
    broken = true;
    return from + length;
  }

  /**
   * Rows that each open a quote would cost a look ahead each: it grows shorter as they mount up.
   */
  private int longestQuoted() {
    return LONGEST_QUOTED >> Math.min(8, unclosed / 64);
  }

  /** Finds the cells of the record. */
  public void split() {
    cells = 0;
    int last = quoted && !broken ? splitQuoted() : splitPlain();
    cell(last, to);
  }

  /** Takes all cells but the last; the start of that. */
  private int splitPlain() {
    byte[] b = in.bytes;
    byte sign = delimiter;
    int start = from;
    int end = to;
    for (int i = start; i < end; i++) {
      if (b[i] == sign) {
        cell(start, i);
        start = i + 1;
      }
    }
    return start;
  }

  private int splitQuoted() {
    byte[] b = in.bytes;
    int start = from;
    open = false;
    cellStart = true;
    for (int i = start; i < to; i++) {
      byte c = b[i];
      if (!open && c == delimiter) {
        cell(start, i);
        start = i + 1;
      } else if (!open && !cellStart && c != '"') {
        broken |= b[start] == '"';
      }
      walk(c, i > from ? b[i - 1] : 0);
    }
    return start;
  }

  private void cell(int start, int end) {
    if (cells == starts.length) {
      starts = Arrays.copyOf(starts, cells * 2);
      ends = Arrays.copyOf(ends, cells * 2);
    }
    starts[cells] = start;
    ends[cells++] = end;
  }

  /** Number of cells of the record, after {@link #split}. */
  public int cells() {
    return cells;
  }

  /** The buffer that the offsets below point into, until the next {@link #advance}. */
  public byte[] bytes() {
    return in.bytes;
  }

  /** Offset of the record. */
  int from() {
    return from;
  }

  /** Offset behind it, without its line end. */
  int to() {
    return to;
  }

  /** Offset of a cell, its quotes included. */
  public int start(int cell) {
    return starts[cell];
  }

  /** Offset behind it. */
  public int end(int cell) {
    return ends[cell];
  }

  /** Whether a carriage return stands inside the record. */
  boolean hasCarriageReturn() {
    return carriage < to - from;
  }

  /** The record from a cell on, as it came. */
  String rest(int cell) {
    return in.text(starts[cell], to);
  }

  /** Whether the record is the last one and has no line end: it may still be written to. */
  public boolean isUnfinished() {
    return in.isUnfinished();
  }

  /** Whether a quote is not closed, or text follows a closed one. */
  public boolean isBroken() {
    return broken;
  }

  /** A cell without its quotes. */
  public String text(int cell) {
    int start = starts[cell];
    int end = ends[cell];
    if (broken || end - start < 2 || in.bytes[start] != '"') {
      return in.text(start, end);
    }
    String inner = in.text(start + 1, end - 1);
    return inner.indexOf('"') < 0 ? inner : inner.replace("\"\"", "\"");
  }
}

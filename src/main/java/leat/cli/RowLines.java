package leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import leat.plan.Refused;

/**
 * Records of a CSV after RFC 4180 as bytes, one at a time in constant memory. Cells are found
 * without copying; a quote opens a cell only where the cell begins. A quote that is not closed
 * within {@link #LONGEST_QUOTED} bytes is taken as a mistake of its own line, so that one bad row
 * cannot swallow the rows after it.
 */
public final class RowLines {
  /** Longest line; beyond it the input is no table of rows. */
  static final int LONGEST = 1 << 20;

  /** Longest record with line ends in quotes. */
  static final int LONGEST_QUOTED = 1 << 16;

  private final InputStream in;
  private final String source;
  private byte[] buffer = new byte[1 << 16];
  private int filled;
  private int next;
  private boolean ended;
  private byte delimiter = ',';

  private int from;
  private int to;
  private boolean quoted;
  private boolean broken;
  private boolean carriageReturn;
  private int unclosed;
  private java.io.Flushable beforeWaiting;

  private int[] starts = new int[64];
  private int[] ends = new int[64];
  private int cells;

  RowLines(InputStream in, String source) throws IOException {
    this.in = in;
    this.source = source;
    while (filled < 3 && fill()) {
      // a byte order mark is three bytes
    }
    boolean mark =
        filled >= 3
            && buffer[0] == (byte) 0xEF
            && buffer[1] == (byte) 0xBB
            && buffer[2] == (byte) 0xBF;
    next = mark ? 3 : 0;
  }

  /** What is flushed before the input is waited for, so that a slow input is answered at once. */
  public void beforeWaiting(java.io.Flushable answers) {
    beforeWaiting = answers;
  }

  /** Sign between the cells, from here on. */
  void delimiter(char sign) {
    delimiter = (byte) sign;
  }

  /** First line of the input as text without consuming it; null when there is none. */
  String peek() throws IOException {
    int end = lineEnd(next);
    while (end < 0) {
      if (!fill()) {
        end = filled;
        break;
      }
      end = lineEnd(next);
    }
    return end <= next && ended && next >= filled
        ? null
        : new String(buffer, next, end - next, StandardCharsets.UTF_8);
  }

  private int lineEnd(int at) {
    byte[] b = buffer;
    int n = filled;
    for (int i = at; i < n; i++) {
      if (b[i] == '\n') {
        return i;
      }
    }
    return -1;
  }

  /** Reads more behind what is left; false at the end. */
  private boolean fill() throws IOException {
    if (ended) {
      return false;
    }
    if (next > 0 && filled == buffer.length) {
      System.arraycopy(buffer, next, buffer, 0, filled - next);
      filled -= next;
      next = 0;
    }
    if (filled == buffer.length) {
      if (buffer.length >= LONGEST) {
        throw new Refused(RowErrors.lineTooLong(source));
      }
      buffer = java.util.Arrays.copyOf(buffer, buffer.length * 2);
    }
    if (beforeWaiting != null && in.available() == 0) {
      beforeWaiting.flush();
    }
    int n = in.read(buffer, filled, buffer.length - filled);
    if (n < 0) {
      ended = true;
      return false;
    }
    filled += n;
    return true;
  }

  /** Moves to the next record that is not empty; false at the end. */
  public boolean advance() throws IOException {
    while (true) {
      if (next >= filled && !fill()) {
        return false;
      }
      if (next >= filled) {
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
    int carriage = Integer.MAX_VALUE;
    int offset = 0;
    int end = -1;
    while (end < 0) {
      byte[] b = buffer;
      int n = filled;
      int i = next + offset;
      for (; i < n; i++) {
        byte c = b[i];
        if (c == '\n') {
          end = i;
          break;
        }
        if (c == '"') {
          quoted = true;
        } else if (c == '\r' && carriage == Integer.MAX_VALUE) {
          carriage = i - next;
        }
      }
      if (end < 0) {
        offset = n - next;
        if (!fill()) {
          end = filled;
        }
      }
    }
    from = next;
    if (quoted) {
      end = quotedEnd(end);
    }
    to = end > from && buffer[end - 1] == '\r' ? end - 1 : end;
    carriageReturn = carriage < to - from;
    next = Math.min(end + 1, filled);
  }

  /** End of a record whose cells may hold line ends; the line's own end when a quote stays open. */
  private int quotedEnd(int lineEnd) throws IOException {
    int offset = lineEnd - from;
    int at = 0;
    boolean open = false;
    boolean cellStart = true;
    while (true) {
      while (from + at < filled) {
        byte c = buffer[from + at];
        if (c == '\n' && !open) {
          return from + at;
        }
        if (c == '"' && (open || cellStart)) {
          open = !open;
          cellStart = false;
        } else if (!open) {
          if (c == '"' && at > 0 && buffer[from + at - 1] == '"') {
            open = true;
          }
          cellStart = c == delimiter;
        }
        at++;
        if (at > longestQuoted()) {
          unclosed++;
          broken = true;
          return from + offset;
        }
      }
      if (!fill()) {
        broken = open;
        unclosed += open ? 1 : 0;
        return open ? from + offset : filled;
      }
      from = next;
    }
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
    byte[] b = buffer;
    int start = from;
    int end = to;
    if (!quoted || broken) {
      byte sign = delimiter;
      for (int i = start; i < end; i++) {
        if (b[i] == sign) {
          cell(start, i);
          start = i + 1;
        }
      }
      cell(start, end);
      return;
    }
    boolean open = false;
    boolean cellStart = true;
    for (int i = start; i < end; i++) {
      byte c = b[i];
      if (c == '"' && (open || cellStart)) {
        open = !open;
        cellStart = false;
      } else if (!open) {
        if (c == delimiter) {
          cell(start, i);
          start = i + 1;
          cellStart = true;
        } else if (c == '"' && b[i - 1] == '"') {
          open = true;
        } else if (b[start] == '"') {
          broken = true;
        } else {
          cellStart = false;
        }
      }
    }
    cell(start, end);
  }

  private void cell(int start, int end) {
    if (cells == starts.length) {
      starts = java.util.Arrays.copyOf(starts, cells * 2);
      ends = java.util.Arrays.copyOf(ends, cells * 2);
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
    return buffer;
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
    return carriageReturn;
  }

  /** The record from a cell on, as it came. */
  String rest(int cell) {
    return new String(buffer, starts[cell], to - starts[cell], StandardCharsets.UTF_8);
  }

  /** Whether the record is the last one and has no line end: it may still be written to. */
  public boolean isUnfinished() {
    return ended && next >= filled && (filled == 0 || buffer[filled - 1] != '\n');
  }

  /** Whether a quote is not closed, or text follows a closed one. */
  public boolean isBroken() {
    return broken;
  }

  /** A cell without its quotes. */
  public String text(int cell) {
    int start = starts[cell];
    int end = ends[cell];
    if (broken || end - start < 2 || buffer[start] != '"') {
      return new String(buffer, start, end - start, StandardCharsets.UTF_8);
    }
    String inner = new String(buffer, start + 1, end - start - 2, StandardCharsets.UTF_8);
    return inner.indexOf('"') < 0 ? inner : inner.replace("\"\"", "\"");
  }
}
